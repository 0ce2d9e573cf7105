package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** Whether the tool goes back to R or to the initial level between holes is the same where nothing stands in its way. */
final class BackToTheInitialLevel extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.cycle(block) > 0 ? Words.each(block, word -> word.address() == 'G' && Words.value(word) == 99 ? "G98" : null)
				: block.text();
	}
}
