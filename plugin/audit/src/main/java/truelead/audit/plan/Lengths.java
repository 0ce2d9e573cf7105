package truelead.audit.plan;

import java.util.Locale;
import truelead.audit.Complaint;
import truelead.checker.machine.LengthUnit;

/** Lengths as options give them: {@code 12}, {@code 12mm}, {@code 0.5in}; bare ones in the callout's unit. */
final class Lengths {
	private static final double LONGEST = 1000;

	private Lengths() {
	}

	/** The length in mm, over 0 and up to 1,000 mm; anything else is a complaint naming the option. */
	static double mm(String option, String written, LengthUnit bare) {
		String text = written.strip().toLowerCase(Locale.ROOT);
		LengthUnit unit = text.endsWith("mm") ? LengthUnit.MM : text.endsWith("in") ? LengthUnit.INCH : bare;
		String number = text.endsWith("mm") || text.endsWith("in") ? text.substring(0, text.length() - 2).strip() : text;
		double value = number(number) * unit.mm();
		if (!(value > 0 && value <= LONGEST)) {
			throw new Complaint(option + " \"" + written + "\" is no length up to 1000 mm; 12, 12mm or 0.5in is");
		}
		return value;
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
