package truelead.checker.arithmetic;

import java.math.BigDecimal;
import java.util.Set;

/** The functions of control languages; angles in degrees, as controls have them. */
public final class Functions {

	/** All that is a function and no array of variables. */
	static final Set<String> NAMES = Set.of("SIN", "COS", "TAN", "ASIN", "ACOS", "ATAN", "ATAN2", "ATN", "SQRT", "SQR", "ABS", "ROUND",
			"RND", "FIX", "TRUNC", "INT", "FUP", "LN", "EXP", "POW", "POT", "BIN", "BCD", "NOT", "IC", "AC");

	private Functions() {
	}

	/** Whether a name in capitals is that of a function, and not of an array of variables. */
	public static boolean known(String name) {
		return NAMES.contains(name);
	}

	/** A function of one or two known numbers; not known where the function or its value does not exist. */
	static Value value(String name, double a, double b, int arguments) {
		return switch (name) {
			case "SIN" -> Value.of(sine(a));
			case "COS" -> Value.of(cosine(a));
			case "TAN" -> Value.of(sine(a) / cosine(a));
			case "ASIN" -> Value.of(Math.toDegrees(Math.asin(a)));
			case "ACOS" -> Value.of(Math.toDegrees(Math.acos(a)));
			case "ATAN", "ATAN2", "ATN" -> Value.of(Math.toDegrees(arguments > 1 ? Math.atan2(a, b) : Math.atan(a)));
			case "SQRT", "SQR" -> Value.of(Math.sqrt(a));
			case "ABS" -> Value.of(Math.abs(a));
			case "ROUND", "RND" -> Value.of(Math.signum(a) * Math.floor(Math.abs(a) + 0.5));
			case "FIX", "TRUNC", "INT" -> Value.of(Math.signum(a) * Math.floor(steady(Math.abs(a))));
			case "FUP" -> Value.of(Math.signum(a) * Math.ceil(steady(Math.abs(a))));
			case "LN" -> Value.of(Math.log(a));
			case "EXP" -> Value.of(Math.exp(a));
			case "POW" -> Value.of(Math.pow(a, b));
			case "POT" -> Value.of(a * a);
			case "BIN" -> fromBcd(a);
			case "BCD" -> toBcd(a);
			case "NOT" -> Value.of(a == 0);
			case "IC", "AC" -> Value.of(a);
			default -> Value.unknown("the function " + name + " is not known");
		};
	}

	/** FIX and FUP as RS-274 has them: to the next whole number below and above. */
	static Value whole(String name, double a) {
		return Value.of(name.equals("FIX") ? Math.floor(steady(a)) : Math.ceil(steady(a)));
	}

	/** The cosine of an angle in degrees, exact as {@link #sine} is. */
	public static double cosine(double degrees) {
		return sine(degrees + 90);
	}

	/** The sine of an angle in degrees, exact at the multiples of 30 degrees that bolt circles use. */
	public static double sine(double degrees) {
		double turned = degrees - 360 * Math.floor(degrees / 360);
		if (turned % 180 == 0) {
			return 0;
		}
		if (turned % 90 == 0) {
			return turned == 90 ? 1 : -1;
		}
		if (turned == 30 || turned == 150 || turned == 210 || turned == 330) {
			return turned < 180 ? 0.5 : -0.5;
		}
		return Math.sin(Math.toRadians(turned));
	}

	/** A number that is whole but for its last binary digits, whole. */
	private static double steady(double number) {
		double near = Math.rint(number);
		return Math.abs(number - near) < 1e-9 ? near : number;
	}

	private static Value fromBcd(double coded) {
		double value = 0;
		double place = 1;
		for (long rest = (long) coded; rest > 0; rest /= 16, place *= 10) {
			value += rest % 16 * place;
		}
		return Value.of(value);
	}

	private static Value toBcd(double number) {
		if (number < 0 || number >= 1e12) {
			return Value.unknown("BCD takes numbers from 0 to 999999999999");
		}
		return Value.of(Long.parseLong(BigDecimal.valueOf((long) number).toPlainString(), 16));
	}
}
