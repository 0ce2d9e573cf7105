package truelead.checker.thread;

import java.math.BigDecimal;
import truelead.checker.program.LengthUnit;

/**
 * The limits of size of an external thread of one class, in the unit and with the decimals of the standard's table.
 *
 * @param threadClass the class: {@code 6g}, {@code 2A}
 * @param unit        the unit of the numbers
 * @param majorMin    smallest major diameter
 * @param majorMax    largest major diameter
 * @param pitchMin    smallest pitch diameter
 * @param pitchMax    largest pitch diameter
 * @param origin      how far the numbers can be traced
 * @param source      standard, table and clause, in words
 */
public record BoltLimits(String threadClass, LengthUnit unit, BigDecimal majorMin, BigDecimal majorMax, BigDecimal pitchMin,
		BigDecimal pitchMax, Origin origin, String source) {

	/** Smallest major diameter, mm. */
	public double majorMinMm() {
		return majorMin.doubleValue() * unit.mm();
	}

	/** Largest major diameter, mm. */
	public double majorMaxMm() {
		return majorMax.doubleValue() * unit.mm();
	}

	/** Smallest pitch diameter, mm. */
	public double pitchMinMm() {
		return pitchMin.doubleValue() * unit.mm();
	}

	/** Largest pitch diameter, mm. */
	public double pitchMaxMm() {
		return pitchMax.doubleValue() * unit.mm();
	}
}
