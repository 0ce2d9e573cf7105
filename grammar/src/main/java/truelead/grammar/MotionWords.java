package truelead.grammar;

/**
 * The words of a block that is nothing but a motion, as far most blocks of a program are: N, one G of a motion, X, Y, Z, A, B, C, I, J, R
 * and F, each once at most, with plain numbers, right behind an equals sign too, {@code CR=} for R, and {@code TURN=0}; letters in upper
 * case. Read in one pass without objects, and given by their letters; a property test holds them to what the grammar reads.
 */
public final class MotionWords {

	private final char[] text;
	private double x;
	private double y;
	private double z;
	private double a;
	private double b;
	private double c;
	private double i;
	private double j;
	private double r;
	private double feed;
	private int code;
	private int decimals;
	private int feedDecimals;
	private int line;
	private int feedStart;
	private int feedEnd;

	/** @param text the lines; every line ends with a line end, the last one too */
	MotionWords(char[] text) {
		this.text = text;
	}

	/** Reads the line that starts at a place of the text; false where it has anything else, and then nothing is told. */
	boolean read(int from) {
		x = y = z = a = b = c = i = j = r = feed = Double.NaN;
		code = -1;
		decimals = 0;
		feedDecimals = 0;
		line = from;
		// a bit for each letter
		int seen = 0;
		int at = from;
		while (true) {
			char next = text[at];
			while (next == ' ' || next == '\t') {
				next = text[++at];
			}
			if (next == '\n' || next == '\r') {
				return seen != 0;
			}
			int word = at;
			char letter = next;
			next = text[++at];
			boolean turns = false;
			if (next > '=') {
				if (letter == 'C' && next == 'R' && text[at + 1] == '=') {
					letter = 'R';
					at++;
				} else if (letter == 'T' && next == 'U' && text[at + 1] == 'R' && text[at + 2] == 'N' && text[at + 3] == '=') {
					turns = true;
					at += 3;
				} else {
					return false;
				}
				next = '=';
			}
			if (next == '=') {
				next = text[++at];
			}
			boolean minus = next == '-';
			if (minus) {
				next = text[++at];
			}
			int start = at;
			long whole = 0;
			for (; isDigit(next); next = text[++at]) {
				whole = whole * 10 + (next - '0');
			}
			int behind = 0;
			int point = 0;
			if (next == '.') {
				point = 1;
				int fraction = ++at;
				for (next = text[at]; isDigit(next); next = text[++at]) {
					whole = whole * 10 + (next - '0');
				}
				behind = at - fraction;
			}
			int size = at - start - point;
			if (size == 0 || size > QuickReader.DIGITS) {
				return false;
			}
			int bit = 1 << letter;
			if ((seen & bit) != 0) {
				return false;
			}
			seen |= bit;
			double value = (minus ? -whole : whole) / QuickReader.POWERS[behind];
			switch (letter) {
				case 'X' -> x = value;
				case 'Y' -> y = value;
				case 'Z' -> z = value;
				case 'I' -> i = value;
				case 'J' -> j = value;
				case 'R' -> r = value;
				case 'A', 'B', 'C' -> {
					turn(letter, value);
					continue;
				}
				case 'F' -> {
					feed = value;
					feedDecimals = behind;
					feedStart = word;
					feedEnd = at;
					continue;
				}
				case 'G' -> {
					if (!(value == 0 || value == 1 || value == 2 || value == 3)) {
						return false;
					}
					code = (int) value;
					continue;
				}
				case 'T' -> {
					if (!turns || value != 0) {
						return false;
					}
					continue;
				}
				case 'N' -> {
					// numbers a block, whatever it does
					continue;
				}
				default -> {
					return false;
				}
			}
			decimals = Math.max(decimals, behind);
		}
	}

	private void turn(char axis, double degrees) {
		switch (axis) {
			case 'A' -> a = degrees;
			case 'B' -> b = degrees;
			default -> c = degrees;
		}
	}

	private static boolean isDigit(char c) {
		return (char) (c - '0') <= 9;
	}

	/** The X word, program units; NaN where none is written. */
	public double x() {
		return x;
	}

	/** The Y word, program units; NaN where none is written. */
	public double y() {
		return y;
	}

	/** The Z word, program units; NaN where none is written. */
	public double z() {
		return z;
	}

	/** Whether a rotary axis is turned. */
	public boolean turns() {
		return a == a || b == b || c == c;
	}

	/** The word of a rotary axis, 0 A, 1 B, 2 C, degrees; NaN where none is written. */
	public double turned(int axis) {
		return axis == 0 ? a : axis == 1 ? b : c;
	}

	/** The I word, program units; NaN where none is written. */
	public double i() {
		return i;
	}

	/** The J word, program units; NaN where none is written. */
	public double j() {
		return j;
	}

	/** The R word, program units; NaN where none is written. */
	public double r() {
		return r;
	}

	/** The F word, program units by the feed mode in force; NaN where none is written. */
	public double feed() {
		return feed;
	}

	/** 0 for G0 and so on up to 3 for G3; -1 where none is written. */
	public int code() {
		return code;
	}

	/** The most decimals that a word of the path is written with: X, Y, Z, I, J and R. */
	public int decimals() {
		return decimals;
	}

	/** The decimals that F is written with. */
	public int feedDecimals() {
		return feedDecimals;
	}

	/** Where the F word stands in the line; means nothing where none is written. */
	public Span feedSpan() {
		return new Span(feedStart - line, feedEnd - line);
	}

	/** The text of the F word; the same. */
	public String feedText() {
		return new String(text, feedStart, feedEnd - feedStart);
	}
}
