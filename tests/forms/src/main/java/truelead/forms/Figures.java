package truelead.forms;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as programs write them. */
final class Figures {

	private Figures() {
	}

	/** A number rounded to so many decimals, without zeros behind it, and with its point. */
	static String of(double value, int decimals) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
		if (rounded.signum() == 0) {
			return "0.";
		}
		String text = rounded.toPlainString();
		return text.indexOf('.') < 0 ? text + '.' : text;
	}

	/** A number with so many decimals written, be they zeros: what is rounded is told by the last one. */
	static String exact(double value, int decimals) {
		return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
	}

	/** A code without a point where it has no decimals. */
	static String code(double value) {
		return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
	}
}
