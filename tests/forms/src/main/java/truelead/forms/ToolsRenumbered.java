package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** Which pocket a tool sits in is the same to the work: T, H and D are all 20 higher, and so are the numbers in the comments. */
final class ToolsRenumbered extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.toolsInComments());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.each(block, word -> "THD".indexOf(word.address()) >= 0 && Words.value(word) > 0 ? word.address()
				+ Figures.code(Words.value(word) + 20) : null);
	}
}
