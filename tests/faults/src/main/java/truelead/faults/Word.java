package truelead.faults;

/** A word: a letter with a number of at most so many decimals, or, where {@code text} is not empty, with an expression. */
record Word(char letter, double value, int decimals, String text) {
	static Word of(char letter, double value, int decimals) {
		return new Word(letter, value, decimals, "");
	}

	/** A code or a count: no decimals, never a point. */
	static Word whole(char letter, double value) {
		return new Word(letter, value, -1, "");
	}

	static Word said(char letter, String text) {
		return new Word(letter, 0, 0, text);
	}

	/** {@code G84}, {@code G33.1}. */
	static Word g(double code) {
		return whole('G', code);
	}

	static Word m(int code) {
		return whole('M', code);
	}

	boolean is(char other, double code) {
		return letter == other && text.isEmpty() && Math.abs(value - code) < 1e-9;
	}
}
