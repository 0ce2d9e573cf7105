package truelead.editor.command;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRewriteTarget;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.swt.widgets.Display;
import truelead.checker.edit.Replacement;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;

/**
 * A change of very many places, made piece by piece so that the screen answers between them: a new text of a million blocks at once would
 * hold it for a third of a second. One step to undo; given up, nothing of it stays.
 */
final class PieceByPiece {

	/** Places of the first piece, and the fewest and most of a later one. */
	private static final int FIRST = 4_000;
	private static final int FEWEST = 500;
	private static final int MOST = 40_000;

	/** What a piece should hold the screen, ns. */
	private static final long SLICE = 20_000_000;

	private final CheckedEditor editor;
	private final IDocument document;
	private final List<Replacement> replacements;
	private final String before;
	private KeptView view;
	private int next;
	private int size = FIRST;
	/** Characters that the text has grown by. */
	private int grown;
	private long stamp;
	private boolean failed;

	/** A change that fits the document, whose replacements are in the order of their places; on any thread but the screen's. */
	PieceByPiece(CheckedEditor editor, IDocument document, List<Replacement> replacements, long stamp) {
		this.editor = editor;
		this.document = document;
		this.replacements = replacements;
		this.stamp = stamp;
		this.before = document.get();
	}

	/** Makes it, unless it is given up or somebody else edits meanwhile; false where nothing of it stays. */
	boolean make(Display display, IProgressMonitor monitor) {
		monitor.beginTask("Changing the program", replacements.size());
		display.syncExec(() -> {
			view = KeptView.of(editor);
			editor.getAdapter(IRewriteTarget.class).beginCompoundChange();
		});
		while (next < replacements.size() && !failed && !monitor.isCanceled()) {
			List<Replacement> places = replacements.subList(next, Math.min(next + size, replacements.size()));
			int to = next + places.size() < replacements.size() ? replacements.get(next + places.size()).offset() : before.length();
			Rewrite piece = piece(places, to);
			display.syncExec(() -> make(piece, places.get(0).offset() + grown, to + grown));
			next += places.size();
			monitor.worked(places.size());
		}
		boolean all = next == replacements.size() && !failed;
		display.syncExec(() -> end(all));
		return all;
	}

	/** The text from the first of some places up to where the next piece begins, and their places as the document stands now. */
	private Rewrite piece(List<Replacement> places, int to) {
		int from = places.get(0).offset();
		List<Replacement> inside = new ArrayList<>(places.size());
		List<Replacement> now = new ArrayList<>(places.size());
		for (Replacement place : places) {
			inside.add(new Replacement(place.offset() - from, place.length(), place.text()));
			now.add(new Replacement(place.offset() + grown, place.length(), place.text()));
		}
		return new Rewrite(Replacement.apply(before.substring(from, to), inside), now);
	}

	private void make(Rewrite piece, int from, int to) {
		long start = System.nanoTime();
		failed = editor.viewer() == null || stamp != CheckedText.stampOf(document);
		if (!failed) {
			try {
				CarriedMarks.through(document, from, to, piece.moved(), () -> document.replace(from, to - from, piece.text()));
				grown += piece.text().length() - (to - from);
			} catch (BadLocationException cannot) {
				ILog.of(PieceByPiece.class).error("A change did not fit the text", cannot);
				failed = true;
			}
		}
		stamp = CheckedText.stampOf(document);
		long took = System.nanoTime() - start;
		size = took > 2 * SLICE ? Math.max(FEWEST, size / 2) : took < SLICE ? Math.min(MOST, size * 3 / 2) : size;
	}

	private void end(boolean all) {
		if (editor.viewer() == null) {
			return;
		}
		editor.getAdapter(IRewriteTarget.class).endCompoundChange();
		if (!all && next > 0) {
			((ITextOperationTarget) editor.viewer()).doOperation(ITextOperationTarget.UNDO);
		}
		view.show(all ? new Rewrite("", replacements).moved() : offset -> offset);
		editor.setFocus();
	}
}
