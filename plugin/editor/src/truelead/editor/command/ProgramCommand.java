package truelead.editor.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.IEditorStatusLine;
import truelead.editor.check.CheckedEditor;

/** A command on the program in the active editor. */
public abstract class ProgramCommand extends AbstractHandler {

	@Override
	public final Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActiveEditor(event) instanceof CheckedEditor editor) {
			run(editor);
		}
		return null;
	}

	/** Does it; on the UI thread. */
	protected abstract void run(CheckedEditor editor);

	/** Says in the status line why nothing happened, or what did. */
	public static void say(CheckedEditor editor, boolean error, String words) {
		IEditorStatusLine line = editor.getAdapter(IEditorStatusLine.class);
		if (line != null) {
			line.setMessage(error, words, null);
		}
	}
}
