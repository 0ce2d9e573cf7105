package truelead.checker.callout;

import java.util.Optional;
import truelead.checker.program.LengthUnit;

/**
 * A length as someone wrote it in a comment.
 *
 * @param value the number, in that unit
 * @param unit  the unit where the text says one (a fraction and a gauge number are inches); empty for a bare number
 */
public record Dimension(double value, Optional<LengthUnit> unit) {

	private static final double LARGEST_INCH = 3;

	/** A length of so many of the given unit. */
	public static Dimension of(double value, LengthUnit unit) {
		return new Dimension(value, Optional.of(unit));
	}

	/** In mm, a bare number taken in the given unit, as a rule the program's. */
	public double mm(LengthUnit unitOfBareNumbers) {
		return value * unit.orElse(unitOfBareNumbers).mm();
	}

	private static boolean finer(double value, int parts) {
		return Math.abs(value * parts - Math.rint(value * parts)) > 1e-6;
	}

	/**
	 * Whether it is no length but the number of a steel, as 1.4301 in a text in mm: nobody says a length to a ten-thousandth there (EN
	 * 10027-2 numbers them so).
	 */
	public boolean steel(LengthUnit unitOfBareNumbers) {
		return unit.isEmpty() && unitOfBareNumbers == LengthUnit.MM && finer(value, 1000);
	}

	/**
	 * In mm as the size of a tool: a bare number is in the given unit unless it would be absurd there. 6.8 in an inch program is mm, 0.2010
	 * in a metric one is inches: no drill for a thread is 3 in thick but by a number like 3.4531, and none under 1 mm is told to the
	 * micrometre (common practice, no source).
	 */
	public double toolMm(LengthUnit unitOfBareNumbers) {
		if (unit.isEmpty() && unitOfBareNumbers == LengthUnit.INCH && value >= LARGEST_INCH && !finer(value, 1000)) {
			return value;
		}
		return unit.isEmpty() && unitOfBareNumbers == LengthUnit.MM && value < 1 && finer(value, 100) ? value * LengthUnit.INCH.mm()
				: mm(unitOfBareNumbers);
	}
}
