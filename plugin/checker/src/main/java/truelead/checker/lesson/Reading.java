package truelead.checker.lesson;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One number that a lesson shows.
 *
 * @param name     as the models know it
 * @param label    as a person reads it
 * @param unit     of the number; empty for a count
 * @param decimals shown
 * @param none     what is shown where there is no such number
 */
public record Reading(String name, String label, String unit, int decimals, String none) {

	/** The number with its unit, or what stands for none. */
	public String said(double value) {
		return Double.isNaN(value) ? none : fixed(value, decimals) + (unit.isEmpty() ? "" : " " + unit);
	}

	/** A number with so many decimals, without a minus before nothing but zeros. */
	static String fixed(double value, int decimals) {
		if (Double.isNaN(value) || Double.isInfinite(value)) {
			return "?";
		}
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
		return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
	}
}
