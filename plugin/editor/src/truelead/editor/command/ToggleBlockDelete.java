package truelead.editor.command;

import truelead.checker.edit.Blocks;
import truelead.editor.check.CheckedEditor;

/** Puts a slash before the selected blocks, or takes it away. */
public final class ToggleBlockDelete extends ChangeCommand {

	@Override
	protected void run(CheckedEditor editor) {
		change(editor, false, "no block here to skip", plain((text, lines) -> Blocks.toggleBlockDelete(text, lines.first(), lines.last())));
	}
}
