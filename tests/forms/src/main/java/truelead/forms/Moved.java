package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** The zero lies elsewhere in the plane: all X and all Y are moved by the same length. */
final class Moved extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.says('G', 90.1),
				program.calls(), program.skips(), program.withoutPoint());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.call(block) ? block.text() : Words.each(block, word -> switch (word.address()) {
			case 'X' -> "X" + Figures.of(Words.value(word) + program.length(123.456), program.decimals());
			case 'Y' -> "Y" + Figures.of(Words.value(word) - program.length(77.7), program.decimals());
			default -> null;
		});
	}
}
