package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.MetricTolerances.Tolerance;

/**
 * Limits of external threads: metric and MJ by the tables and formulas of ISO 965-1, Unified and UNJ by those of ASME B1.1, G by ISO 228-1.
 * What these do not give is empty, taper threads too: they are gauged, and have no limits of size.
 */
final class BoltTable {

	/** As ISO 965-1 recommends for threads above M1.4, and up to there. */
	private static final String USUAL_METRIC = "6g";
	private static final String SMALL_METRIC = "6h";
	/** The largest diameter of the latter, mm, with what keeps it from being missed (ISO 965-1). */
	private static final double SMALL = 1.4 + 1e-4;

	private BoltTable() {
	}

	/**
	 * The class that is meant when none is said: 6g, 6h up to M1.4, 4h6h for MJ, 2A, 3A for UNJ; of G the closer one, A, all of which lies
	 * within B. Empty for the others.
	 */
	static String defaultClass(ThreadSpec spec) {
		return switch (spec.system()) {
			case METRIC -> spec.diameter() < SMALL ? SMALL_METRIC : USUAL_METRIC;
			case MJ -> "4h6h";
			case UNIFIED -> "2A";
			case UNJ -> "3A";
			case G -> "A";
			default -> "";
		};
	}

	/** The usual classes of screws of a system, the default one first. */
	static List<String> classes(ThreadSystem system) {
		return switch (system) {
			case METRIC -> List.of("6g", "6h", "4h", "8g");
			case MJ -> List.of("4h6h");
			case UNIFIED -> List.of("2A", "3A");
			case UNJ -> List.of("3A");
			case G -> List.of("A");
			default -> List.of();
		};
	}

	/**
	 * The limits of one class; empty where nothing here gives them. {@code series} tells how a Unified thread's length of engagement is
	 * reckoned.
	 */
	static Optional<BoltLimits> limits(ThreadSpec spec, String threadClass, Optional<UnifiedTable.Row> series) {
		return switch (spec.system()) {
			case METRIC, MJ -> BoltClass.of(threadClass).flatMap(wanted -> metric(spec, wanted));
			case UNIFIED -> unified(spec, threadClass, series, "");
			case UNJ -> threadClass.equals("3A")
					? unified(spec, threadClass, series, "limits of UN 3A, as ASME B1.15 has them (from memory): ") : Optional.empty();
			case G -> threadClass.equals("A") ? ThreadTable.standard().limits(spec).flatMap(BoltTable::pipe) : Optional.empty();
			default -> Optional.empty();
		};
	}

	/** d less the deviation, and Td below it; d2 less the deviation, and Td2 below it. M20x1.5-6g: 19.968 to 19.732, 18.994 to 18.854. */
	private static Optional<BoltLimits> metric(ThreadSpec spec, BoltClass wanted) {
		Optional<Tolerance> pitch = MetricTolerances.boltPitch(spec, wanted.pitchGrade());
		Optional<Tolerance> major = MetricTolerances.major(spec, wanted.majorGrade());
		// g lies as far below the basic size as G above it
		Optional<Tolerance> deviation = MetricTolerances.deviation(spec, Character.toUpperCase(wanted.position()));
		if (pitch.isEmpty() || major.isEmpty() || deviation.isEmpty()) {
			return Optional.empty();
		}
		BigDecimal shift = micrometres(deviation.get());
		BigDecimal majorMax = Decimals.round(spec.diameter(), 3).subtract(shift);
		BigDecimal pitchMax = MetricTable.basicPitch(spec).subtract(shift);
		boolean mj = spec.system() == ThreadSystem.MJ;
		String source = (mj ? "limits of ISO 965-1, as ISO 5855 has them (from memory); " : "")
				+ "basic size ISO 724; major diameter tolerance " + major.get().source() + "; pitch diameter tolerance "
				+ pitch.get().source() + (shift.signum() == 0 ? "" : "; deviation g, that of G, " + deviation.get().source());
		return Optional.of(new BoltLimits(wanted.name(), LengthUnit.MM, majorMax.subtract(micrometres(major.get())), majorMax,
				pitchMax.subtract(micrometres(pitch.get())), pitchMax, Origin.of(source).and(Origin.COMPUTED), source));
	}

	private static BigDecimal micrometres(Tolerance tolerance) {
		return BigDecimal.valueOf(tolerance.micrometres(), 3);
	}

	private static Optional<BoltLimits> unified(ThreadSpec spec, String threadClass, Optional<UnifiedTable.Row> series, String also) {
		String name = threadClass.toUpperCase(Locale.ROOT);
		if (!UnifiedTable.reckons(spec) || !UnifiedFormula.BOLT_CLASSES.contains(name)) {
			return Optional.empty();
		}
		UnifiedFormula formula = new UnifiedFormula(spec.inches(), spec.tpi(),
				series.map(UnifiedTable::engagement).orElse(UnifiedFormula.Engagement.NINE_PITCHES));
		BigDecimal majorMax = Decimals.round(spec.inches(), 4).subtract(formula.allowance(name));
		BigDecimal pitchMax = formula.pitchMin().subtract(formula.allowance(name));
		String source = also + "computed by ASME B1.1, tolerances of clause 5.8.1, allowance 0.3 of that of 2A (from memory)"
				+ (series.isPresent() ? "" : "; 9 pitches of engagement, not in the series");
		return Optional.of(new BoltLimits(name, LengthUnit.INCH, majorMax.subtract(formula.boltMajorTolerance(name)), majorMax,
				pitchMax.subtract(formula.boltPitchTolerance(name)), pitchMax, Origin.of(source), source));
	}

	/**
	 * Class A has the nut's tolerance of the pitch diameter downwards, and twice that of the major diameter. G 1/2: 20.955 to 20.671,
	 * 19.793 to 19.651.
	 */
	private static Optional<BoltLimits> pipe(Limits nut) {
		if (nut.pitchMax().isEmpty()) {
			return Optional.empty();
		}
		BigDecimal major = nut.majorMin().orElseThrow();
		BigDecimal pitch = nut.pitchMin().orElseThrow();
		BigDecimal tolerance = nut.pitchMax().get().subtract(pitch);
		return Optional.of(new BoltLimits("A", LengthUnit.MM, major.subtract(tolerance).subtract(tolerance), major,
				pitch.subtract(tolerance), pitch, Origin.FROM_MEMORY, "ISO 228-1 class A, which lies within B (tolerances from memory)"));
	}
}
