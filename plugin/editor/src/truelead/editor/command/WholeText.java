package truelead.editor.command;

import java.util.Arrays;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.BadPositionCategoryException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IPositionUpdater;
import org.eclipse.jface.text.IRewriteTarget;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.graphics.Point;
import truelead.editor.ProgramEditor;

/** Gives a document another text at once; what is marked in it, folds, findings, bookmarks, goes with its blocks, and so does the caret. */
final class WholeText {

	private final IDocument document;

	private WholeText(IDocument document) {
		this.document = document;
	}

	/** Makes a change that fits the document; one step to undo. */
	static void change(ProgramEditor editor, IDocument document, Rewrite rewrite) {
		Rewrite.Moved moved = rewrite.moved();
		ISourceViewer viewer = editor.viewer();
		Point selected = viewer.getSelectedRange();
		int top = viewer.getTopIndex();
		ClosedFolds folds = ClosedFolds.open(viewer);
		IRewriteTarget target = editor.getAdapter(IRewriteTarget.class);
		target.beginCompoundChange();
		try {
			new WholeText(document).change(rewrite.text(), moved);
		} finally {
			target.endCompoundChange();
		}
		folds.close();
		int start = moved.of(selected.x);
		viewer.setSelectedRange(start, moved.of(selected.x + selected.y) - start);
		viewer.setTopIndex(top);
	}

	private void change(String text, Rewrite.Moved moved) {
		Position[] marks = lift();
		IPositionUpdater setting = event -> set(marks, moved);
		document.addPositionUpdater(setting);
		try {
			document.set(text);
		} finally {
			document.removePositionUpdater(setting);
		}
	}

	/** Takes the marks out, which the platform would otherwise drop with the text that they stand in. */
	private Position[] lift() {
		try {
			Position[] marks = document.getPositions(IDocument.DEFAULT_CATEGORY).clone();
			for (int i = marks.length - 1; i >= 0; i--) {
				document.removePosition(marks[i]);
			}
			return marks;
		} catch (BadPositionCategoryException none) {
			return new Position[0];
		}
	}

	/** Puts them back where their text is now, before anybody hears of the change. */
	private void set(Position[] marks, Rewrite.Moved moved) {
		Arrays.stream(marks).forEach(mark -> {
			int start = moved.of(mark.offset);
			mark.length = moved.of(mark.offset + mark.length) - start;
			mark.offset = start;
			try {
				document.addPosition(mark);
			} catch (BadLocationException outside) {
				ILog.of(WholeText.class).error("A mark did not fit the changed text", outside);
			}
		});
	}
}
