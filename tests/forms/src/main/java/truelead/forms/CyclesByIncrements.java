package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** Under G91 R counts from the level before, the depth from R, and each place from the one before. */
final class CyclesByIncrements extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint(), program.cyclesWithI());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		Block head = program.blocks().get(row.head());
		double level = Words.number(head, 'R', Double.NaN);
		double depth = Words.number(head, 'Z', Double.NaN);
		if (Double.isNaN(level + depth + before.z() + before.x() + before.y()) || before.cycle() > 0 || Words.has(head, "KL")
				|| level > before.z()) {
			return;
		}
		double[] first = row.places().get(0);
		String words = "X" + Figures.exact(first[0] - before.x(), program.decimals()) + " Y"
				+ Figures.exact(first[1] - before.y(), program.decimals()) + " Z" + Figures.exact(depth - level, program.decimals()) + " R"
				+ Figures.exact(level - before.z(), program.decimals());
		lines.set(row.head(), Words.first(Words.last(Words.without(head, word -> "XYZR".indexOf(word.address()) >= 0
				|| word.address() == 'G' && Words.value(word) == 90), words), "G91"));
		for (int k = 1; k < row.places().size(); k++) {
			double[] from = row.places().get(k - 1);
			double[] to = row.places().get(k);
			lines.set(row.head() + k, words(program, to[0] - from[0], to[1] - from[1]));
		}
		lines.set(row.behind(), ending(program.blocks().get(row.behind()), "G90"));
	}
}
