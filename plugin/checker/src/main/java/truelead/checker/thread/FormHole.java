package truelead.checker.thread;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import truelead.checker.program.LengthUnit;

/**
 * The hole for a formed thread. Machinery's Handbook, cold form tapping: hole = D − 0.0068 × percent × P, 65 percent recommended, 60
 * the least. M8x1.25 at 65 percent: 7.447 mm.
 */
public final class FormHole {
	/** The percentage that Machinery's Handbook recommends. */
	public static final double RECOMMENDED_PERCENT = 65;
	/** Beyond these a drill is no drill for forming the thread (common practice, no source). */
	private static final double LEAST_PERCENT = 50;
	private static final double MOST_PERCENT = 80;
	/** Machinery's Handbook: the lower bound. */
	private static final double LOWER_BOUND_PERCENT = 60;
	private static final double SHARE = 0.0068;
	private static final Map<ThreadSpec, Double> PRACTICE = new HashMap<>();

	static {
		DataFile.rows(FormHole.class, "form-drill-metric.csv")
				.forEach(r -> PRACTICE.put(ThreadSpec.metric(DataFile.number(r, "D"), DataFile.number(r, "P")),
						DataFile.number(r, "drill")));
	}

	private FormHole() {
	}

	/** The hole in mm for a percentage of thread. */
	public static double diameter(ThreadSpec spec, double percent) {
		return spec.diameter() - SHARE * percent * spec.pitch();
	}

	/** The percentage of thread that a hole in mm gives. */
	public static double percent(ThreadSpec spec, double hole) {
		return (spec.diameter() - hole) / (SHARE * spec.pitch());
	}

	/**
	 * The drill for forming: of practice (form-drill-metric.csv), else that which is made nearest to the recommended hole; empty where
	 * none is made near it, and for threads that are not formed to this rule: pipe, Whitworth, trapezoids.
	 */
	public static Optional<DrillSizes.Drill> drill(ThreadSpec spec) {
		Double practice = spec.system() == ThreadSystem.METRIC ? PRACTICE.get(ThreadSpec.metric(spec.diameter(), spec.pitch())) : null;
		if (practice != null) {
			return Optional.of(new DrillSizes.Drill(Decimals.plain(practice, 2), practice, LengthUnit.MM));
		}
		if (!spec.system().formable()) {
			return Optional.empty();
		}
		return near(spec, LOWER_BOUND_PERCENT).or(() -> near(spec, LEAST_PERCENT));
	}

	/** The hole grows smaller with the percentage. */
	private static Optional<DrillSizes.Drill> near(ThreadSpec spec, double leastPercent) {
		return DrillSizes.nearest(diameter(spec, RECOMMENDED_PERCENT), diameter(spec, MOST_PERCENT),
				diameter(spec, leastPercent), spec.unit());
	}

	/**
	 * The minor diameter that forming leaves, mm: the percentage is of a thread depth of 1.299 P on the diameter, so D − 0.01299 × percent
	 * × P; the metal of the furrow between 0.0068 and 0.01299 is pushed inwards. M8x1.25 in a 7.447 mm hole: 6.945. An estimate; measure
	 * the first part.
	 */
	public static double formedMinorDiameter(ThreadSpec spec, double hole) {
		return spec.diameter() - 0.0129904 * percent(spec, hole) * spec.pitch();
	}
}
