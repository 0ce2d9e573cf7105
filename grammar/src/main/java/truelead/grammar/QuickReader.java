package truelead.grammar;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads plain blocks by hand, many times faster than the grammar does: block delete at the start, words with plain numbers, closed comments
 * without brackets in them, a remark behind a semicolon, percent lines. A block with anything else it leaves to the grammar. On every block
 * that it takes it gives what the grammar gives; a property test holds it to that.
 */
final class QuickReader {

	/** Longest line taken; within it none of the limits of {@link BlockReader} can be reached. */
	private static final int LENGTH = 400;
	/** Up to so many digits a number is exact as a whole number of its last place, and so is the power of ten that divides it. */
	private static final int DIGITS = 15;
	private static final double[] POWERS = {1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

	private final String line;
	private final int length;
	private final List<Element> elements;
	private int at;

	private QuickReader(String line) {
		this.line = line;
		this.length = line.length();
		this.elements = new ArrayList<>(6);
	}

	/** The elements of a plain block; null for a block that the grammar must read. */
	static List<Element> read(String line) {
		if (line.length() > LENGTH) {
			return null;
		}
		QuickReader reader = new QuickReader(line);
		return reader.block() ? reader.elements : null;
	}

	private boolean block() {
		blanks();
		if (at < length && line.charAt(at) == '%') {
			return remark(new Element.Percent(new Span(at, length)));
		}
		if (at < length && line.charAt(at) == '/' && !blockDelete()) {
			return false;
		}
		for (blanks(); at < length; blanks()) {
			char c = line.charAt(at);
			boolean taken;
			if (c == '(') {
				taken = comment();
			} else if (c == ';') {
				taken = remark(new Element.Comment(Element.CommentMark.SEMICOLON, line.substring(at + 1), new Span(at + 1, length), true, new Span(at, length)));
			} else {
				taken = isLetter(c) && word((char) (c & ~0x20));
			}
			if (!taken) {
				return false;
			}
		}
		return true;
	}

	private void blanks() {
		while (at < length && (line.charAt(at) == ' ' || line.charAt(at) == '\t')) {
			at++;
		}
	}

	private boolean blockDelete() {
		int slash = at++;
		char next = character(at);
		if (next >= '1' && next <= '9') {
			at++;
			elements.add(new Element.BlockDelete(next - '0', new Span(slash, at)));
		} else {
			elements.add(new Element.BlockDelete(1, new Span(slash, at)));
		}
		blanks();
		return character(at) != '/' && character(at) != '.' && !isDigit(character(at));
	}

	/** Whatever is left of the line, without line ends in it. */
	private boolean remark(Element element) {
		elements.add(element);
		for (; at < length; at++) {
			if (line.charAt(at) == '\n' || line.charAt(at) == '\r') {
				return false;
			}
		}
		return true;
	}

	private boolean comment() {
		int start = at++;
		for (; at < length; at++) {
			switch (line.charAt(at)) {
				case ')' -> {
					Span inner = new Span(start + 1, at);
					elements.add(new Element.Comment(Element.CommentMark.PARENTHESES, line.substring(start + 1, at), inner, true, new Span(start, ++at)));
					return true;
				}
				case '(', '[', '\n', '\r' -> {
					return false;
				}
				default -> {
					// part of the comment
				}
			}
		}
		return false;
	}

	private boolean word(char address) {
		int start = at++;
		blanks();
		int number = at;
		boolean minus = character(at) == '-';
		if (minus || character(at) == '+') {
			at++;
		}
		long digits = 0;
		int count = 0;
		int point = -1;
		for (char c = character(at); isDigit(c) || c == '.' && point < 0; c = character(++at)) {
			if (c == '.') {
				point = at;
			} else {
				digits = digits * 10 + (c - '0');
				if (++count > DIGITS) {
					return false;
				}
			}
		}
		if (count == 0 || character(at) == '.' || address == 'O' && (point >= 0 || !elements.isEmpty()) || exponent()) {
			return false;
		}
		int decimals = point < 0 ? 0 : at - point - 1;
		double value = digits / POWERS[decimals];
		Expression.Number read = new Expression.Number(minus ? 0.0 - value : value, decimals, point >= 0, new Span(number, at));
		elements.add(new Element.Word(address, -1, read, new Span(start, at)));
		return true;
	}

	/** An E word with a sign, right behind a number, may be an exponent. */
	private boolean exponent() {
		char sign = character(at + 1);
		return (character(at) | 0x20) == 'e' && (sign == '-' || sign == '+');
	}

	private char character(int index) {
		return index < length ? line.charAt(index) : '\0';
	}

	private static boolean isDigit(char c) {
		return c >= '0' && c <= '9';
	}

	private static boolean isLetter(char c) {
		return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
	}
}
