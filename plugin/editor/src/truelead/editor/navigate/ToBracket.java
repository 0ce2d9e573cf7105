package truelead.editor.navigate;

import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.source.ICharacterPairMatcher;
import truelead.editor.bracket.BlockBrackets;
import truelead.editor.check.CheckedEditor;
import truelead.editor.command.ProgramCommand;

/** Goes to the other one of two brackets. */
public final class ToBracket extends ProgramCommand {

	@Override
	protected void run(CheckedEditor editor) {
		BlockBrackets brackets = new BlockBrackets();
		IRegion pair = brackets.match(editor.viewer().getDocument(), editor.viewer().getSelectedRange().x);
		if (pair == null) {
			say(editor, true, "no bracket here that has another");
			return;
		}
		int last = pair.getOffset() + pair.getLength();
		editor.selectAndReveal(brackets.getAnchor() == ICharacterPairMatcher.LEFT ? last : pair.getOffset() + 1, 0);
	}
}
