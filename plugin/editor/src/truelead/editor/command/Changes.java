package truelead.editor.command;

import java.util.List;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentRewriteSession;
import org.eclipse.jface.text.DocumentRewriteSessionType;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentExtension4;
import org.eclipse.jface.text.IRewriteTarget;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import truelead.checker.edit.Change;
import truelead.checker.edit.Replacement;
import truelead.editor.ProgramEditor;

/** Makes changes in an editor's text, each undone in one step. */
final class Changes {

	/** More replacements than this are made as one, which costs the marks between them but not the screen's time. */
	private static final int MOST = 2000;

	private Changes() {
	}

	/** A document's state, to tell whether it was edited meanwhile. */
	static long stamp(IDocument document) {
		return document instanceof IDocumentExtension4 stamped ? stamped.getModificationStamp() : IDocumentExtension4.UNKNOWN_MODIFICATION_STAMP;
	}

	/** Makes a change that was worked out for a state of the document, or says why not. */
	static void make(ProgramEditor editor, IDocument document, long stamp, Change change, String nothing) {
		if (editor.viewer() == null || editor.viewer().getTextWidget() == null || editor.viewer().getTextWidget().isDisposed()) {
			return;
		}
		if (!change.refusal().isEmpty()) {
			ProgramCommand.say(editor, true, change.refusal());
		} else if (change.replacements().isEmpty()) {
			ProgramCommand.say(editor, false, nothing);
		} else if (stamp != stamp(document)) {
			ProgramCommand.say(editor, true, "the program was edited meanwhile: nothing was changed");
		} else if (editor.validateEditorInputState()) {
			ProgramCommand.say(editor, false, "");
			make(editor, document, change.replacements());
		}
	}

	private static void make(ProgramEditor editor, IDocument document, List<Replacement> replacements) {
		IRewriteTarget target = editor.getAdapter(IRewriteTarget.class);
		target.beginCompoundChange();
		try {
			if (replacements.size() > MOST) {
				asOne(document, replacements);
			} else {
				oneByOne(document, replacements);
			}
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

	private static void asOne(IDocument document, List<Replacement> replacements) throws BadLocationException {
		int start = replacements.get(0).offset();
		Replacement last = replacements.get(replacements.size() - 1);
		int end = last.offset() + last.length();
		List<Replacement> moved = replacements.stream().map(r -> new Replacement(r.offset() - start, r.length(), r.text())).toList();
		document.replace(start, end - start, Replacement.apply(document.get(start, end - start), moved));
	}
}
