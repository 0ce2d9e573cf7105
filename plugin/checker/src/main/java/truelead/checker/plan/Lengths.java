package truelead.checker.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import truelead.checker.program.LengthUnit;

/** Lengths as people type them: {@code 12}, {@code 12mm}, {@code 0.5in}; bare ones in the callout's unit. */
final class Lengths {
	/** The longest that is taken, mm: more is a slip of the decimal point (a choice of ours). */
	private static final double LONGEST = 1000;

	private Lengths() {
	}

	/** The length in mm, over 0 and up to 1,000 mm; empty for anything else. */
	static OptionalDouble mm(String written, LengthUnit bare) {
		String text = written.strip().toLowerCase(Locale.ROOT);
		LengthUnit unit = text.endsWith("mm") ? LengthUnit.MM : text.endsWith("in") ? LengthUnit.INCH : bare;
		String number = text.endsWith("mm") || text.endsWith("in") ? text.substring(0, text.length() - 2).strip() : text;
		double value = number(number) * unit.mm();
		return value > 0 && value <= LONGEST ? OptionalDouble.of(value) : OptionalDouble.empty();
	}

	/** A plain number, NaN for anything else (hexadecimal, NaN and names are else). */
	static double number(String text) {
		boolean plain = !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.');
		try {
			return plain ? Double.parseDouble(text) : Double.NaN;
		} catch (NumberFormatException notOne) {
			return Double.NaN;
		}
	}
}
