package truelead.editor.command;

import truelead.checker.edit.Numbering;
import truelead.editor.check.CheckedEditor;

/** Numbers the selected blocks, or all, anew where they have a number. */
public final class Renumber extends ChangeCommand {

	@Override
	protected void run(CheckedEditor editor) {
		NumbersDialog.ask(editor, "Renumber Blocks").ifPresent(numbers -> change(editor, true, "no block number changes",
				(text, machine, lines) -> Numbering.renumber(text, machine, lines.first(), lines.last(), numbers.first(), numbers.step())));
	}
}
