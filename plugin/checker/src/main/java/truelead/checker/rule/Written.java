package truelead.checker.rule;

/** What the decimals that a programmer wrote leave open. */
public final class Written {

	/**
	 * Half of the third decimal of an inch, mm. Who writes fewer decimals than that means the value: X30 is 30 (common practice, no
	 * source).
	 */
	private static final double COARSEST = 0.0127;

	private Written() {
	}

	/** How far a position may be off by rounding, mm, from half of the last decimal written. */
	public static double open(double resolution) {
		return Math.min(resolution, COARSEST);
	}
}
