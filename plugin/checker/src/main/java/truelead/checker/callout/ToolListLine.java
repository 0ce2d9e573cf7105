package truelead.checker.callout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Token;
import truelead.checker.thread.Remembered;
import truelead.grammar.Span;

/**
 * A comment that says what is in a pocket: {@code T5 M8 TAP}, {@code TOOL 5 - M8 TAP}, {@code T05 = DRILL 6.8}, {@code DRILL 6.8 = T5}, {@code 6.8 DRILL T5}.
 *
 * @param number the tool's number
 * @param text   what stands behind it
 */
public record ToolListLine(int number, String text) {

	private static final int LONGEST = 200;
	private static final int LONGEST_LIST = 1_000;
	private static final int MOST_DIGITS = 6;
	/** Shorter ones are letters of sizes and threads. */
	private static final int SHORTEST_WORD = 3;
	private static final Set<Meaning> SAYS_MORE = EnumSet.of(Meaning.FOR, Meaning.NOT, Meaning.VERB, Meaning.ELSEWHERE, Meaning.OTHER_SIDE, Meaning.SILENT, Meaning.SUPPLY, Meaning.RATE, Meaning.TOOL, Meaning.APART);
	private static final Set<String> PLACES = Set.of("H", "POT", "POCKET", "PKT", "POS", "STATION", "STA", "STN", "PLATZ", "PL", "POSTE");
	/** What people write beside a tool stands at every change to it again. */
	private static final Remembered<String, Optional<ToolListLine>> READ = new Remembered<>(4000, ToolListLine::readFresh);

	/** Reads a comment; empty where it neither begins nor ends with a tool number, signs such as the strokes of a table left out. */
	public static Optional<ToolListLine> read(String comment) {
		return comment.length() <= LONGEST ? READ.of(comment) : readFresh(comment);
	}

	private static Optional<ToolListLine> readFresh(String comment) {
		int start = 0;
		while (start < comment.length() && !Character.isLetterOrDigit(comment.charAt(start))) {
			start++;
		}
		if (start == comment.length()) {
			return Optional.empty();
		}
		if (!Character.isLetter(comment.charAt(start))) {
			return last(comment);
		}
		CalloutTokens tokens = new CalloutTokens(CharStreams.fromString(comment.length() > LONGEST ? comment.substring(0, LONGEST) : comment));
		Token token = next(tokens);
		while (token.getStartIndex() < start && token.getType() != Token.EOF) {
			token = next(tokens);
		}
		if (!isTool(token)) {
			return last(comment);
		}
		token = next(tokens);
		// TOOL T5
		if (isTool(token)) {
			token = next(tokens);
		}
		while (isMark(token)) {
			token = next(tokens);
		}
		return token.getType() == CalloutParser.NUMBER && whole(token.getText())
				? Optional.of(new ToolListLine(Integer.parseInt(token.getText()), comment.substring(behindSign(comment, token.getStopIndex() + 1)))) : Optional.empty();
	}

	/** In T13-3/8-16 TAP the dash is no part of the size. */
	private static int behindSign(String comment, int at) {
		int sign = at;
		while (sign < comment.length() && comment.charAt(sign) == ' ') {
			sign++;
		}
		return sign < comment.length() && "-=:".indexOf(comment.charAt(sign)) >= 0 ? sign + 1 : at;
	}

	/** The tool that is named last, behind an equals sign, or behind nothing but a tool: M4 TAP T6, and not BEFORE TAP T6. */
	private static Optional<ToolListLine> last(String comment) {
		String text = comment.stripTrailing();
		int start = Math.max(text.lastIndexOf('T'), text.lastIndexOf('t'));
		if (start < 1 || start + 1 == text.length() || !whole(text.substring(start + 1))) {
			return Optional.empty();
		}
		String before = text.substring(0, start).stripTrailing();
		boolean equals = before.endsWith("=");
		boolean apart = !before.isEmpty() && !Character.isLetterOrDigit(text.charAt(start - 1));
		return equals && before.length() > 1 || apart && onlyTrade(before) && CalloutReader.readComment(before).tool().isPresent()
				? Optional.of(new ToolListLine(Integer.parseInt(text.substring(start + 1)), equals ? before.substring(0, before.length() - 1) : before)) : Optional.empty();
	}

	/** Whether all longer words are of the trade, and none says what a tool is for, or when. */
	private static boolean onlyTrade(String text) {
		for (int start = 0; start < text.length(); start++) {
			int end = start;
			while (end < text.length() && Character.isLetter(text.charAt(end))) {
				end++;
			}
			String word = text.substring(start, end);
			Optional<Meaning> meaning = word.isEmpty() ? Optional.empty() : TradeWords.words().meaning(word);
			if (word.length() >= SHORTEST_WORD && meaning.isEmpty() || meaning.filter(SAYS_MORE::contains).isPresent()) {
				return false;
			}
			start = Math.max(start, end - 1);
		}
		return true;
	}

	/**
	 * Reads a line that begins with a tool's number and no letter before it, as in {@code 1: DRILL 6.8} or the columns of {@code  2   TAP   M8}, or with the
	 * number of its offset or its place, {@code H3 = M8 TAP}, {@code POT 3 M8 TAP}: it may as well number steps, or be a size, which the program has to tell.
	 */
	public static Optional<ToolListLine> bare(String comment) {
		int start = 0;
		while (start < comment.length() && !Character.isLetterOrDigit(comment.charAt(start)) && comment.charAt(start) != '#' && comment.charAt(start) != '.') {
			start++;
		}
		int letters = place(comment, start);
		start = letters < 0 ? start : letters;
		int end = start;
		while (end < comment.length() && comment.charAt(end) >= '0' && comment.charAt(end) <= '9') {
			end++;
		}
		int sign = end;
		while (sign < comment.length() && Character.isWhitespace(comment.charAt(sign))) {
			sign++;
		}
		if (end == start || !whole(comment.substring(start, end)) || sign == comment.length()) {
			return Optional.empty();
		}
		boolean marked = ":=)|".indexOf(comment.charAt(sign)) >= 0 || comment.charAt(sign) == '-' && sign > end;
		boolean column = sign > end + 1 || comment.charAt(end) == '\t';
		String text = comment.substring(marked ? sign + 1 : sign);
		boolean tool = (marked || column || letters >= 0 && sign > end) && CalloutReader.readComment(text).tool().isPresent();
		return tool ? Optional.of(new ToolListLine(Integer.parseInt(comment.substring(start, end)), text)) : Optional.empty();
	}

	/** Where the number stands behind the word of an offset or a place that begins at start; -1 without one. */
	private static int place(String comment, int start) {
		int end = start;
		while (end < comment.length() && Character.isLetter(comment.charAt(end))) {
			end++;
		}
		if (!PLACES.contains(comment.substring(start, end).toUpperCase(Locale.ROOT))) {
			return -1;
		}
		while (end < comment.length() && " .#".indexOf(comment.charAt(end)) >= 0) {
			end++;
		}
		return end;
	}

	/** The parts of a comment, each about one tool: several where it lists tools one behind the other, {@code T1 DRILL 8.5, T2 M10 TAP}; else all of it. */
	public static List<Span> parts(String comment) {
		List<Span> whole = List.of(new Span(0, comment.length()));
		if (comment.length() > LONGEST_LIST || numbers(comment) < 2 || comment.codePointCount(0, comment.length()) != comment.length()) {
			return whole;
		}
		List<Integer> starts = starts(comment);
		List<Span> parts = new ArrayList<>();
		Set<Integer> tools = new HashSet<>();
		int saying = 0;
		for (int i = 0; i < starts.size(); i++) {
			int end = i + 1 < starts.size() ? starts.get(i + 1) : comment.length();
			String part = comment.substring(starts.get(i), end);
			saying += CalloutReader.readComment(part).tool().isPresent() || !CalloutReader.read(part).isEmpty() ? 1 : 0;
			if (!read(part).filter(line -> tools.add(line.number())).isPresent()) {
				return whole;
			}
			parts.add(new Span(starts.get(i), end));
		}
		// of T1 TURN, T5 DRILL 8.5, T7 M10 TAP not all need be tools that are known here
		if (saying < Math.max(2, starts.size() / 2)) {
			return whole;
		}
		if (parts.size() > 1 && starts.get(0) > 0) {
			parts.add(0, new Span(0, starts.get(0)));
		}
		return parts.size() > 1 ? parts : whole;
	}

	/** How often a word for a tool stands there: a cheap look before the comment is read. */
	private static int numbers(String comment) {
		int count = 0;
		for (int start = 0; start < comment.length(); start++) {
			int end = start;
			while (end < comment.length() && Character.isLetter(comment.charAt(end))) {
				end++;
			}
			boolean single = end == start + 1 && (comment.charAt(start) == 'T' || comment.charAt(start) == 't');
			count += single || end > start + 1 && numberAhead(comment, end) && isTool(comment.substring(start, end)) ? 1 : 0;
			start = Math.max(start, end - 1);
		}
		return count;
	}

	private static boolean numberAhead(String comment, int at) {
		int next = at;
		while (next < comment.length() && " #:=.-".indexOf(comment.charAt(next)) >= 0) {
			next++;
		}
		return next < comment.length() && (comment.charAt(next) >= '0' && comment.charAt(next) <= '9' || "TtNn".indexOf(comment.charAt(next)) >= 0);
	}

	/** Where tools with their numbers stand, a word that is none of the trade not before them: in AFTER T2 the tool is another's. */
	private static List<Integer> starts(String comment) {
		List<Integer> starts = new ArrayList<>();
		CalloutTokens tokens = new CalloutTokens(CharStreams.fromString(comment));
		boolean open = true;
		int tool = -1;
		for (Token token = next(tokens); token.getType() != Token.EOF; token = next(tokens)) {
			if (tool >= 0 && token.getType() == CalloutParser.NUMBER) {
				starts.add(tool);
			}
			int start = tool >= 0 ? tool : token.getStartIndex();
			tool = isTool(token.getText()) && open ? start : isMark(token) ? tool : -1;
			open = !Character.isLetter(token.getText().codePointAt(0)) || TradeWords.words().meaning(token.getText()).filter(meaning -> meaning != Meaning.FOR).isPresent();
		}
		return starts;
	}

	private static Token next(CalloutTokens tokens) {
		Token token = tokens.nextToken();
		while (token.getChannel() != Token.DEFAULT_CHANNEL) {
			token = tokens.nextToken();
		}
		return token;
	}

	private static boolean isTool(Token token) {
		return token.getType() != Token.EOF && isTool(token.getText());
	}

	private static boolean isTool(String word) {
		return word.equalsIgnoreCase("T") || TradeWords.words().meaning(word).filter(meaning -> meaning == Meaning.TOOL).isPresent();
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
