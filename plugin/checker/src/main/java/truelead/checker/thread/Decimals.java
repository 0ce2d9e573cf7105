package truelead.checker.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as tables write them. */
public final class Decimals {
	private Decimals() {
	}

	/** A plain number rounded half up to so many places, as tables round; a number that is none throws. */
	public static BigDecimal round(double value, int places) {
		// valueOf goes by the shortest decimal that reads back, so 2.4385 is not taken for 2.43849999
		return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
	}

	/** A plain number with at most so many places and no zeros at the end. */
	public static String plain(double value, int places) {
		BigDecimal rounded = round(value, places).stripTrailingZeros();
		return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
	}
}
