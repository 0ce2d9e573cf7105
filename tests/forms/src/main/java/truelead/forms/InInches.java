package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** An inch is 25.4 mm: every length and feed of a metric program, written in inches to six decimals. */
final class InInches extends BlockByBlock {

	private static final int DECIMALS = 6;

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.says('G', 20, 70, 93, 95), program.lacks('G', 21),
				program.calls(), program.withoutPoint(), program.lengthsInComments(), program.says('G', 10, 65, 16),
				program.says('G', 68, 51));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (Words.says(block, 'G', 4)) {
			return block.text();
		}
		boolean lead = before.cycle() == 0 && Words.cycle(block) == 0; // in a cycle a count
		return Words.each(block, word -> switch (word.address()) {
			case 'G' -> Words.value(word) == 21 ? "G20" : null;
			case 'K' -> lead ? word.address() + Figures.of(Words.value(word) / 25.4, DECIMALS) : null;
			case 'X', 'Y', 'Z', 'R', 'I', 'J', 'Q', 'F' -> word.address() + Figures.of(Words.value(word) / 25.4, DECIMALS);
			default -> null;
		});
	}
}
