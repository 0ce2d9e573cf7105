package truelead.editor.command;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRewriteTarget;
import truelead.editor.check.CheckedEditor;

/** Gives a document another text at once; what is marked in it goes with its blocks, and so does the caret. */
final class WholeText {

	private WholeText() {
	}

	/** Makes a change that fits the document; one step to undo. */
	static void change(CheckedEditor editor, IDocument document, Rewrite rewrite) {
		Rewrite.Moved moved = rewrite.moved();
		KeptView view = KeptView.of(editor);
		IRewriteTarget target = editor.getAdapter(IRewriteTarget.class);
		target.beginCompoundChange();
		try {
			CarriedMarks.through(document, 0, document.getLength(), moved, () -> document.set(rewrite.text()));
		} catch (BadLocationException never) {
			ILog.of(WholeText.class).error("A text could not be set", never);
		} finally {
			target.endCompoundChange();
		}
		view.show(moved);
	}
}
