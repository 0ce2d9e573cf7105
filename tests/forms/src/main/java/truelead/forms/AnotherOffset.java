package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** Which work offset is used is a number on the machine. */
final class AnotherOffset extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.says('G', 52, 53, 55, 56, 57, 58, 59, 54.1, 10));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.each(block, word -> word.address() == 'G' && Words.value(word) == 54 ? "G55" : null);
	}
}
