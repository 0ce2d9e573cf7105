package truelead.grammar;

/** How much of a line is read, so that no line can overflow the stack or hold up the reading. */
final class Limits {

	private Limits() {
	}

	/** The number of characters from the start of the line that keep all limits of {@link BlockReader}. */
	static int readable(CharSequence line) {
		int end = Math.min(line.length(), BlockReader.MAX_LENGTH);
		int depth = 0;
		int operators = 0;
		for (int i = behindRemarks(line, end); i < end; i++) {
			switch (line.charAt(i)) {
				case '[', '(' -> depth++;
				case ']', ')' -> depth = Math.max(0, depth - 1);
				case ';' -> {
					return end;
				}
				case '+', '-', '*', '/', '#', '=', '<', '>' -> operators++;
				default -> {
					// no depth
				}
			}
			if (depth > BlockReader.MAX_DEPTH || operators > BlockReader.MAX_OPERATORS) {
				return i;
			}
		}
		return end;
	}

	/** Where the first thing stands that is neither white space nor a comment; percent lines are a remark as a whole. */
	private static int behindRemarks(CharSequence line, int end) {
		int depth = 0;
		for (int i = 0; i < end; i++) {
			char c = line.charAt(i);
			if (c == '(') {
				depth++;
			} else if (c == ')') {
				depth = Math.max(0, depth - 1);
			} else if (depth == 0 && c > ' ') {
				return c == '%' ? end : i;
			}
		}
		return end;
	}

	/** Which limit stops the reading at {@code size}. */
	static String message(int size) {
		if (size == BlockReader.MAX_LENGTH) {
			return "this block is longer than " + BlockReader.MAX_LENGTH + " characters and the rest of it is not read; part it into lines";
		}
		return "this block has brackets more than " + BlockReader.MAX_DEPTH + " deep or more than " + BlockReader.MAX_OPERATORS
				+ " signs and the rest of it is not read; part it into several blocks";
	}
}
