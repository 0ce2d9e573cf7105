package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.program.LengthUnit;

/** The thread in the part that a wire insert is screwed into. */
public final class InsertThread {

	/** What is added to D for the minor diameter, H/4, in pitches (DIN 8140-2, ASME B18.29.1; from memory). */
	private static final double MINOR = Math.sqrt(3) / 8;
	/** For the pitch diameter, 3/4 H, in pitches (the same). */
	private static final double PITCH = 3 * Math.sqrt(3) / 8;
	/** For the major diameter, 3/2 H, in pitches (the same). */
	private static final double MAJOR = 3 * Math.sqrt(3) / 4;
	/** How much a drill is larger than the nominal diameter, in pitches: M8 8.4 (common practice, from memory). */
	private static final double DRILL = 0.35;
	/** The grade of ISO 965-1 that the minor diameter has (DIN 8140-2, from memory). */
	private static final int MINOR_GRADE = 5;

	private InsertThread() {
	}

	/**
	 * The limits of the thread for an insert of a metric or Unified thread; empty for other systems. Minor diameter at least D + H / 4,
	 * pitch diameter D + 3/4 H, major diameter D + 3/2 H (DIN 8140-2, ASME B18.29.1; from memory); the minor diameter of metric ones has
	 * the tolerance of 5H above, EG M8: 8.271 to 8.483. The largest pitch diameter is not held.
	 *
	 * @param spec the thread that the insert has inside
	 */
	public static Optional<Limits> limits(ThreadSpec spec) {
		if (spec.system() != ThreadSystem.METRIC && spec.system() != ThreadSystem.UNIFIED) {
			return Optional.empty();
		}
		boolean metric = spec.system() == ThreadSystem.METRIC;
		int places = metric ? 3 : 4;
		double d = spec.diameter() / spec.unit().mm();
		double p = spec.pitch() / spec.unit().mm();
		BigDecimal minor = Decimals.round(d + MINOR * p, places);
		Optional<BigDecimal> largest = metric
				? MetricTolerances.minor(spec, MINOR_GRADE).map(t -> minor.add(BigDecimal.valueOf(t.micrometres(), 3))) : Optional.empty();
		return Optional.of(new Limits("", spec.unit(), Optional.of(minor), largest, Optional.of(Decimals.round(d + PITCH * p, places)),
				Optional.empty(), Optional.of(Decimals.round(d + MAJOR * p, places)), Origin.FROM_MEMORY,
				(metric ? "DIN 8140-2" : "ASME B18.29.1") + ", by its formulas (from memory)"));
	}

	/**
	 * The largest minor diameter that a thread for an insert can have in any usual class, mm: the smallest one and the tolerance of the
	 * plain thread, 6H or 2B, which is wider than its own (DIN 8140-2, ASME B18.29.1; from memory). Empty where no tolerance is known.
	 */
	public static OptionalDouble largestMinor(ThreadSpec spec) {
		ThreadSpec plain = spec.withoutClass();
		return ThreadTable.standard().limits(plain).filter(limits -> limits.minorMinMm().isPresent() && limits.minorMaxMm().isPresent())
				.map(limits -> OptionalDouble.of(spec.diameter() + MINOR * spec.pitch() + limits.minorMaxMm().getAsDouble()
						- limits.minorMinMm().getAsDouble())).orElse(OptionalDouble.empty());
	}

	/** The drill that is made nearest to D + 0.35 P. */
	public static DrillSizes.Drill drill(ThreadSpec spec) {
		return DrillSizes.nearest(spec.diameter() + DRILL * spec.pitch(), spec.unit());
	}

	/**
	 * Why a thread for an insert is given no sheet of the plain thread's sizes, and what is known of its own: what follows its name in a
	 * sentence.
	 */
	public static String instead(ThreadSpec spec) {
		String unit = spec.unit() == LengthUnit.MM ? " mm" : " in";
		String known = limits(spec).map(limits -> ": minor diameter " + limits.minorMin().orElseThrow()
				+ limits.minorMax().map(most -> " to " + most + unit).orElse(unit + " at least") + ", pitch diameter "
				+ limits.pitchMin().orElseThrow() + unit + " at least, major diameter " + limits.majorMin().orElseThrow() + unit
				+ " at least; drill " + drill(spec).name() + "; " + limits.source()
				+ "; the other limits stand in the tables of the insert's maker")
				.orElse(": no limits of such threads are known here; see the tables of the insert's maker");
		return "is tapped oversize for a wire insert, and the sizes of the plain thread are too small" + known;
	}
}
