package truelead.checker.thread;

import java.util.Optional;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Token;

/**
 * A comment that says what is in a pocket: {@code T5 M8 TAP}, {@code TOOL 5 - M8 TAP}, {@code T05 = DRILL 6.8}, {@code DRILL 6.8 = T5}.
 *
 * @param number the tool's number
 * @param text   what stands behind it
 */
public record ToolListLine(int number, String text) {

	private static final int LONGEST = 200;
	private static final int MOST_DIGITS = 6;
	/** What people write beside a tool stands at every change to it again. */
	private static final Remembered<String, Optional<ToolListLine>> READ = new Remembered<>(4000, ToolListLine::readFresh);

	/** Reads a comment; empty where it does not begin with a tool number. */
	public static Optional<ToolListLine> read(String comment) {
		return comment.length() <= LONGEST ? READ.of(comment) : readFresh(comment);
	}

	private static Optional<ToolListLine> readFresh(String comment) {
		String start = comment.stripLeading();
		if (start.isEmpty() || !Character.isLetter(start.charAt(0))) {
			return Optional.empty();
		}
		CalloutTokens tokens = new CalloutTokens(CharStreams.fromString(comment.length() > LONGEST ? comment.substring(0, LONGEST) : comment));
		Token token = next(tokens);
		if (!isTool(token)) {
			return last(comment);
		}
		do {
			token = next(tokens);
		} while (isMark(token));
		return token.getType() == CalloutParser.NUMBER && whole(token.getText())
				? Optional.of(new ToolListLine(Integer.parseInt(token.getText()), comment.substring(token.getStopIndex() + 1))) : Optional.empty();
	}

	/** The tool that is named last, behind an equals sign. */
	private static Optional<ToolListLine> last(String comment) {
		int equals = comment.lastIndexOf('=');
		String behind = equals < 1 ? "" : comment.substring(equals + 1).strip();
		boolean tool = behind.length() > 1 && (behind.charAt(0) == 'T' || behind.charAt(0) == 't') && whole(behind.substring(1));
		return tool ? Optional.of(new ToolListLine(Integer.parseInt(behind.substring(1)), comment.substring(0, equals))) : Optional.empty();
	}

	private static Token next(CalloutTokens tokens) {
		Token token = tokens.nextToken();
		while (token.getChannel() != Token.DEFAULT_CHANNEL) {
			token = tokens.nextToken();
		}
		return token;
	}

	private static boolean isTool(Token token) {
		return token.getText().equalsIgnoreCase("T")
				|| token.getType() != Token.EOF && TradeWords.words().meaning(token.getText()).filter(meaning -> meaning == Meaning.TOOL).isPresent();
	}

	private static boolean isMark(Token token) {
		return switch (token.getType()) {
			case CalloutParser.EQUALS, CalloutParser.COLON, CalloutParser.HASH, CalloutParser.DOT, CalloutParser.DASH, CalloutParser.NO, CalloutParser.DEGREE_SIGN -> true;
			default -> token.getText().equalsIgnoreCase("N");
		};
	}

	private static boolean whole(String number) {
		return number.length() <= MOST_DIGITS && number.chars().allMatch(c -> c >= '0' && c <= '9');
	}

	/** The same line for a turret, whose T0303 is tool 3 with offset 3. */
	public ToolListLine onTurret(boolean turret) {
		return turret && number >= 100 ? new ToolListLine(number / 100, text) : this;
	}
}
