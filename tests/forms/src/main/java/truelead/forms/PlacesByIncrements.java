package truelead.forms;

import java.util.List;
import java.util.Optional;

/** A place is the one before and a step: G91 names the step. */
final class PlacesByIncrements extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		for (int k = 1; k < row.places().size(); k++) {
			double[] from = row.places().get(k - 1);
			double[] to = row.places().get(k);
			lines.set(row.head() + k, (k == 1 ? "G91 " : "") + words(program, to[0] - from[0], to[1] - from[1]));
		}
		if (row.places().size() > 1) {
			lines.set(row.behind(), ending(program.blocks().get(row.behind()), "G90"));
		}
	}
}
