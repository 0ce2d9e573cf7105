package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** The part lies turned by a quarter on the table: X becomes Y and Y becomes -X, the heights stay. */
final class QuarterTurned extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.cyclesWithI(),
				program.says('G', 76, 87, 16, 18, 19, 51, 51.1, 68, 10, 65), program.says('M', 198), program.says('M', 98));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (Words.says(block, 'G') || Words.call(block)) {
			return block.text();
		}
		return Words.each(block, word -> {
			double value = Words.value(word);
			String written = Words.written(block, word).substring(1).strip();
			return switch (word.address()) {
				case 'X' -> "Y" + written;
				case 'I' -> "J" + written;
				case 'Y' -> "X" + minus(written, value);
				case 'J' -> "I" + minus(written, value);
				default -> null;
			};
		});
	}

	private static String minus(String written, double value) {
		String number = written.startsWith("+") || written.startsWith("-") ? written.substring(1).strip() : written;
		return value > 0 ? "-" + number : number;
	}
}
