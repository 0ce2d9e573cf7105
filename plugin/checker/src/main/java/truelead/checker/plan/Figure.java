package truelead.checker.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import truelead.checker.program.LengthUnit;

/** Numbers as a program writes them: mm with three decimals, inches with four. */
public record Figure(LengthUnit unit) {

	/** A length in mm, with its decimal point: {@code 12.}, {@code -0.5}. */
	public String word(double mm) {
		String plain = plain(mm / unit.mm(), places());
		return plain.contains(".") ? plain : plain + ".";
	}

	/** A length in mm for people: {@code 12 mm}. */
	public String said(double mm) {
		return plain(mm / unit.mm(), places()) + (unit == LengthUnit.MM ? " mm" : " in");
	}

	/** A number with at most so many decimals. */
	public static String plain(double value, int places) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}

	/** Rounded up to an even last decimal, so that its half is written exactly too; mm. */
	public double even(double mm) {
		double step = 2 * Math.pow(10, -places()) * unit.mm();
		return Math.ceil(mm / step - 1e-6) * step;
	}

	/** A length in mm rounded down to what a person types: 0.01 mm or 0.001 in; mm. */
	public double down(double mm) {
		double step = unit == LengthUnit.MM ? 0.01 : 0.001 * unit.mm();
		return Math.floor(mm / step + 1e-6) * step;
	}

	/** A feed by an advance in a turn, mm: in a minute at a speed in rev/min, or as it is; four or six decimals, with the decimal point. */
	public String feed(double advance, double speed, boolean perRev) {
		String plain = perRev ? plain(advance / unit.mm(), 6) : plain(advance * speed / unit.mm(), 4);
		return plain.contains(".") ? plain : plain + ".";
	}

	/** A clearance in mm, or the inch figure that is used for it, in mm too: 25 mm or 1 in. */
	public double clear(double mm, double inches) {
		return unit == LengthUnit.MM ? mm : inches * unit.mm();
	}

	private int places() {
		return unit == LengthUnit.MM ? 3 : 4;
	}
}
