package truelead.audit.terminal;

import java.util.Arrays;

/** Text of a program made fit to print: a comment must not move the cursor of a terminal or break a line of a report. */
public final class Printable {

	private Printable() {
	}

	/** The text on one line: line ends and tabs become blanks, other control and direction-changing characters a replacement sign. */
	public static String line(String text) {
		StringBuilder line = null;
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			if (shows(c)) {
				if (line != null) {
					line.append(c);
				}
				continue;
			}
			if (line == null) {
				line = new StringBuilder(text.length()).append(text, 0, i);
			}
			line.append(c == '\t' || c == '\n' || c == '\r' ? ' ' : '\uFFFD');
		}
		return line == null ? text : line.toString();
	}

	/** A text of several lines, each as {@link #line} has it; line ends (LF, CR LF) stay. */
	public static String lines(String text) {
		StringBuilder lines = new StringBuilder(text.length());
		int start = 0;
		for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
			boolean pair = end > start && text.charAt(end - 1) == '\r';
			lines.append(line(text.substring(start, pair ? end - 1 : end))).append(pair ? "\r\n" : "\n");
			start = end + 1;
		}
		return lines.append(line(text.substring(start))).toString();
	}

	/** A field of a table, on one line; a text that a spreadsheet would run as a formula is marked as text by an apostrophe. */
	public static String field(String text) {
		String line = line(text);
		return !line.isBlank() && "=+-@".indexOf(line.strip().charAt(0)) >= 0 ? "'" + line : line;
	}

	/** What lies at the bottom of a fault of our own, on one line, with the place in our code. */
	public static String root(Throwable fault) {
		Throwable root = fault;
		for (int depth = 0; root.getCause() != null && depth < 20; depth++) {
			root = root.getCause();
		}
		String place = Arrays.stream(root.getStackTrace()).filter(frame -> frame.getClassName().startsWith("truelead.")).findFirst()
				.map(frame -> " in " + frame).orElse("");
		return line(root + place);
	}

	/** Whether a character is shown as it is: it is no control character, none that changes the direction of writing, and ends no line. */
	public static boolean shows(char c) {
		if (c < 0x7F) {
			return c >= ' ';
		}
		boolean control = c < 0xA0;
		boolean direction = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069 || c == 0x200E || c == 0x200F || c == 0x061C;
		boolean separator = c == 0x2028 || c == 0x2029;
		return !control && !direction && !separator;
	}
}
