package truelead.checker.lesson;

import java.util.List;

/**
 * A drawing of curves over two axes.
 *
 * @param title       what it shows
 * @param across      label of the horizontal axis with its unit
 * @param up          label of the vertical axis with its unit
 * @param trueToScale whether a millimetre is as long across as up
 * @param curves      told apart by their dashes
 */
public record Plot(String title, String across, String up, boolean trueToScale, List<Curve> curves) {

	public Plot {
		curves = List.copyOf(curves);
	}

	/** How a line is broken, so that curves are told apart without colour. */
	public enum Dash {
		SOLID(""), LONG("9 4"), SHORT("4 3"), DOTS("1.5 3"), MIXED("10 3 2 3");

		private final String pattern;

		Dash(String pattern) {
			this.pattern = pattern;
		}

		/** Lengths of dashes and gaps, parted by blanks; empty for an unbroken line. */
		public String pattern() {
			return pattern;
		}
	}

	/**
	 * One curve.
	 *
	 * @param name  as the models know it
	 * @param label as a person reads it
	 */
	public record Curve(String name, String label, Dash dash) {
	}
}
