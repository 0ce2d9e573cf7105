package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.program.LengthUnit;

/** Inch threads with rounded roots, by the formulas of their standards: Whitworth (BS 84) and Unified (UNJ). Diameters in inches. */
final class RoundedTable {
	/** Depth of a Whitworth thread divided by its pitch (BS 84). */
	private static final double WHITWORTH_DEPTH = 0.640327;
	/** ASME B1.15: the minor diameter of a UNJ nut leaves 9/16 H of thread, 9√3/16 P on the diameter. */
	private static final double UNJ_MINOR = 9 * Math.sqrt(3) / 16;

	private final List<ThreadSpec> whitworth = new ArrayList<>();

	RoundedTable() {
		DataFile.rows(RoundedTable.class, "whitworth.csv").forEach(r -> whitworth.add(ThreadSpec
				.inch(ThreadSystem.valueOf(r.get("system")), r.get("system"), DataFile.number(r, "D"), DataFile.number(r, "tpi"))));
	}

	List<ThreadSpec> whitworth() {
		return List.copyOf(whitworth);
	}

	/**
	 * D − h and D − 2 h, rounded to 4 decimals, and the tolerances of BS 84 for nuts: minor diameter 0.2 P and 0.004 in from 26 threads an
	 * inch, 0.005 from 22, 0.007 for fewer; pitch diameter of the medium class 0.002 ∛D + 0.003 √D + 0.005 √P (from memory). 1/4-20 BSW
	 * 0.1860 to 0.2030, 0.2180 to 0.2219.
	 */
	Optional<Limits> whitworthLimits(ThreadSpec spec) {
		double inches = spec.inches();
		double pitch = 1 / spec.tpi();
		double depth = WHITWORTH_DEPTH * pitch;
		double minorTolerance = 0.2 * pitch + (spec.tpi() >= 26 ? 0.004 : spec.tpi() >= 22 ? 0.005 : 0.007);
		double pitchTolerance = 0.002 * Math.cbrt(inches) + 0.003 * Math.sqrt(inches) + 0.005 * Math.sqrt(pitch);
		boolean known = whitworth.stream().anyMatch(w -> w.sameThread(spec.withHand(Hand.RIGHT)));
		return !known ? Optional.empty()
				: Optional.of(new Limits("", LengthUnit.INCH, inch(inches - 2 * depth), inch(inches - 2 * depth + minorTolerance),
						inch(inches - depth), inch(inches - depth + pitchTolerance), inch(inches), Origin.FROM_MEMORY,
						"BS 84, by its form and its formulas, pitch diameter of the medium class (from memory)"));
	}

	private static Optional<BigDecimal> inch(double value) {
		return Optional.of(Decimals.round(value, 4));
	}

	/**
	 * Pitch diameter as for UN, minor diameter D − 9√3/16 P with the tolerance that UN has in class 3B, not rounded with its minor
	 * diameter: 1/4-28 UNJF 0.2152 to 0.2229.
	 */
	Optional<Limits> unjLimits(ThreadSpec spec, Optional<Limits> unified) {
		BigDecimal minor = Decimals.round(spec.inches() - UNJ_MINOR / spec.tpi(), 4);
		BigDecimal tolerance = Decimals.round(new UnifiedFormula(spec.inches(), spec.tpi(),
				UnifiedFormula.Engagement.DIAMETER).minorTolerance(true), 4);
		return unified.map(u -> new Limits(u.threadClass(), u.unit(), Optional.of(minor), Optional.of(minor.add(tolerance)), u.pitchMin(),
				u.pitchMax(), u.majorMin(), Origin.FROM_MEMORY, "pitch diameter as " + u.source()
				+ "; minor diameter by the form of ASME B1.15, with the tolerance of class 3B of ASME B1.1 (from memory)"));
	}
}
