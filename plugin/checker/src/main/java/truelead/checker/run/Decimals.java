package truelead.checker.run;

import truelead.checker.program.LengthUnit;

/** What the decimals of a block leave open of a length. */
public final class Decimals {

	/**
	 * Half of the second decimal in mm and of the third in inch, mm: who writes fewer means the value exactly, as in {@code X5.} (common
	 * practice, no source).
	 */
	private static final double COARSEST = 0.005;
	private static final double COARSEST_INCH = 0.0005 * LengthUnit.INCH.mm();

	private Decimals() {
	}

	/**
	 * Half of a last decimal, mm, but no more than of what is written with decimals at all.
	 *
	 * @param unit       of the block
	 * @param resolution half of the last decimal written, mm; 0 for computed values
	 */
	public static double open(LengthUnit unit, double resolution) {
		return Math.min(resolution, unit == LengthUnit.INCH ? COARSEST_INCH : COARSEST);
	}
}
