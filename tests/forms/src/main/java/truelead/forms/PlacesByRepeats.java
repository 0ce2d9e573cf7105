package truelead.forms;

import java.util.List;
import java.util.Optional;

/** A step done so many times is a count behind it. */
final class PlacesByRepeats extends RowByRow {

	private final char word;

	/** The count is a word of this letter, K or L. */
	PlacesByRepeats(char word) {
		this.word = word;
	}

	@Override
	public String name() {
		return "places by repeats " + word;
	}

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
		StringBuilder steps = new StringBuilder("G91");
		boolean repeated = false;
		for (int k = 1, count; k <= last; k += count) {
			count = 1;
			while (k + count <= last && same(step(row, k), step(row, k + count))) {
				count++;
			}
			steps.append(k == 1 ? " " : "\n").append(words(program, step(row, k)[0], step(row, k)[1]))
					.append(count > 1 ? " " + word + count : "");
			repeated |= count > 1;
		}
		if (repeated) {
			lines.set(row.head() + 1, steps.toString());
			for (int k = 2; k <= last; k++) {
				lines.set(row.head() + k, null);
			}
			lines.set(row.behind(), ending(program.blocks().get(row.behind()), "G90"));
		}
	}

	private static double[] step(Row row, int k) {
		return new double[] {row.places().get(k)[0] - row.places().get(k - 1)[0], row.places().get(k)[1] - row.places().get(k - 1)[1]};
	}

	private static boolean same(double[] one, double[] other) {
		return Math.hypot(one[0] - other[0], one[1] - other[1]) < 1e-6;
	}
}
