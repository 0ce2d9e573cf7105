package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** A local zero moved one way and all places moved the other way are the same places. */
final class LocalZero extends BlockByBlock {

	private static final double X_MM = 100;
	private static final double Y_MM = 50;

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.says('G', 90.1),
				program.calls(), program.skips(), program.withoutPoint(), program.says('G', 55, 56, 57, 58, 59), program.lacks('G', 54));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		double dx = Math.rint(program.length(X_MM));
		double dy = Math.rint(program.length(Y_MM));
		String moved = Words.call(block) ? block.text() : Words.each(block, word -> switch (word.address()) {
			case 'X' -> "X" + Figures.of(Words.value(word) - dx, program.decimals());
			case 'Y' -> "Y" + Figures.of(Words.value(word) - dy, program.decimals());
			default -> null;
		});
		return Words.says(block, 'G', 54) ? "G90 G54 G52 X" + Figures.of(dx, 1) + " Y" + Figures.of(dy, 1) + (before.relative() ? "\nG91\n"
				: "\n") + moved : moved;
	}
}
