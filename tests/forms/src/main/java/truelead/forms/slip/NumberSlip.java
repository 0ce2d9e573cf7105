package truelead.forms.slip;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A slip at the number of a word. */
enum NumberSlip {

	LEFT_OUT("left out", number -> ""),
	POINT_LOST("point lost", number -> number.endsWith(".") || number.indexOf('.') < 0 || zero(number) ? number : number.replace(".", "")),
	SIGN_TURNED("sign turned", number -> zero(number) ? number : number.startsWith("-") ? number.substring(1) : "-"
			+ number.replace("+", "")),
	DIGIT_HIGHER("first digit one up", number -> digit(number, +1)),
	DIGIT_LOWER("first digit one down", number -> digit(number, -1)),
	DIGITS_SWAPPED("first digits swapped", NumberSlip::swapped),
	DIGIT_LOST("first digit lost", NumberSlip::shorter),
	DIGIT_TWICE("first digit twice", NumberSlip::longer),
	TEN_TIMES("ten times", number -> moved(number, 1)),
	A_TENTH("a tenth", number -> moved(number, -1));

	private final String written;
	private final UnaryOperator<String> slip;

	NumberSlip(String written, UnaryOperator<String> slip) {
		this.written = written;
		this.slip = slip;
	}

	/** What the table calls it. */
	String written() {
		return written;
	}

	/** The number as it is typed with this slip, empty where all of the word is left out; nothing where the number has no room for it. */
	Optional<String> of(String number) {
		return Optional.of(slip.apply(number)).filter(typed -> !typed.equals(number));
	}

	private static boolean zero(String number) {
		return first(number) < 0;
	}

	/** Where its first digit other than 0 stands, -1 where there is none. */
	private static int first(String number) {
		for (int at = 0; at < number.length(); at++) {
			if (number.charAt(at) >= '1' && number.charAt(at) <= '9') {
				return at;
			}
		}
		return -1;
	}

	private static String digit(String number, int step) {
		int at = first(number);
		if (at < 0 || number.charAt(at) + step > '9') {
			return number;
		}
		return number.substring(0, at) + (char) (number.charAt(at) + step) + number.substring(at + 1);
	}

	private static String swapped(String number) {
		int at = first(number);
		if (at < 0 || at + 1 == number.length() || !Character.isDigit(number.charAt(at + 1))) {
			return number;
		}
		return number.substring(0, at) + number.charAt(at + 1) + number.charAt(at) + number.substring(at + 2);
	}

	private static String shorter(String number) {
		int at = first(number);
		String rest = at < 0 ? number : number.substring(0, at) + number.substring(at + 1);
		return rest.chars().anyMatch(Character::isDigit) ? rest : number;
	}

	/** Ten times or a tenth of it, written as the number is: the point stands a place off, or a nought is too many or lacks. */
	private static String moved(String number, int places) {
		// S1=1200 and X = 5. have their sign of equality before them
		int from = number.lastIndexOf('=') + 1;
		if (zero(number) || number.substring(from).chars().anyMatch(Character::isLetter)) {
			return number;
		}
		BigDecimal moved = new BigDecimal(number.substring(from).strip()).movePointRight(places).stripTrailingZeros();
		String typed = number.substring(0, from) + moved.toPlainString();
		return number.indexOf('.') >= 0 && moved.scale() <= 0 ? typed + "." : typed;
	}

	private static String longer(String number) {
		int at = first(number);
		return at < 0 ? number : number.substring(0, at) + number.charAt(at) + number.substring(at);
	}
}
