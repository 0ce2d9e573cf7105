package truelead.checker.callout;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Token;
import truelead.checker.thread.Remembered;

/**
 * A comment that says what is in a pocket: {@code T5 M8 TAP}, {@code TOOL 5 - M8 TAP}, {@code T05 = DRILL 6.8}, {@code DRILL 6.8 = T5},
 * {@code 6.8 DRILL T5}.
 *
 * @param number the tool's number
 * @param text   what stands behind it
 */
public record ToolListLine(int number, String text) {

	private static final int LONGEST = 200;
	/** The letter of a Russian keyboard, which looks like the T of a block. */
	private static final String CYRILLIC_T = "\u0422";
	private static final int MOST_DIGITS = 6;
	/** Shorter ones are letters of sizes and threads. */
	private static final int SHORTEST_WORD = 3;
	private static final int LONGEST_UNKNOWN = 12;
	private static final Set<Meaning> SAYS_MORE = EnumSet.of(Meaning.FOR, Meaning.NOT, Meaning.VERB, Meaning.ELSEWHERE, Meaning.OTHER_SIDE,
			Meaning.SILENT, Meaning.SUPPLY, Meaning.RATE, Meaning.TOOL, Meaning.APART);
	private static final Set<String> STEPS = Set.of("N", "OP");
	private static final Set<String> NUMBER = Set.of("N", "NUMBER", "NUM");
	private static final Set<String> PLACES = Set.of("H", "POT", "POCKET", "PKT", "POS", "STATION", "STA", "STN", "PLATZ", "PL", "POSTE");
	/** Of tools that stand in for one another when one is worn. */
	private static final Set<String> GROUPS = Set.of("GROUP", "GRP", "GRUPPE");
	/** Words before those: TOOL LIFE GROUP 3. */
	private static final Set<String> BEFORE_PLACES = Set.of("TOOL", "LIFE");
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
			return behindTool(comment);
		}
		CalloutTokens tokens = new CalloutTokens(CharStreams.fromString(comment.length() > LONGEST
				? comment.substring(0, LONGEST) : comment));
		Token token = next(tokens);
		while (token.getStartIndex() < start && token.getType() != Token.EOF) {
			token = next(tokens);
		}
		if (STEPS.contains(token.getText().toUpperCase(Locale.ROOT))) {
			// N30 T5, OP 10 - T5
			token = next(tokens);
			while (token.getType() == CalloutParser.NUMBER || isMark(token)) {
				token = next(tokens);
			}
		}
		if (!isTool(token)) {
			return behindTool(comment);
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
				? Optional.of(new ToolListLine(Integer.parseInt(token.getText()),
						comment.substring(behindSign(comment, token.getStopIndex() + 1)))) : Optional.empty();
	}

	/** In T13-3/8-16 TAP the dash is no part of the size. */
	private static int behindSign(String comment, int at) {
		int sign = at;
		while (sign < comment.length() && comment.charAt(sign) == ' ') {
			sign++;
		}
		return sign < comment.length() && "-=:".indexOf(comment.charAt(sign)) >= 0 ? sign + 1 : at;
	}

	/** The one number that stands behind its tool, last or with more about the tool behind it. */
	private static Optional<ToolListLine> behindTool(String comment) {
		return numberLast(comment).filter(line -> ToolListParts.numbers(line.text()) == 0).or(() -> numberWithin(comment));
	}

	/** The tool that is named last, behind an equals sign, or behind nothing but a tool: M4 TAP T6, and not BEFORE TAP T6. */
	static Optional<ToolListLine> numberLast(String comment) {
		String text = comment.stripTrailing();
		int start = Math.max(text.lastIndexOf('T'), text.lastIndexOf('t'));
		if (start < 1 || start + 1 == text.length() || !whole(text.substring(start + 1))) {
			return Optional.empty();
		}
		String before = text.substring(0, start).stripTrailing();
		int signs = before.length();
		while (signs > 0 && before.charAt(signs - 1) == '=') {
			signs--;
		}
		boolean equals = signs < before.length();
		boolean apart = !before.isEmpty() && !Character.isLetterOrDigit(text.charAt(start - 1));
		return equals && signs > 0 || apart && onlyTrade(before) && CalloutReader.readComment(before).tool().isPresent()
				? Optional.of(new ToolListLine(Integer.parseInt(text.substring(start + 1)), before.substring(0, signs))) : Optional.empty();
	}

	/**
	 * DRILL T3 DIA 4.2, TAP T4 M5X0.8: the number right behind the tool, and its size behind that; blanks are put in place of the number.
	 */
	private static Optional<ToolListLine> numberWithin(String comment) {
		int start = 0;
		while (start < comment.length() && !((comment.charAt(start) == 'T' || comment.charAt(start) == 't') && numberAt(comment, start))) {
			start++;
		}
		int end = Math.min(start + 1, comment.length());
		while (end < comment.length() && comment.charAt(end) >= '0' && comment.charAt(end) <= '9') {
			end++;
		}
		if (end >= comment.length() || comment.length() > LONGEST || end - start - 1 > MOST_DIGITS) {
			return Optional.empty();
		}
		String before = comment.substring(0, start);
		String behind = comment.substring(end);
		boolean list = ToolListParts.numbers(comment) == 1 && onlyTrade(before) && !sized(before)
				&& CalloutReader.readComment(before).tool().isPresent() && onlyTrade(withoutPurpose(behind)) && sized(behind);
		return list ? Optional.of(new ToolListLine(Integer.parseInt(comment.substring(start + 1, end)), before + " ".repeat(end - start)
				+ behind)) : Optional.empty();
	}

	/** Whether a T that is a word of its own with a number behind it stands there. */
	private static boolean numberAt(String comment, int at) {
		boolean apart = at > 0 && !Character.isLetterOrDigit(comment.charAt(at - 1));
		return apart && at + 1 < comment.length() && comment.charAt(at + 1) >= '0' && comment.charAt(at + 1) <= '9';
	}

	private static boolean sized(String text) {
		return text.chars().anyMatch(c -> c >= '0' && c <= '9');
	}

	/** DIA 4.2 FOR M5: without what the hole is for. */
	private static String withoutPurpose(String text) {
		for (int start = 0; start < text.length(); start++) {
			int end = start;
			while (end < text.length() && Character.isLetter(text.charAt(end))) {
				end++;
			}
			if (end > start && TradeWords.words().meaning(text.substring(start, end)).filter(meaning -> meaning == Meaning.FOR)
					.isPresent()) {
				return text.substring(0, start);
			}
			start = Math.max(start, end - 1);
		}
		return text;
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
	 * Reads a line that begins with a tool's number and no letter before it, as in {@code 1: DRILL 6.8}, {@code 1 / 1 / DRILL 6.8} or the
	 * columns of {@code  2   TAP   M8}, or with the number of its offset or its place, {@code H3 = M8 TAP}, {@code POT 3 M8 TAP}, or with a
	 * sign, {@code #3 M8 TAP}, or with a word that is not known, {@code KNIFE3 = M8 TAP}: it may as well number steps, or be a size, which
	 * the program has to tell.
	 */
	public static Optional<ToolListLine> bare(String comment) {
		return bare(comment, 2);
	}

	/**
	 * The same where a single blank stands between number and tool, {@code 5 M6 TAP}, {@code TOOLS: 1 SPOT}: it may well be a size or a
	 * count of holes.
	 */
	public static Optional<ToolListLine> bareByBlank(String comment) {
		int colon = comment.indexOf(':');
		boolean heading = colon > 0 && comment.substring(0, colon).strip().chars().allMatch(Character::isLetter);
		return bare(heading ? " ".repeat(colon + 1) + comment.substring(colon + 1) : comment, 1);
	}

	/** The number of a comment that says no more, {@code 5}, {@code T5} or {@code #5}: the tool stands in the comment behind it. */
	public static OptionalInt numberAlone(String comment) {
		String text = comment.strip();
		String digits = !text.isEmpty() && "Tt#".indexOf(text.charAt(0)) >= 0 ? text.substring(1) : text;
		return !digits.isEmpty() && whole(digits) ? OptionalInt.of(Integer.parseInt(digits)) : OptionalInt.empty();
	}

	/** What a comment says of a tool whose number stands elsewhere; empty where it names no tool. */
	public static Optional<ToolListLine> of(int number, String comment) {
		return Optional.of(new ToolListLine(number, comment)).filter(line -> CalloutReader.readComment(comment).tool().isPresent());
	}

	/** @param blanks how many blanks at least stand between a number without a sign and its tool */
	private static Optional<ToolListLine> bare(String comment, int blanks) {
		int start = 0;
		while (start < comment.length() && !Character.isLetterOrDigit(comment.charAt(start)) && comment.charAt(start) != '#'
				&& comment.charAt(start) != '.') {
			start++;
		}
		int letters = start + 1 < comment.length() && comment.charAt(start) == '#' ? start + 1 : place(comment, start);
		int unknown = letters < 0 ? unknownWord(comment, start) : -1;
		start = letters < 0 ? Math.max(start, unknown) : letters;
		int end = start;
		while (end < comment.length() && comment.charAt(end) >= '0' && comment.charAt(end) <= '9') {
			end++;
		}
		int sign = behindBlanks(comment, end);
		if (end == start || !whole(comment.substring(start, end)) || sign == comment.length()) {
			return Optional.empty();
		}
		boolean stroke = unknown < 0 && comment.charAt(sign) == '/' && sign > end;
		boolean marked = stroke || (unknown >= 0 ? ":=" : ":=)|").indexOf(comment.charAt(sign)) >= 0
				|| unknown < 0 && comment.charAt(sign) == '-' && sign > end;
		boolean column = unknown < 0 && (sign >= end + blanks || comment.charAt(end) == '\t');
		String text = comment.substring(marked ? stroke ? behindOffset(comment, sign + 1) : sign + 1 : sign);
		boolean tool = (marked || column || letters >= 0 && sign > end) && CalloutReader.readComment(text).tool().isPresent();
		return tool ? Optional.of(new ToolListLine(Integer.parseInt(comment.substring(start, end)), text)) : Optional.empty();
	}

	/** In 3 / 3 / DRILL 6.8 the second number is that of the tool's offset; where the next column begins. */
	private static int behindOffset(String comment, int from) {
		int start = behindBlanks(comment, from);
		int end = start;
		while (end < comment.length() && comment.charAt(end) >= '0' && comment.charAt(end) <= '9') {
			end++;
		}
		int sign = behindBlanks(comment, end);
		return end > start && sign > end && sign < comment.length() && comment.charAt(sign) == '/' ? sign + 1 : from;
	}

	private static int behindBlanks(String comment, int from) {
		int at = from;
		while (at < comment.length() && Character.isWhitespace(comment.charAt(at))) {
			at++;
		}
		return at;
	}

	/** The same for a table whose lines are numbered before their tools are: {@code 1  4  DRILL 6.8}. */
	public static Optional<ToolListLine> secondColumn(String comment) {
		int end = 0;
		while (end < comment.length() && !Character.isLetterOrDigit(comment.charAt(end))) {
			end++;
		}
		int start = end;
		while (end < comment.length() && comment.charAt(end) >= '0' && comment.charAt(end) <= '9') {
			end++;
		}
		boolean column = end > start && end < comment.length() && " \t|;".indexOf(comment.charAt(end)) >= 0;
		return column ? bare(comment.substring(end)) : Optional.empty();
	}

	/** Where the number stands behind the word of an offset or a place that begins at start; -1 without one. */
	private static int place(String comment, int from) {
		int start = from;
		int end = behindWord(comment, start);
		while (BEFORE_PLACES.contains(comment.substring(start, end).toUpperCase(Locale.ROOT))) {
			start = behindBlanks(comment, end);
			end = behindWord(comment, start);
		}
		String word = comment.substring(start, end).toUpperCase(Locale.ROOT);
		return PLACES.contains(word) || GROUPS.contains(word) ? behindSigns(comment, end) : -1;
	}

	/** Whether a line of a list numbers a group of tools, {@code TOOL LIFE GROUP 3 M8 TAP}. */
	public static boolean isOfGroup(String comment) {
		return GROUPS.stream().anyMatch(comment.toUpperCase(Locale.ROOT)::contains) && place(comment, 0) >= 0;
	}

	/** The same tool by another number. */
	public ToolListLine by(int another) {
		return new ToolListLine(another, text);
	}

	/** The same behind a short word that means nothing in the trade: another language's for a tool, perhaps. */
	private static int unknownWord(String comment, int start) {
		int end = behindWord(comment, start);
		boolean word = end > start + 1 && end <= start + LONGEST_UNKNOWN
				&& TradeWords.words().meaning(comment.substring(start, end)).isEmpty();
		return word ? behindSigns(comment, end) : -1;
	}

	private static int behindWord(String comment, int start) {
		int end = start;
		while (end < comment.length() && Character.isLetter(comment.charAt(end))) {
			end++;
		}
		return end;
	}

	private static int behindSigns(String comment, int from) {
		int end = from;
		while (end < comment.length() && " .#".indexOf(comment.charAt(end)) >= 0) {
			end++;
		}
		return end;
	}

	static Token next(CalloutTokens tokens) {
		Token token = tokens.nextToken();
		while (token.getChannel() != Token.DEFAULT_CHANNEL) {
			token = tokens.nextToken();
		}
		return token;
	}

	private static boolean isTool(Token token) {
		return token.getType() != Token.EOF && isTool(token.getText());
	}

	static boolean isTool(String word) {
		return word.equalsIgnoreCase("T") || word.equalsIgnoreCase("TN") || word.equalsIgnoreCase(CYRILLIC_T)
				|| TradeWords.words().meaning(word).filter(meaning -> meaning == Meaning.TOOL).isPresent();
	}

	static boolean isMark(Token token) {
		return switch (token.getType()) {
			case CalloutParser.EQUALS, CalloutParser.COLON, CalloutParser.HASH, CalloutParser.DOT, CalloutParser.DASH, CalloutParser.NO,
					CalloutParser.DEGREE_SIGN -> true;
			default -> NUMBER.contains(token.getText().toUpperCase(Locale.ROOT));
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
