package truelead.editor.look;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.codemining.AbstractCodeMiningProvider;
import org.eclipse.jface.text.codemining.ICodeMining;
import org.eclipse.jface.text.codemining.ICodeMiningProvider;
import org.eclipse.jface.text.codemining.LineEndCodeMining;
import org.eclipse.jface.text.source.ISourceViewerExtension5;
import truelead.checker.machine.Location;
import truelead.checker.summary.OperationSummary;
import truelead.checker.work.ThreadingOperation;
import truelead.editor.ProgramEditor;
import truelead.editor.check.CheckedText;

/** A quiet line at the end of each threading operation's block: the thread, the feed check, the depth. Never above a line, so nothing jumps. */
public final class OperationNotes extends AbstractCodeMiningProvider {

	/** A program with more operations than this gets none. */
	private static final int MOST = 400;

	private final ProgramEditor editor;

	private OperationNotes(ProgramEditor editor) {
		this.editor = editor;
	}

	/** Puts the notes into an editor, and keeps them in step with its checks. */
	public static void install(ProgramEditor editor) {
		ISourceViewerExtension5 viewer = (ISourceViewerExtension5) editor.viewer();
		viewer.setCodeMiningProviders(new ICodeMiningProvider[] { new OperationNotes(editor) });
		editor.check().addListener(checked -> editor.viewer().getTextWidget().getDisplay().asyncExec(() -> {
			if (editor.viewer() != null && editor.viewer().getTextWidget() != null && !editor.viewer().getTextWidget().isDisposed()) {
				viewer.updateCodeMinings();
			}
		}));
	}

	@Override
	public CompletableFuture<List<? extends ICodeMining>> provideCodeMinings(ITextViewer viewer, IProgressMonitor monitor) {
		IDocument document = viewer.getDocument();
		return CompletableFuture.supplyAsync(() -> editor.check().last().map(checked -> notes(checked, document)).orElse(List.of()));
	}

	private List<ICodeMining> notes(CheckedText checked, IDocument document) {
		List<ThreadingOperation> operations = checked.result().work().operations();
		if (operations.size() > MOST || checked.program().text().lineCount() > document.getNumberOfLines()) {
			return List.of();
		}
		Map<Integer, String> byLine = new TreeMap<>();
		for (ThreadingOperation operation : operations) {
			String text = OperationSummary.of(operation);
			Location place = Location.of(operation.block());
			if (!text.isEmpty() && checked.here(place)) {
				byLine.putIfAbsent(place.line(), text);
			}
		}
		return byLine.entrySet().stream().flatMap(entry -> note(document, entry.getKey(), entry.getValue()).stream()).toList();
	}

	private List<ICodeMining> note(IDocument document, int line, String text) {
		try {
			LineEndCodeMining note = new LineEndCodeMining(document, line, this) {
				@Override
				public boolean isResolved() {
					return true;
				}
			};
			note.setLabel("   " + text);
			return List.of(note);
		} catch (BadLocationException edited) {
			return List.of();
		}
	}
}
