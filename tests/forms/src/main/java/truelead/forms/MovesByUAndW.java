package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** A move of a lathe is told by its end or, by U and W, by its length. */
final class MovesByUAndW extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForTurning(), program.calls(), program.turnedContours(), program.increments(),
				program.says('G', 28, 53, 50, 54, 55, 10, 90, 77, 78, 20, 18, 17));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		boolean move = Words.says(block, 'G', 0, 1) && Words.only(block, "GXZFMS") && !Words.says(block, 'G', 28, 30, 53, 32, 33, 92, 76,
				80, 83, 84, 74, 50, 4);
		if (!move) {
			return block.text();
		}
		return Words.each(block, word -> {
			double from = word.address() == 'X' ? before.x() : word.address() == 'Z' ? before.z() : Double.NaN;
			return Double.isNaN(from) ? null : (word.address() == 'X' ? "U" : "W") + Figures.of(Words.value(word) - from, 4);
		});
	}
}
