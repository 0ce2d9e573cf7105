package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** T calls the tool and M6 in the next block changes it. */
final class ToolInTwoBlocks extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.toolChange(block) && Words.has(block, "T") && Words.only(block, "TM") && block.comments().isEmpty()
				? Words.without(block, "M").strip() + "\nM6" : block.text();
	}
}
