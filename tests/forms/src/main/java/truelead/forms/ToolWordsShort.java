package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** A zero before the number of a turret place says nothing. */
final class ToolWordsShort extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForTurning());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.each(block, word -> word.address() == 'T' && Words.written(block, word).startsWith("T0") && Words.value(word) >= 101
				? "T" + Words.code(word) : null);
	}
}
