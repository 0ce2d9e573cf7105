package truelead.checker.thread;

import java.util.Optional;
import truelead.checker.machine.LengthUnit;

/**
 * A length as someone wrote it in a comment.
 *
 * @param value the number
 * @param unit  the unit where the text says one (a fraction and a gauge number are inches); empty for a bare number
 */
public record Dimension(double value, Optional<LengthUnit> unit) {

	/** A length in a stated unit. */
	public static Dimension of(double value, LengthUnit unit) {
		return new Dimension(value, Optional.of(unit));
	}

	/** In mm, a bare number taken in the given unit, as a rule the program's. */
	public double mm(LengthUnit unitOfBareNumbers) {
		return value * unit.orElse(unitOfBareNumbers).mm();
	}
}
