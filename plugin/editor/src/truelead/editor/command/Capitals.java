package truelead.editor.command;

import truelead.checker.edit.Blocks;
import truelead.editor.check.CheckedEditor;

/** Writes the selected blocks, or all, in capitals; comments stay as they are. */
public final class Capitals extends ChangeCommand {

	@Override
	protected void run(CheckedEditor editor) {
		change(editor, true, "all in capitals already", plain((text, lines) -> Blocks.upperCase(text, lines.first(), lines.last())));
	}
}
