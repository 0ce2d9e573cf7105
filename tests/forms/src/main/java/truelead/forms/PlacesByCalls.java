package truelead.forms;

import java.util.List;
import java.util.Optional;

/** A subprogram that goes one step by G91, called so many times, goes so many steps. */
final class PlacesByCalls implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		Subprograms steps = new Subprograms(program, 5001, "M99");
		for (Row row : Row.of(program, Course.of(program))) {
			int last = row.places().size() - 1;
			if (last >= 2 && row.known() && row.ended() && even(row.places())) {
				double dx = row.places().get(1)[0] - row.places().get(0)[0];
				double dy = row.places().get(1)[1] - row.places().get(0)[1];
				for (int k = 2; k <= last; k++) {
					lines.set(row.head() + k, null);
				}
				lines.set(row.head() + 1, "M98 P" + steps.of("G91 " + RowByRow.words(program, dx, dy) + "\nG90") + " L" + last);
			}
		}
		lines.removeIf(line -> line == null);
		return steps.behind(lines);
	}

	private static boolean even(List<double[]> places) {
		for (int k = 2; k < places.size(); k++) {
			double dx = places.get(k)[0] - 2 * places.get(k - 1)[0] + places.get(k - 2)[0];
			double dy = places.get(k)[1] - 2 * places.get(k - 1)[1] + places.get(k - 2)[1];
			if (Math.hypot(dx, dy) > 1e-6) {
				return false;
			}
		}
		return true;
	}
}
