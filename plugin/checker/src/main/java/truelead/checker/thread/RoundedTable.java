package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.program.LengthUnit;

/** Inch threads of which only basic sizes are held: Whitworth (BS 84) and Unified with rounded root (UNJ). Diameters in inches. */
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

	/** D − h and D − 2 h, rounded to 4 decimals: 1/4-20 BSW 0.2180 and 0.1860. Largest sizes are not held. */
	Optional<Limits> whitworthLimits(ThreadSpec spec) {
		double inches = spec.inches();
		double depth = WHITWORTH_DEPTH / spec.tpi();
		boolean known = whitworth.stream().anyMatch(w -> w.sameThread(spec.withHand(Hand.RIGHT)));
		return !known ? Optional.empty() : Optional.of(new Limits("", LengthUnit.INCH, Optional.of(Decimals.round(inches - 2 * depth, 4)),
				Optional.empty(), Optional.of(Decimals.round(inches - depth, 4)), Optional.empty(), Optional.of(Decimals.round(inches, 4)),
				Origin.FROM_MEMORY, "basic sizes by the form of BS 84 (from memory); tolerances not in the table"));
	}

	/** Pitch diameter as for UN, minor diameter D − 9√3/16 P: 1/4-28 UNJF 0.2152. The largest minor diameter is not held. */
	Optional<Limits> unjLimits(ThreadSpec spec, Optional<Limits> unified) {
		BigDecimal minor = Decimals.round(spec.inches() - UNJ_MINOR / spec.tpi(), 4);
		return unified.map(u -> new Limits(u.threadClass(), u.unit(), Optional.of(minor), Optional.empty(), u.pitchMin(), u.pitchMax(),
				u.majorMin(), Origin.FROM_MEMORY,
				"pitch diameter as " + u.source() + "; minor diameter by the form of ASME B1.15 (from memory), its tolerance not in the table"));
	}
}
