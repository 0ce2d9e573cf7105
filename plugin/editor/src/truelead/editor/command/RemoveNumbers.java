package truelead.editor.command;

import truelead.checker.edit.Numbering;
import truelead.editor.check.CheckedEditor;

/** Takes the block numbers of the selected blocks, or of all, away; those that something jumps to stay. */
public final class RemoveNumbers extends ChangeCommand {

	@Override
	protected void run(CheckedEditor editor) {
		change(editor, true, "no block number here that nothing jumps to",
				(text, machine, lines) -> Numbering.remove(text, machine, lines.first(), lines.last()));
	}
}
