package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** Block numbers say nothing where nothing jumps to one. */
final class Unnumbered extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.says('M', 97, 99), program.turnedContours());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.without(block, word -> word.address() == 'N');
	}
}
