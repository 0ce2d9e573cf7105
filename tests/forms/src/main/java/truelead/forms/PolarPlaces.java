package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** A place is a radius and an angle about the zero: G16. */
final class PolarPlaces extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.cyclesWithI(), program.increments(), program.framed(),
				program.calls(), program.skips(), program.withoutPoint());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		if (before.cycle() > 0 || !Words.says(program.blocks().get(row.behind()), 'G', 80)
				|| Words.has(program.blocks().get(row.head()), "KLIJ")) {
			return;
		}
		Block head = program.blocks().get(row.head());
		lines.set(row.head(), Words.first(Words.last(Words.without(head, "XY"), polar(row.places().get(0))), "G16"));
		for (int k = 1; k < row.places().size(); k++) {
			lines.set(row.head() + k, polar(row.places().get(k)));
		}
		lines.set(row.behind(), ending(program.blocks().get(row.behind()), "G15"));
	}

	private static String polar(double[] place) {
		return "X" + Figures.of(Math.hypot(place[0], place[1]), 6) + " Y" + Figures.of(Math.toDegrees(Math.atan2(place[1], place[0])), 7);
	}
}
