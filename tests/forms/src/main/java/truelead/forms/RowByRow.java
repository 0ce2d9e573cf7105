package truelead.forms;

import java.util.List;
import java.util.Objects;
import truelead.grammar.Block;

/**
 * A form that writes the canned cycles of a program anew, each with the places behind it; only rows whose places are known and whose end is
 * told.
 */
abstract class RowByRow implements Form {

	/** Writes a row into the program's lines; lines that are no longer needed become null. */
	abstract void rewrite(Program program, Row row, Course.State before, List<String> lines);

	@Override
	public List<String> rewrite(Program program) {
		List<Course.State> states = Course.of(program);
		List<String> lines = program.lines();
		for (Row row : Row.of(program, states)) {
			if (row.known() && row.ended()) {
				rewrite(program, row, states.get(row.head()), lines);
			}
		}
		lines.removeIf(Objects::isNull);
		return lines;
	}

	/** X and Y words of a place. */
	static String words(Program program, double x, double y) {
		return "X" + Figures.of(x, program.decimals()) + " Y" + Figures.of(y, program.decimals());
	}

	/** The block with G90 or the like in it, where a block that ends the cycle has it behind G80. */
	static String ending(Block block, String code) {
		return Words.says(block, 'G', 80) ? Words.each(block, word -> word.address() == 'G' && Words.value(word) == 80 ? "G80 " + code
				: null) : Words.first(block.text(), code);
	}
}
