package truelead.editor.command;

import truelead.checker.edit.Blocks;
import truelead.editor.check.CheckedEditor;

/** Makes the selected blocks comments, and such comments blocks again. */
public final class ToggleComment extends ChangeCommand {

	@Override
	protected void run(CheckedEditor editor) {
		change(editor, false, "no block here to comment out, and no comment that holds one",
				plain((text, lines) -> Blocks.toggleComment(text, lines.first(), lines.last())));
	}
}
