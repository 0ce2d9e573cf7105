package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** M6 may stand before T in their block. */
final class ChangeBeforeTool extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.says('M', 98));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.toolChange(block) && Words.has(block, "T") && Words.only(block, "TM")
				? Words.each(block, word -> switch (word.address()) {
			case 'T' -> "M6";
			case 'M' -> "T" + Figures.code(Words.number(block, 'T', 0));
			default -> null;
		}) : block.text();
	}
}
