package truelead.faults;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as a programmer writes them. */
final class Figures {
	private Figures() {
	}

	/** The value rounded half up to so many decimals. */
	static double round(double value, int decimals) {
		return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
	}

	/** The value rounded away from nothing upward to so many decimals. */
	static double up(double value, int decimals) {
		return BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_UP).setScale(decimals, RoundingMode.CEILING).doubleValue();
	}

	/** The shortest text of the value at no more than so many decimals, without a trailing point. */
	static String trim(double value, int decimals) {
		BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
		return (number.scale() < 0 ? number.setScale(0) : number).toPlainString();
	}

	/** The value with exactly so many decimals. */
	static String full(double value, int decimals) {
		return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
	}

	/** The fewest decimals, from low to high, that hold the value within the relative error; high if none does. */
	static int decimals(double value, int low, int high, double error) {
		for (int n = low; n < high; n++) {
			if (Math.abs(round(value, n) - value) <= error * Math.abs(value)) {
				return n;
			}
		}
		return high;
	}
}
