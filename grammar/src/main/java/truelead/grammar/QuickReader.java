package truelead.grammar;

import java.util.List;

/**
 * Reads plain blocks by hand, many times faster than the grammar does: block delete at the start, words with plain numbers, behind an
 * equals sign too, {@code CR=}, {@code TURN=} and {@code A3=}, closed comments without brackets in them, a remark behind a semicolon, the
 * star at the end of a block, percent lines. A block with anything else it leaves to the grammar. On every block that it takes it gives
 * what the grammar gives; a property test holds it to that. What it has read stands in arrays until it reads the next block, so that going
 * through a program costs no objects.
 */
final class QuickReader {

	/** Longest line taken; within it none of the limits of {@link BlockReader} can be reached. */
	static final int LENGTH = 400;
	/** Up to so many digits a number is exact as a whole number of its last place, and so is the power of ten that divides it. */
	static final int DIGITS = 15;
	/** The mark of {@code CR=}, the radius of an arc. */
	static final char RADIUS = 'r';
	/** The mark of {@code TURN=}, the turns of an arc beyond its own. */
	static final char TURNS = 't';
	/** The mark of {@code A3=}, {@code B3=} and the like: how the tool stands to the part (from memory). */
	static final char DIRECTION = 'v';
	static final double[] POWERS = {1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

	private final char[] text;
	private int base;
	private int at;
	private int count;
	/**
	 * Each part in one number. From the lowest bit on: the letter of a word in upper case, the mark of one of several letters, or the mark
	 * that begins another part; of a word, the place of its point counted from its end, 0 for no point, 1 for a point without decimals, and
	 * of a block delete its level; where the part starts; where it ends; of a word, where its number starts.
	 */
	private final long[] packed;
	private final double[] values;

	/** @param text the lines; every line ends with a line end, the last one too */
	QuickReader(char[] text) {
		this.text = text;
		// every part but the first has two characters at least
		int parts = Math.min(text.length, LENGTH) / 2 + 2;
		packed = new long[parts];
		values = new double[parts];
	}

	/** The elements of a plain block; null for a block that the grammar must read. */
	static List<Element> read(String line) {
		if (line.length() > LENGTH) {
			return null;
		}
		QuickReader reader = new QuickReader((line + '\n').toCharArray());
		return reader.read(0) && reader.at == line.length() ? reader.elements(line) : null;
	}

	/** Reads the line that starts at a place of the text, and is not longer than {@link #LENGTH}; false where the grammar must read it. */
	boolean read(int from) {
		base = from;
		at = from;
		count = 0;
		blanks();
		if (text[at] == '%') {
			return remark('%');
		}
		if (text[at] == '/' && !blockDelete()) {
			return false;
		}
		while (true) {
			blanks();
			char c = text[at];
			char letter = (char) (c & ~0x20);
			if (letter >= 'A' && letter <= 'Z') {
				if (!word(letter)) {
					return false;
				}
			} else if (c == '(') {
				if (!comment()) {
					return false;
				}
			} else {
				return isLineEnd(c) || (c == ';' || c == '*' && count > 0 && isLineEnd(text[at + 1])) && remark(';');
			}
		}
	}

	private void blanks() {
		while (text[at] == ' ' || text[at] == '\t') {
			at++;
		}
	}

	private void add(char mark, int point, int start, int number) {
		packed[count++] = mark | point << 8 | (long) (start - base) << 16 | (long) (at - base) << 32 | (long) (number - base) << 48;
	}

	private boolean blockDelete() {
		int slash = at++;
		int level = text[at] - '0';
		boolean written = level >= 1 && level <= 9;
		at += written ? 1 : 0;
		add('/', written ? level : 1, slash, slash);
		blanks();
		return text[at] != '/' && text[at] != '.' && !isDigit(text[at]);
	}

	/** Whatever is left of the line. */
	private boolean remark(char mark) {
		int start = at;
		while (text[at] != '\n' && text[at] != '\r') {
			at++;
		}
		add(mark, 0, start, start);
		return true;
	}

	private boolean comment() {
		int start = at++;
		while (true) {
			switch (text[at++]) {
				case ')' -> {
					add('(', 0, start, start);
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
	}

	private boolean word(char letter) {
		int start = at;
		char address = longer(letter);
		at++;
		blanks();
		if (text[at] == '=' && letter != 'O') {
			at++;
			blanks();
		} else if (address != letter) {
			return false;
		}
		int number = at;
		boolean minus = text[at] == '-';
		if (minus || text[at] == '+') {
			at++;
		}
		int first = at;
		long whole = digits(0);
		int size = at - first;
		int decimals = 0;
		boolean point = text[at] == '.';
		if (point) {
			int behind = ++at;
			whole = digits(whole);
			decimals = at - behind;
			size += decimals;
		}
		if (size == 0 || size > DIGITS || point && text[at] == '.' || address == 'O' && (point || count > 0) || exponent()) {
			return false;
		}
		double value = whole / POWERS[decimals];
		values[count] = minus ? 0.0 - value : value;
		add(address, point ? decimals + 1 : 0, start, number);
		return true;
	}

	/** The mark of a word of more than one letter, at the last of which it is then; else the letter. */
	private char longer(char letter) {
		if (letter <= 'C' && text[at + 1] >= '2' && text[at + 1] <= '7' && !isDigit(text[at + 2]) && equals(at + 2)) {
			at++;
			return DIRECTION;
		}
		if (letter == 'C' && (text[at + 1] & ~0x20) == 'R') {
			at++;
			return RADIUS;
		}
		if (letter == 'T' && (text[at + 1] & ~0x20) == 'U' && (text[at + 2] & ~0x20) == 'R' && (text[at + 3] & ~0x20) == 'N') {
			at += 3;
			return TURNS;
		}
		return letter;
	}

	/** Whether an equals sign is what stands next from a place on. */
	private boolean equals(int from) {
		int next = from;
		while (text[next] == ' ' || text[next] == '\t') {
			next++;
		}
		return text[next] == '=';
	}

	private long digits(long before) {
		long number = before;
		for (int digit = text[at] - '0'; digit >= 0 && digit <= 9; digit = text[++at] - '0') {
			number = number * 10 + digit;
		}
		return number;
	}

	/** An E word with a sign, right behind a number, may be an exponent. */
	private boolean exponent() {
		return (text[at] | 0x20) == 'e' && (text[at + 1] == '-' || text[at + 1] == '+');
	}

	private static boolean isLineEnd(char c) {
		return c == '\n' || c == '\r';
	}

	private static boolean isDigit(char c) {
		return c >= '0' && c <= '9';
	}

	/** Number of parts read. */
	int count() {
		return count;
	}

	/**
	 * The letter of a word in upper case, {@link #RADIUS}, {@link #TURNS}, {@link #DIRECTION}, or the mark that begins another part:
	 * bracket, semicolon, slash, percent sign.
	 */
	char mark(int part) {
		return (char) (packed[part] & 0xFF);
	}

	/** The value of a word. */
	double value(int part) {
		return values[part];
	}

	/** Decimals that the number of a word is written with. */
	int decimals(int part) {
		return Math.max(0, point(part) - 1);
	}

	private int point(int part) {
		return (int) (packed[part] >> 8) & 0xFF;
	}

	private Span span(int part) {
		return new Span((int) (packed[part] >> 16) & 0xFFFF, (int) (packed[part] >> 32) & 0xFFFF);
	}

	private int numberStart(int part) {
		return (int) (packed[part] >> 48) & 0xFFFF;
	}

	/** The parts as elements of the line read, whose text is given. */
	List<Element> elements(String line) {
		Element[] elements = new Element[count];
		for (int part = 0; part < count; part++) {
			elements[part] = element(line, part);
		}
		return List.of(elements);
	}

	private Element element(String line, int part) {
		Span span = span(part);
		int start = span.start();
		return switch (mark(part)) {
			case '(' -> new Element.Comment(Element.CommentMark.PARENTHESES, line.substring(start + 1, span.end() - 1),
					new Span(start + 1, span.end() - 1), true, span);
			case ';' -> new Element.Comment(Element.CommentMark.SEMICOLON, line.substring(start + 1),
					new Span(start + 1, span.end()), true, span);
			case '/' -> new Element.BlockDelete(point(part), span);
			case '%' -> new Element.Percent(span);
			case RADIUS -> named("cr", part);
			case TURNS -> named("turn", part);
			case DIRECTION -> new Element.Word((char) (line.charAt(start) & ~0x20), line.charAt(start + 1) - '0', number(part), span);
			default -> new Element.Word(mark(part), -1, number(part), span);
		};
	}

	private Element named(String name, int part) {
		int start = span(part).start();
		return new Element.Assignment(new Expression.NamedVariable(name, true, new Span(start, start + name.length())), number(part),
				span(part));
	}

	private Expression number(int part) {
		return new Expression.Number(values[part], decimals(part), point(part) > 0, new Span(numberStart(part), span(part).end()));
	}
}
