package truelead.checker.job;

import java.util.Optional;
import java.util.OptionalInt;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;

/**
 * A comment that says what is in a pocket: {@code T5 M8 TAP}, {@code TOOL 5 - M8 TAP}, {@code T05 = DRILL 6.8}.
 *
 * @param number the tool's number
 * @param text   what stands behind it
 */
public record ToolListLine(int number, String text) {

	/** Reads a comment; empty where it does not begin with a tool number. */
	public static Optional<ToolListLine> read(String comment) {
		String start = comment.stripLeading();
		if (start.isEmpty() || Character.toUpperCase(start.charAt(0)) != 'T') {
			return Optional.empty();
		}
		NoteLexer lexer = new NoteLexer(CharStreams.fromString(comment.length() > 200 ? comment.substring(0, 200) : comment));
		lexer.removeErrorListeners();
		CommonTokenStream tokens = new CommonTokenStream(lexer);
		tokens.fill();
		int at = 0;
		int first = tokens.get(at).getType();
		if (first != NoteLexer.T && first != NoteLexer.TOOL) {
			return Optional.empty();
		}
		at++;
		while (at < tokens.size() && isMark(tokens.get(at).getType(), tokens.get(at).getText())) {
			at++;
		}
		if (tokens.get(at).getType() != NoteLexer.NUMBER) {
			return Optional.empty();
		}
		OptionalInt number = whole(tokens.get(at).getText());
		return number.isEmpty() ? Optional.empty()
				: Optional.of(new ToolListLine(number.getAsInt(), comment.substring(tokens.get(at).getStopIndex() + 1)));
	}

	private static boolean isMark(int type, String text) {
		return type == NoteLexer.EQUALS || type == NoteLexer.COLON || type == NoteLexer.OTHER && (text.equals("#") || text.equals("."));
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
