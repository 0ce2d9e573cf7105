package truelead.editor.command;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentRewriteSession;
import org.eclipse.jface.text.DocumentRewriteSessionType;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentExtension4;
import org.eclipse.jface.text.IRewriteTarget;
import org.eclipse.swt.widgets.Display;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import truelead.checker.edit.Change;
import truelead.checker.edit.Replacement;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;

/**
 * A change of an editor's text that was worked out for one state of it, and is undone in one step.
 *
 * @param whole the new text at once, where the change has very many places
 */
record Changes(Change change, Optional<Rewrite> whole, long stamp) {

	/** A change of more places than this is made as one of the whole text, which costs the screen's time once and not a thousand times. */
	private static final int MOST = 2000;

	/** The change of a document that has that stamp and text; on a thread of its own. */
	static Changes of(Change change, IDocument document, long stamp) {
		boolean many = change.replacements().size() > MOST && stamp == CheckedText.stampOf(document);
		return new Changes(change, many ? Optional.of(Rewrite.of(document.get(), change.replacements())) : Optional.empty(), stamp);
	}

	/** Makes the change, or says why not. */
	void make(CheckedEditor editor, IDocument document, String nothing) {
		if (fits(editor, document, nothing)) {
			whole.ifPresentOrElse(text -> WholeText.change(editor, document, text), () -> make(editor, document));
		}
	}

	/** The same for very many places, on any thread but the screen's; what is given up on the way leaves the text as it was. */
	void makeInPieces(CheckedEditor editor, IDocument document, String nothing, Display display, IProgressMonitor monitor) {
		boolean[] fits = new boolean[1];
		display.syncExec(() -> fits[0] = fits(editor, document, nothing));
		if (fits[0] && !new PieceByPiece(editor, document, change.replacements(), stamp).make(display, monitor)) {
			display.asyncExec(() -> ProgramCommand.say(editor, true, "given up: nothing was changed"));
		}
	}

	/** Whether there is something to change and the program still stands as it did; says why not. */
	private boolean fits(CheckedEditor editor, IDocument document, String nothing) {
		if (editor.viewer() == null || editor.viewer().getTextWidget() == null || editor.viewer().getTextWidget().isDisposed()) {
			return false;
		}
		if (!change.refusal().isEmpty()) {
			ProgramCommand.say(editor, true, change.refusal());
		} else if (change.replacements().isEmpty()) {
			ProgramCommand.say(editor, false, nothing);
		} else if (stamp != CheckedText.stampOf(document)) {
			ProgramCommand.say(editor, true, "the program was edited meanwhile: nothing was changed");
		} else if (editor.validateEditorInputState()) {
			ProgramCommand.say(editor, false, "");
			return true;
		}
		return false;
	}

	private void make(CheckedEditor editor, IDocument document) {
		IRewriteTarget target = editor.getAdapter(IRewriteTarget.class);
		target.beginCompoundChange();
		try {
			oneByOne(document, change.replacements());
		} catch (BadLocationException cannot) {
			ILog.of(Changes.class).error("A change did not fit the text", cannot);
		} finally {
			target.endCompoundChange();
		}
	}

	private static void oneByOne(IDocument document, List<Replacement> replacements) throws BadLocationException {
		MultiTextEdit edit = new MultiTextEdit();
		replacements.forEach(replacement -> edit.addChild(new ReplaceEdit(replacement.offset(), replacement.length(), replacement.text())));
		IDocumentExtension4 rewritten = (IDocumentExtension4) document;
		DocumentRewriteSession session = rewritten.startRewriteSession(DocumentRewriteSessionType.SEQUENTIAL);
		try {
			edit.apply(document, org.eclipse.text.edits.TextEdit.NONE);
		} finally {
			rewritten.stopRewriteSession(session);
		}
	}
}
