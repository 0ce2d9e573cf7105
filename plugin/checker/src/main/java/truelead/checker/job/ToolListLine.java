package truelead.checker.job;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;

/**
 * A comment that says what is in a pocket: {@code T5 M8 TAP}, {@code TOOL 5 - M8 TAP}, {@code T05 = DRILL 6.8}.
 *
 * @param number the tool's number
 * @param text   what stands behind it
 */
public record ToolListLine(int number, String text) {

	/** What stands before a tool's number, in the usual languages of programs (common practice, no source). */
	private static final Set<String> TOOL_WORDS = Set.of("WERKZEUG", "WERKZ", "WKZ", "WZ", "OUTIL", "HERRAMIENTA", "HTA", "UTENSILE", "FERRAMENTA",
			"NARZEDZIE", "NARZĘDZIE", "ИНСТРУМЕНТ", "ИНСТР");

	/** Reads a comment; empty where it does not begin with a tool number. */
	public static Optional<ToolListLine> read(String comment) {
		String start = comment.stripLeading();
		int word = wordEnd(comment);
		if (start.isEmpty() || word == 0 && Character.toUpperCase(start.charAt(0)) != 'T') {
			return Optional.empty();
		}
		NoteLexer lexer = new NoteLexer(CharStreams.fromString(comment.length() > 200 ? comment.substring(0, 200) : comment));
		lexer.removeErrorListeners();
		CommonTokenStream tokens = new CommonTokenStream(lexer);
		tokens.fill();
		int at = 0;
		int first = tokens.get(at).getType();
		if (first != NoteLexer.T && first != NoteLexer.TOOL && word == 0) {
			return Optional.empty();
		}
		at++;
		// letters outside the note's own alphabet come one by one
		while (at < tokens.size() && (tokens.get(at).getStartIndex() < word || isMark(tokens.get(at).getType(), tokens.get(at).getText()))) {
			at++;
		}
		if (tokens.get(at).getType() != NoteLexer.NUMBER) {
			return Optional.empty();
		}
		OptionalInt number = whole(tokens.get(at).getText());
		return number.isEmpty() ? Optional.empty()
				: Optional.of(new ToolListLine(number.getAsInt(), comment.substring(tokens.get(at).getStopIndex() + 1)));
	}

	/** Where the first word ends, if it is one for a tool; else 0. */
	private static int wordEnd(String comment) {
		int start = comment.length() - comment.stripLeading().length();
		int end = start;
		while (end < comment.length() && Character.isLetter(comment.charAt(end))) {
			end++;
		}
		return TOOL_WORDS.contains(comment.substring(start, end).toUpperCase(Locale.ROOT)) ? end : 0;
	}

	private static boolean isMark(int type, String text) {
		boolean sign = type == NoteLexer.OTHER && (text.equals("#") || text.equals(".") || text.equals("-"));
		boolean word = type == NoteLexer.WORD && (text.equalsIgnoreCase("NO") || text.equalsIgnoreCase("NR") || text.equalsIgnoreCase("NUMBER"));
		return type == NoteLexer.EQUALS || type == NoteLexer.COLON || sign || word;
	}

	/** The same line for a turret, whose T0303 is tool 3 with offset 3. */
	public ToolListLine onTurret(boolean turret) {
		return turret && number >= 100 ? new ToolListLine(number / 100, text) : this;
	}

	private static OptionalInt whole(String text) {
		for (int i = 0; i < text.length(); i++) {
			if (!Character.isDigit(text.charAt(i))) {
				return OptionalInt.empty();
			}
		}
		return text.length() > 6 ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
	}
}
