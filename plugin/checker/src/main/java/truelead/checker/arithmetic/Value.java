package truelead.checker.arithmetic;

import truelead.checker.program.Reason;

/**
 * What an expression comes to.
 *
 * @param number a plain number, in whatever unit the program means it; NaN where it is not known, there is none, or it is a text
 * @param why    why it is not known; nothing for a known number
 * @param vacant a variable that a call left out, which equals {@code #0} and counts as 0 in arithmetic
 * @param decimals with how many a number is written that a variable was given, to tell how far it may be rounded; -1 for one that was
 *                 worked out
 */
public record Value(double number, Reason why, boolean vacant, int decimals) {

	public static final Value VACANT = new Value(Double.NaN, Reason.of("it was left out of the call"), true, -1);
	public static final Value ZERO = new Value(0, Reason.NONE, false, -1);
	public static final Value ONE = new Value(1, Reason.NONE, false, -1);

	/** A known plain number; a result that is none, such as a root of a negative number, is not known. */
	public static Value of(double number) {
		return Double.isNaN(number) || Double.isInfinite(number) ? unknown("the result is no number")
				: new Value(number, Reason.NONE, false, -1);
	}

	/** A number as it is written, with so many decimals. */
	public static Value written(double number, int decimals) {
		return new Value(number, Reason.NONE, false, decimals);
	}

	/** Not known, and why. */
	public static Value unknown(String why) {
		return unknown(Reason.of(why));
	}

	/** Not known, for the reason of something else. */
	public static Value unknown(Reason why) {
		return new Value(Double.NaN, why, false, -1);
	}

	/** True as 1, false as 0. */
	public static Value of(boolean condition) {
		return condition ? ONE : ZERO;
	}

	/** Whether the number is known. */
	public boolean known() {
		return !Double.isNaN(number);
	}

	/** As arithmetic takes it. */
	public Value inArithmetic() {
		return vacant ? ZERO : this;
	}
}
