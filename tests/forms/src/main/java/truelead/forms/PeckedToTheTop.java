package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** What a drill makes is the same whether it clears the chips at the top or breaks them in the hole. */
final class PeckedToTheTop extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.says(block, 'G', 83) && Words.has(block, "Q")
				? Words.each(block, word -> word.address() == 'G' && Words.value(word) == 83 ? "G73" : null) : block.text();
	}
}
