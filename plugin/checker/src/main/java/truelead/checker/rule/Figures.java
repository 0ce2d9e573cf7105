package truelead.checker.rule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.WordRef;

/**
 * Numbers as messages show them: lengths are taken in mm and shown in the program's unit, with as many decimals as the shop uses. All rules
 * write their numbers through here, so that one program is spoken to in one way.
 */
public record Figures(LengthUnit unit) {

	/** A diameter, depth or distance given in mm: {@code 12.5 mm}, {@code 0.492 in}; up to 2 decimals in mm, 3 in inch. */
	public String length(double mm) {
		return number(mm / unit.mm(), metric() ? 2 : 3) + " " + symbol();
	}

	/** A length given in mm to the last figure a shop measures: up to 3 decimals in mm, 4 in inch. */
	public String fine(double mm) {
		return coordinate(mm) + " " + symbol();
	}

	/** A place along an axis given in mm, as it stands behind the axis letter: up to 3 decimals in mm, 4 in inch, without its unit. */
	public String coordinate(double mm) {
		return number(mm / unit.mm(), metric() ? 3 : 4);
	}

	/** A pitch or an advance a turn given in mm, with fixed decimals and without its unit: {@code 1.000}, {@code 0.05000}. */
	public String advance(double mm) {
		return fixed(mm / unit.mm(), metric() ? 3 : 5);
	}

	/** An error given in mm that adds up over a depth: as a length, with one decimal more where it is small. */
	public String drift(double mm) {
		double shown = Math.abs(mm) / unit.mm();
		int decimals = metric() ? 2 : 3;
		return number(shown, shown < 5 * Math.pow(10, -decimals) ? decimals + 1 : decimals) + " " + symbol();
	}

	/** The unit's symbol. */
	public String symbol() {
		return metric() ? "mm" : "in";
	}

	/** A count of turns: {@code 12}, {@code 7.5}. */
	public static String turns(double turns) {
		return number(turns, 1);
	}

	/** A plain number with no more than so many decimals and no trailing zeros. */
	public static String number(double value, int maxDecimals) {
		if (Double.isNaN(value) || Double.isInfinite(value)) {
			return "?";
		}
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(maxDecimals, RoundingMode.HALF_UP).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}

	/** A plain number with exactly so many decimals. */
	public static String fixed(double value, int decimals) {
		return Double.isNaN(value) || Double.isInfinite(value) ? "?"
				: BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
	}

	/** A percentage of a ratio: 0.77 gives {@code 77 %}. */
	public static String percent(double ratio) {
		return fixed(ratio * 100, 0) + " %";
	}

	/** A word as the program has it, in capitals and without the white space inside. */
	public static String written(WordRef word) {
		return tight(word.written());
	}

	/** A text in capitals and without white space. */
	public static String tight(String text) {
		StringBuilder tight = new StringBuilder();
		text.chars().filter(c -> c > ' ').forEach(c -> tight.append((char) c));
		return tight.toString().toUpperCase(Locale.ROOT);
	}

	private boolean metric() {
		return unit == LengthUnit.MM;
	}
}
