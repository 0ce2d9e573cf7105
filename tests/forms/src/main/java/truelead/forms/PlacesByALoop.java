package truelead.forms;

import java.util.List;
import java.util.Optional;

/** A loop names the places of a row one after the other. */
final class PlacesByALoop extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		int last = row.places().size() - 1;
		if (last < 2) {
			return;
		}
		double[] first = row.places().get(0);
		double dx = row.places().get(1)[0] - first[0];
		double dy = row.places().get(1)[1] - first[1];
		for (int k = 2; k <= last; k++) {
			if (Math.hypot(first[0] + k * dx - row.places().get(k)[0], first[1] + k * dy - row.places().get(k)[1]) > 1e-6) {
				return;
			}
		}
		for (int k = 2; k <= last; k++) {
			lines.set(row.head() + k, null);
		}
		lines.set(row.head() + 1, "#101=1\nWHILE[#101LE" + last + "]DO1\n" + along('X', first[0], dx, program) + " "
				+ along('Y', first[1], dy, program) + "\n#101=#101+1\nEND1");
	}

	private static String along(char axis, double from, double step, Program program) {
		return axis + "[" + Figures.of(from, program.decimals()) + "+#101*" + Figures.of(step, program.decimals()) + "]";
	}
}
