package truelead.editor.text;

/** Goes through a text from one end of a line to the next: CR, LF, or CR and LF. */
final class LineEnds {

	/** What can end a line, by its mark; nothing ends the last one. */
	static final String[] DELIMITERS = { "", "\r", "\n", "\r\n" };
	static final byte NONE = 0;
	static final byte CR = 1;
	static final byte LF = 2;
	static final byte CR_LF = 3;

	private final String text;
	private int nextCr;
	private int nextLf;
	private int end;
	private byte mark = NONE;

	LineEnds(String text) {
		this.text = text;
		nextCr = find('\r');
		nextLf = find('\n');
	}

	/** Whether there is one more end of a line, which is then the one that {@link #end} and {@link #mark} tell of. */
	boolean next() {
		if (nextCr < end) {
			nextCr = find('\r');
		}
		if (nextLf < end) {
			nextLf = find('\n');
		}
		mark = nextCr == nextLf ? NONE : nextLf < nextCr ? LF : nextLf == nextCr + 1 ? CR_LF : CR;
		if (mark != NONE) {
			end = (mark == CR ? nextCr : nextLf) + 1;
		}
		return mark != NONE;
	}

	private int find(char delimiter) {
		int found = text.indexOf(delimiter, end);
		return found < 0 ? Integer.MAX_VALUE : found;
	}

	/** Where the next line starts. */
	int end() {
		return end;
	}

	/** Which of {@link #DELIMITERS} it is. */
	byte mark() {
		return mark;
	}
}
