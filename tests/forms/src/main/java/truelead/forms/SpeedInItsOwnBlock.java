package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** S and M3 act before the motion of their block, as they do in a block before it. */
final class SpeedInItsOwnBlock extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.says('M', 29));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		boolean starts = Words.says(block, 'M', 3, 4) && Words.has(block, "S") && Words.has(block, "XYZ") && Words.cycle(block) == 0;
		if (!starts) {
			return block.text();
		}
		StringBuilder spindle = new StringBuilder();
		block.words().stream().filter(SpeedInItsOwnBlock::spindle).forEach(word -> spindle.append(Words.written(block, word)).append(' '));
		return spindle.toString().strip() + "\n" + Words.without(block, SpeedInItsOwnBlock::spindle);
	}

	private static boolean spindle(Element.Word word) {
		return word.address() == 'S' || word.address() == 'M' && (Words.value(word) == 3 || Words.value(word) == 4);
	}
}
