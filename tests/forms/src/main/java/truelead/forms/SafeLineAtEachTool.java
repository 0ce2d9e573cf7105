package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** What is in force anyway may be said again at each tool. */
final class SafeLineAtEachTool extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.framed(), program.says('G', 20, 70),
				program.increments(), program.says('G', 93, 95));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.toolChange(block) && before.cycle() == 0 ? block.text() + "\nG0 G17 G40 G80 G90 G94" : block.text();
	}
}
