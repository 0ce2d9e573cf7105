package truelead.checker.drawing;

import java.util.Locale;
import truelead.checker.program.LengthUnit;

/** Lengths as a drawing shows them, in the unit of the program. */
final class LengthText {

	private LengthText() {
	}

	/**
	 * {@code 12.5 mm}, {@code 0.492 in}; a length in mm comes in, two decimals in mm and three in inches come out, zeros at the end left
	 * out.
	 */
	static String of(double mm, LengthUnit unit) {
		return bare(mm, unit) + (unit == LengthUnit.INCH ? " in" : " mm");
	}

	/** The same without the unit. */
	static String bare(double mm, LengthUnit unit) {
		double value = mm / unit.mm();
		String text = String.format(Locale.ROOT, unit == LengthUnit.INCH ? "%.3f" : "%.2f", value);
		int end = text.length();
		while (text.charAt(end - 1) == '0') {
			end--;
		}
		String trimmed = text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
		return trimmed.equals("-0") ? "0" : trimmed;
	}
}
