package truelead.checker.thread;

/**
 * The formulas of ISO 965-1 from which its tables of tolerances were rounded, micrometres; diameters and pitches in mm. They speak where no
 * table has the diameter and pitch: M8x0.5, M400x6. One grade is rounded to R40, the others lie four steps apart (a ratio of 1.25): so they
 * agree with the tables in 97 of 106 cells of the minor diameter and 190 of 205 of the pitch diameter, in the others to 7 %
 * (MetricFormulaTest).
 */
final class MetricFormula {
	static final String SOURCE = "not in the table, computed by the formula of ISO 965-1";

	/** The bounds of the standard's ranges of diameter; a range is reckoned with its geometric mean; mm (ISO 965-1). */
	private static final double[] RANGES = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355};
	/** The steps of R40 in a decade (ISO 3, rounded as ISO 965-1 prints them). */
	private static final double[] R40 = {1, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 2.12, 2.24, 2.36, 2.5, 2.65, 2.8,
			3, 3.15, 3.35, 3.55, 3.75, 4, 4.25, 4.5, 4.75, 5, 5.3, 5.6, 6, 6.3, 6.7, 7.1, 7.5, 8, 8.5, 9, 9.5};
	/** From one grade to the next the tolerance grows by four steps of R40, 1.25 times (ISO 965-1). */
	private static final int STEPS_A_GRADE = 4;
	/** Grade 6 of the nut lies 1.32 above that of the bolt, five steps of R40 (ISO 965-1). */
	private static final int NUT = 5;

	private MetricFormula() {
	}

	/** TD2 of grade 6 = 1.32 Td2, Td2 = 90 P^0.4 d^0.1. M8x0.5-6H: 112. */
	static int pitchTolerance(double diameter, double pitch, int grade) {
		return step(nearest(90 * Math.pow(pitch, 0.4) * Math.pow(mean(diameter), 0.1)) + NUT + STEPS_A_GRADE * (grade - 6));
	}

	/** TD1 of grade 4 = 0.63 × 230 P^0.7, for pitches under 1 mm 0.63 × (433 P − 190 P^1.22). */
	static int minorTolerance(double pitch, int grade) {
		double six = pitch < 1 ? 433 * pitch - 190 * Math.pow(pitch, 1.22) : 230 * Math.pow(pitch, 0.7);
		return step(nearest(0.63 * six) + STEPS_A_GRADE * (grade - 4));
	}

	/** Td of grade 6 = 180 ∛P² − 3.15 / √P; 0.63 times as much for grade 4, 1.6 times for 8 (from memory). M8x1.25-6g: 212. */
	static int majorTolerance(double pitch, int grade) {
		double six = 180 * Math.pow(pitch, 2.0 / 3) - 3.15 / Math.sqrt(pitch);
		return step(nearest(six * (grade == 4 ? 0.63 : grade == 8 ? 1.6 : 1)));
	}

	/** The tolerance of a bolt's pitch diameter, so many grades coarser than a nut's, from that, micrometres. */
	static int boltTolerance(int nut, int coarser) {
		return step(nearest(nut) - NUT + STEPS_A_GRADE * coarser);
	}

	/** EI = 15 + 11 P. */
	static int deviationG(double pitch) {
		return step(nearest(15 + 11 * pitch));
	}

	/** The mean of the diameter's range; beyond 355 mm, where the standard ends, the diameter itself. */
	private static double mean(double diameter) {
		for (int i = 1; i < RANGES.length; i++) {
			if (diameter <= RANGES[i] + 1e-9) {
				return Math.sqrt(RANGES[i - 1] * RANGES[i]);
			}
		}
		return diameter;
	}

	/** The number of the step of R40 that is nearest by ratio, counted from 1. */
	private static int nearest(double value) {
		int best = 0;
		for (int i = 1; i < 4 * R40.length; i++) {
			if (Math.abs(Math.log(exact(i) / value)) < Math.abs(Math.log(exact(best) / value))) {
				best = i;
			}
		}
		return best;
	}

	private static double exact(int number) {
		return R40[number % R40.length] * Math.pow(10, number / R40.length);
	}

	private static int step(int number) {
		return (int) Math.round(exact(number));
	}
}
