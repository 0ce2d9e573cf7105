package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** G33 cuts with a lead as G32 does. */
final class G33ForG32 extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForTurning());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.each(block, word -> word.address() == 'G' && Words.value(word) == 32 ? "G33" : null);
	}
}
