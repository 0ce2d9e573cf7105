package truelead.grammar;

import java.util.List;
import org.antlr.v4.runtime.Token;

/**
 * Characters that look alike and were typed, or read from paper, for one another: the letter O for 0, a small l for 1, a dollar sign for S.
 */
final class Damage {

	private Damage() {
	}

	/** Whether a name is more likely one word with a letter for a digit: {@code GO1}, {@code MO6}, {@code Nl0}. */
	static boolean looksLikeWord(String name) {
		if (name.length() < 2 || !isLetter(name.charAt(0))) {
			return false;
		}
		char second = name.charAt(1);
		if (second != 'O' && second != 'o' && (second != 'l' || name.length() == 2)) {
			return false;
		}
		for (int i = 2; i < name.length(); i++) {
			if ("0123456789Ool".indexOf(name.charAt(i)) < 0) {
				return false;
			}
		}
		return true;
	}

	/** The line with digits where a letter stands among them; of the same length, and equal to it where nothing of the kind is found. */
	static String repaired(String line, List<? extends Token> tokens) {
		StringBuilder repaired = new StringBuilder(line);
		for (Token token : tokens) {
			switch (token.getType()) {
				case GCodeLexer.NAME, GCodeLexer.O, GCodeLexer.LETTER, GCodeLexer.OTHER, GCodeLexer.O_KEYWORD -> {
					for (int i = token.getStartIndex(); i <= token.getStopIndex(); i++) {
						repaired.setCharAt(i, repair(repaired, i));
					}
				}
				default -> {
					// all other tokens are right as they are
				}
			}
		}
		return repaired.toString();
	}

	private static char repair(CharSequence line, int at) {
		char c = line.charAt(at);
		char after = at + 1 < line.length() ? line.charAt(at + 1) : ' ';
		if (c == '$') {
			boolean number = isDigit(after) && at + 2 < line.length() && isDigit(line.charAt(at + 2));
			return number && (at == 0 || !isLetter(line.charAt(at - 1))) ? 'S' : c;
		}
		if (c != 'O' && c != 'o' && c != 'l' || at == 0) {
			return c;
		}
		char before = line.charAt(at - 1);
		boolean behindAddress = isLetter(before) && (at == 1 || !isLetter(line.charAt(at - 2)));
		boolean inNumber = isDigit(before) || before == '.' || before == '-' || before == '+';
		if (!behindAddress && !inNumber) {
			return c;
		}
		return c == 'l' ? '1' : '0';
	}

	private static boolean isLetter(char c) {
		return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
	}

	private static boolean isDigit(char c) {
		return c >= '0' && c <= '9';
	}
}
