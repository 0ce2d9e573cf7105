package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.program.LengthUnit;

/**
 * The limits of size of an internal thread of one class, in the unit and with the decimals of the standard's table.
 *
 * @param threadClass the class, empty for systems that have none
 * @param unit        the unit of the numbers
 * @param minorMin    smallest minor diameter (the hole after threading)
 * @param minorMax    largest minor diameter; empty where the standard gives none
 * @param pitchMin    smallest pitch diameter
 * @param pitchMax    largest pitch diameter; empty where the standard gives none
 * @param majorMin    smallest major diameter
 * @param origin      how far the numbers can be traced
 * @param source      standard, table and clause, in words
 */
public record Limits(String threadClass, LengthUnit unit, Optional<BigDecimal> minorMin, Optional<BigDecimal> minorMax,
		Optional<BigDecimal> pitchMin, Optional<BigDecimal> pitchMax, Optional<BigDecimal> majorMin, Origin origin, String source) {

	/** Smallest minor diameter, mm. */
	public OptionalDouble minorMinMm() {
		return mm(minorMin);
	}

	/** Largest minor diameter, mm. */
	public OptionalDouble minorMaxMm() {
		return mm(minorMax);
	}

	/** Smallest pitch diameter, mm. */
	public OptionalDouble pitchMinMm() {
		return mm(pitchMin);
	}

	/** Largest pitch diameter, mm. */
	public OptionalDouble pitchMaxMm() {
		return mm(pitchMax);
	}

	private OptionalDouble mm(Optional<BigDecimal> value) {
		return value.isPresent() ? OptionalDouble.of(value.get().doubleValue() * unit.mm()) : OptionalDouble.empty();
	}
}
