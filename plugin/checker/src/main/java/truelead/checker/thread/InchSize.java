package truelead.checker.thread;

import java.util.OptionalDouble;

/** Names of inch sizes: numbers #0 to #12, fractions of 64ths, else decimals. */
public final class InchSize {
	/** How far a diameter may be off a name, inches: half the last of four decimals and some (a choice of ours). */
	private static final double TOLERANCE = 0.00006;
	/** Numbers of screws that are made (ASME B1.1). */
	private static final int[] NUMBERS = {0, 1, 2, 3, 4, 5, 6, 8, 10, 12};

	private InchSize() {
	}

	/** The basic diameter of a numbered screw, inches: 0.060 + 0.013 n (ASME B1.1); empty for numbers that are not made. */
	public static OptionalDouble ofNumber(int number) {
		for (int known : NUMBERS) {
			if (known == number) {
				return OptionalDouble.of((60 + 13 * number) / 1000.0);
			}
		}
		return OptionalDouble.empty();
	}

	/** The name of a diameter in inches: {@code #10}, {@code 1-1/4}, {@code 2}; a decimal such as {@code 0.3} where it has no name. */
	public static String name(double inches) {
		for (int number : NUMBERS) {
			if (Math.abs(inches - (60 + 13 * number) / 1000.0) < TOLERANCE) {
				return "#" + number;
			}
		}
		return fraction(inches);
	}

	/** The fraction of 64ths that a diameter in inches is, such as {@code 27/64}; a decimal where it is none. */
	public static String fraction(double inches) {
		long parts = Math.round(inches * 64);
		if (parts == 0 || Math.abs(inches - parts / 64.0) > TOLERANCE) {
			return Decimals.plain(inches, 4);
		}
		long whole = parts / 64;
		long numerator = parts % 64;
		long denominator = 64;
		while (numerator != 0 && numerator % 2 == 0) {
			numerator /= 2;
			denominator /= 2;
		}
		if (numerator == 0) {
			return Long.toString(whole);
		}
		return (whole > 0 ? whole + "-" : "") + numerator + "/" + denominator;
	}
}
