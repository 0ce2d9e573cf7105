package truelead.checker.thread;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * The formulas of ASME B1.1 clause 8 for internal Unified threads, inches, with the rounding in stages that reproduces its
 * tables: pitch to 8 decimals, what lies between to 6, tolerances and basic sizes to 4, then 1B and 2B minor diameters of
 * 0.138 in and over to 3.
 *
 * <p> Checked against 247 rows of the published table (38 from prints, the others from memory, see unified-published.csv): all but #6-32 3B
 * and 1-14 UNS agree to the last digit. Two things are not in the formula's text and were found from the tables: the sums are made of
 * numbers already rounded to 4 decimals (7/8-14 minor diameter 0.7977 + 0.0158 = 0.8135, printed 0.814), and the tolerance of a thread
 * whose length of engagement is 9 pitches is computed not for its own diameter but, in the tables, for the nearest step of 1/8 in to 3/4,
 * 1/4 in to 2 and 1/2 in above, halves down (15/16-16 has that of 1-16).
 */
final class UnifiedFormula {
	/** What the pitch diameter is below D, 3/4 H, in pitches (ASME B1.1, with its number of decimals). */
	private static final BigDecimal PITCH_DIAMETER = new BigDecimal("0.64951905");
	/** What the smallest minor diameter is below D, 5/4 H, in pitches (ASME B1.1, with its number of decimals). */
	private static final BigDecimal MINOR_DIAMETER = new BigDecimal("1.08253175");

	/** The classes of bolts. */
	static final List<String> BOLT_CLASSES = List.of("1A", "2A", "3A");

	private final double diameter;
	private final double tpi;
	private final BigDecimal pitch;
	private final Engagement engagement;

	/** The length over which a thread is engaged, which its tolerance grows with. */
	enum Engagement {
		/** One diameter: UNC, UNF, 4-, 6- and 8-UN. */
		DIAMETER,
		/** Nine pitches: the other series, with the tables' steps of diameter. */
		NINE_PITCHES_TABULATED,
		/** Nine pitches: threads of no series, by their own diameter. */
		NINE_PITCHES
	}

	/** A thread, diameter in inches. */
	UnifiedFormula(double diameter, double tpi, Engagement engagement) {
		this.diameter = diameter;
		this.tpi = tpi;
		this.pitch = BigDecimal.ONE.divide(BigDecimal.valueOf(tpi), 8, RoundingMode.HALF_UP);
		this.engagement = engagement;
	}

	/** Basic pitch diameter, the smallest of every class. */
	BigDecimal pitchMin() {
		return below(PITCH_DIAMETER);
	}

	/** Largest pitch diameter: 1.95, 1.3 or 0.975 times the tolerance of class 2A above the basic one for 1B, 2B, 3B. */
	BigDecimal pitchMax(String threadClass) {
		double factor = switch (threadClass) {
			case "1B" -> 1.95;
			case "2B" -> 1.3;
			default -> 0.975;
		};
		return pitchMin().add(Decimals.round(tolerance2A(), 6).multiply(BigDecimal.valueOf(factor)).setScale(4, RoundingMode.HALF_UP));
	}

	/**
	 * How far a class of bolts lies below the basic sizes: 0.3 times the tolerance of 2A, but 3A not at all (ASME B1.1, from memory).
	 * 1/2-28 UNEF-2A: 0.0011.
	 */
	BigDecimal allowance(String boltClass) {
		return boltClass.equals("3A") ? BigDecimal.ZERO : Decimals.round(0.3 * tolerance2A(), 4);
	}

	/** Tolerance of a bolt's pitch diameter: 1.5, 1 or 0.75 times that of 2A for 1A, 2A, 3A (ASME B1.1). 1/2-28 UNEF-2A: 0.0037. */
	BigDecimal boltPitchTolerance(String boltClass) {
		double factor = switch (boltClass) {
			case "1A" -> 1.5;
			case "2A" -> 1;
			default -> 0.75;
		};
		return Decimals.round(tolerance2A(), 6).multiply(BigDecimal.valueOf(factor)).setScale(4, RoundingMode.HALF_UP);
	}

	/** Tolerance of a bolt's major diameter: 0.060 ∛P², for 1A 0.090 ∛P² (ASME B1.1). 1/2-28 UNEF-2A: 0.006508, printed 0.0065. */
	BigDecimal boltMajorTolerance(String boltClass) {
		return staged(Decimals.round((boltClass.equals("1A") ? 0.090 : 0.060) * Math.pow(pitch.doubleValue(), 2.0 / 3), 6));
	}

	/** 0.0015 ∛D + 0.0015 √LE + 0.015 ∛P² (ASME B1.1 clause 5.8.1). 1/2-28 UNEF: 0.003668. */
	double tolerance2A() {
		double length = engagement == Engagement.DIAMETER ? diameter : 9 * pitch.doubleValue();
		double reckoned = engagement == Engagement.NINE_PITCHES_TABULATED ? step(diameter) : diameter;
		return 0.0015 * Math.cbrt(reckoned) + 0.0015 * Math.sqrt(length)
				+ 0.015 * Math.pow(pitch.doubleValue(), 2.0 / 3);
	}

	/** Smallest minor diameter. 1/2-28: 0.461338, printed 0.461. */
	BigDecimal minorMin(String threadClass) {
		return below(MINOR_DIAMETER).setScale(minorPlaces(), RoundingMode.HALF_UP).setScale(threadClass.equals("3B") ? 4 : minorPlaces());
	}

	/** Largest minor diameter. */
	BigDecimal minorMax(String threadClass) {
		boolean fine = threadClass.equals("3B");
		BigDecimal sum = below(MINOR_DIAMETER).add(staged(Decimals.round(minorTolerance(fine), 6)));
		return sum.setScale(fine ? 4 : minorPlaces(), RoundingMode.HALF_UP);
	}

	/**
	 * Tolerance of the minor diameter, not rounded; ASME B1.1 clause 5.8.2 d: 0.05 ∛P² + 0.03 P/D − 0.002 within bounds; for 1B and 2B from
	 * 1/4 in up 0.25 P − 0.4 P².
	 */
	double minorTolerance(boolean class3) {
		double p = pitch.doubleValue();
		double small = 0.25 * p - 0.4 * p * p;
		if (!class3 && diameter > 0.2495) {
			return tpi >= 4 ? small : 0.15 * p;
		}
		double lower = !class3 ? small : tpi >= 13 ? 0.23 * p - 1.5 * p * p : 0.12 * p;
		double general = 0.05 * Math.pow(p, 2.0 / 3) + 0.03 * p / diameter - 0.002;
		return Math.min(Math.max(general, lower), 0.394 * p);
	}

	private static double step(double diameter) {
		double width = diameter <= 0.75 ? 0.125 : diameter <= 2 ? 0.25 : 0.5;
		return diameter < 0.25 ? diameter : Math.ceil(diameter / width - 0.5 - 1e-9) * width;
	}

	private int minorPlaces() {
		return diameter < 0.1375 ? 4 : 3;
	}

	private BigDecimal below(BigDecimal share) {
		return staged(BigDecimal.valueOf(diameter).subtract(share.multiply(pitch, MathContext.DECIMAL64)));
	}

	private static BigDecimal staged(BigDecimal value) {
		return value.setScale(6, RoundingMode.HALF_UP).setScale(4, RoundingMode.HALF_UP);
	}
}
