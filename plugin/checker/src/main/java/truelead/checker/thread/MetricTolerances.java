package truelead.checker.thread;

import java.util.List;
import java.util.Optional;
import java.util.function.ToIntBiFunction;

/** The tolerances of ISO 965-1 by diameter (mm), pitch (mm) and grade. Read when a thread without published limits asks for them first. */
final class MetricTolerances {
	/** ISO 965-1 begins here, mm. */
	private static final double SMALLEST = 0.99;
	/** From this pitch on, mm, ISO 965-1 has grades 4 to 6 of the minor diameter, and so no table is asked. */
	private static final double ALL_GRADES = 0.3;
	/** The finest grade of ISO 965-1. */
	private static final int FINEST = 4;
	/** The coarsest grade of nuts in ISO 965-1. */
	private static final int COARSEST = 8;

	/** A line of a table: for diameters over and up to (mm), a pitch (mm) and a grade, so many micrometres. */
	record Tolerance(double over, double upTo, double pitch, int grade, int micrometres, String source) {

		private boolean suits(ThreadSpec spec) {
			return Math.abs(pitch - spec.pitch()) < 1e-4 && spec.diameter() > over + 1e-9 && spec.diameter() <= upTo + 1e-9;
		}
	}

	private static final Tolerance NO_DEVIATION = new Tolerance(0, 0, 0, 0, 0, "");
	private static final List<Tolerance> PITCH = DataFile.rows(MetricTolerances.class, "metric-pitch-tolerance.csv").stream()
			.map(r -> line(r, DataFile.number(r, "over"), DataFile.number(r, "upto"), Integer.parseInt(r.get("grade")))).toList();
	private static final List<Tolerance> MINOR = DataFile.rows(MetricTolerances.class, "metric-minor-tolerance.csv").stream()
			.map(r -> line(r, 0, Double.MAX_VALUE, Integer.parseInt(r.get("grade")))).toList();
	private static final List<Tolerance> MAJOR = DataFile.rows(MetricTolerances.class, "metric-major-tolerance.csv").stream()
			.map(r -> line(r, 0, Double.MAX_VALUE, Integer.parseInt(r.get("grade")))).toList();
	private static final List<Tolerance> DEVIATION = DataFile.rows(MetricTolerances.class, "metric-deviation-G.csv").stream()
			.map(r -> line(r, 0, Double.MAX_VALUE, 0)).toList();

	private MetricTolerances() {
	}

	/**
	 * The tolerance of the pitch diameter; empty for a grade that the standard does not have at this pitch, and under its smallest
	 * diameter.
	 */
	static Optional<Tolerance> pitch(ThreadSpec spec, int grade) {
		return of(PITCH, spec, grade, (s, g) -> MetricFormula.pitchTolerance(s.diameter(), s.pitch(), g));
	}

	/** The tolerance of the minor diameter; empty as for the pitch diameter. */
	static Optional<Tolerance> minor(ThreadSpec spec, int grade) {
		return of(MINOR, spec, grade, (s, g) -> MetricFormula.minorTolerance(s.pitch(), g));
	}

	/** The tolerance of a bolt's major diameter; empty as for the pitch diameter. */
	static Optional<Tolerance> major(ThreadSpec spec, int grade) {
		return of(MAJOR, spec, grade, (s, g) -> MetricFormula.majorTolerance(s.pitch(), g));
	}

	/**
	 * The tolerance of a bolt's pitch diameter: five steps of R40 below the nut's, and four more or less for each grade beside the nearest
	 * one that the nut has (ISO 965-1: TD2 = 1.32 Td2). M20x1.5 of grade 6: 140 where the nut has 190.
	 */
	static Optional<Tolerance> boltPitch(ThreadSpec spec, int grade) {
		Optional<Tolerance> nut = Optional.empty();
		for (int near = Math.max(FINEST, Math.min(COARSEST, grade)); nut.isEmpty() && near >= FINEST; near--) {
			nut = pitch(spec, near);
		}
		return nut.map(known -> new Tolerance(known.over(), known.upTo(), known.pitch(), grade,
				MetricFormula.boltTolerance(known.micrometres(), grade - known.grade()), "by that of the nut, 1.32 times as wide, "
				+ known.source()));
	}

	/**
	 * A grade of the minor diameter, or the next finer one where the standard leaves it out: 6 below pitch 0.3 mm, 5 below 0.25 (ISO
	 * 965-1).
	 */
	static int grade(ThreadSpec spec, int usual) {
		int grade = usual;
		while (spec.pitch() < ALL_GRADES - 1e-4 && grade > FINEST && minor(spec, grade).isEmpty()) {
			grade--;
		}
		return grade;
	}

	/** How far a position's tolerances lie above the basic size: G as the standard says, H and all others not at all. */
	static Optional<Tolerance> deviation(ThreadSpec spec, char position) {
		return position == 'G' ? of(DEVIATION, spec, 0, (s, g) -> MetricFormula.deviationG(s.pitch())) : Optional.of(NO_DEVIATION);
	}

	/**
	 * The table's tolerance; by formula where the table has no line for the diameter and pitch, nothing where it has the line and leaves
	 * the grade out.
	 */
	private static Optional<Tolerance> of(List<Tolerance> table, ThreadSpec spec, int grade, ToIntBiFunction<ThreadSpec, Integer> formula) {
		if (spec.diameter() < SMALLEST) {
			return Optional.empty();
		}
		List<Tolerance> lines = table.stream().filter(t -> t.suits(spec)).toList();
		return lines.isEmpty() ? Optional.of(new Tolerance(0, 0, spec.pitch(), grade, formula.applyAsInt(spec, grade),
				MetricFormula.SOURCE)) : lines.stream().filter(t -> t.grade() == grade).findFirst();
	}

	private static Tolerance line(DataRow row, double over, double upTo, int grade) {
		return new Tolerance(over, upTo, DataFile.number(row, "P"), grade, Integer.parseInt(row.get("um")), row.get("source"));
	}
}
