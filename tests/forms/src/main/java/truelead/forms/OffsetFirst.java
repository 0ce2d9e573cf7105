package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** G43 with its H in a block of its own, before the approach, is in force in it. */
final class OffsetFirst extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (!Words.says(block, 'G', 43) || !Words.has(block, "XYZ") || !Words.has(block, "H")) {
			return block.text();
		}
		String offset = "G43 H" + Figures.code(Words.number(block, 'H', 0));
		return offset + "\n" + Words.without(block, word -> word.address() == 'H' || word.address() == 'G' && Words.value(word) == 43);
	}
}
