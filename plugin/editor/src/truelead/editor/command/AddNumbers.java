package truelead.editor.command;

import truelead.checker.edit.Numbering;
import truelead.editor.check.CheckedEditor;

/** Gives the selected blocks, or all, block numbers. */
public final class AddNumbers extends ChangeCommand {

	@Override
	protected void run(CheckedEditor editor) {
		NumbersDialog.ask(editor, "Add Block Numbers").ifPresent(numbers -> change(editor, true, "no block number changes",
				(text, machine, lines) -> Numbering.add(text, machine, lines.first(), lines.last(), numbers.first(), numbers.step())));
	}
}
