package truelead.checker.callout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Token;
import truelead.grammar.Span;

/**
 * Cuts a comment that lists tools one behind the other where the next tool begins: {@code T1 DRILL 8.5, T2 M10 TAP} and
 * {@code 8.5 DRILL T1 / M10 TAP T2}.
 */
public final class ToolListParts {

	private static final int LONGEST_LIST = 1_000;
	private static final String BETWEEN = "/;,|+-&";
	/** As long as a tool with its offset is, T0101. */
	private static final int WITH_OFFSET = 5;
	/** Words before a tool that is spoken of, and not listed. */
	private static final Set<String> REFERS = Set.of("AND", "OR", "WITH", "TO", "BY", "AS", "AT", "ON", "FROM", "LIKE", "SEE", "USE", "UND",
			"ODER", "MIT", "WIE", "VON", "ET", "OU", "AVEC", "PAR", "COMME", "Y", "O", "CON", "COMO", "E", "COME", "EN", "OF", "MET", "OCH",
			"MED", "I", "LUB", "Z", "JAKO", "A", "NEBO");

	/** Where a tool stands with its number, from the word to behind the number. */
	private record Numbered(int start, int end) {
	}

	private ToolListParts() {
	}

	/** The parts of a comment, each about one tool; all of it where it lists no tools. */
	public static List<Span> of(String comment) {
		List<Span> whole = List.of(new Span(0, comment.length()));
		if (comment.length() > LONGEST_LIST || numbers(comment) < 2 || comment.codePointCount(0, comment.length()) != comment.length()) {
			return whole;
		}
		List<Numbered> tools = numbered(comment, false);
		List<Span> numbersLast = numbersLast(comment, tools);
		if (!numbersLast.isEmpty()) {
			return numbersLast;
		}
		List<Numbered> all = numbered(comment, true);
		boolean row = row(comment, all);
		return numbersFirst(comment, row ? all : tools, row ? 1 : Math.max(2, tools.size() / 2), whole);
	}

	/**
	 * Whether a comment begins with a tool and goes on with others, each with words behind it: three or more, or two with their offsets, as
	 * T0101 has. Of T1 DREHEN T2 EINSTECHEN T3 GEWINDE M20 no word need be known.
	 */
	private static boolean row(String comment, List<Numbered> tools) {
		boolean offsets = tools.stream().allMatch(tool -> comment.substring(tool.start(), tool.end()).length() >= WITH_OFFSET);
		if (tools.size() < (offsets ? 2 : 3) || comment.substring(0, tools.get(0).start()).chars().anyMatch(Character::isLetterOrDigit)) {
			return false;
		}
		for (int i = 0; i < tools.size(); i++) {
			String behind = comment.substring(tools.get(i).end(), i + 1 < tools.size() ? tools.get(i + 1).start() : comment.length());
			String last = lastWord(behind);
			boolean refers = i + 1 < tools.size() && (REFERS.contains(last.toUpperCase(Locale.ROOT)) || TradeWords.words().meaning(last)
					.filter(meaning -> meaning == Meaning.FOR || meaning == Meaning.APART).isPresent());
			if (refers || behind.chars().noneMatch(Character::isLetter)) {
				return false;
			}
		}
		return true;
	}

	private static String lastWord(String text) {
		String stripped = text.stripTrailing();
		int start = stripped.length();
		while (start > 0 && Character.isLetter(stripped.charAt(start - 1))) {
			start--;
		}
		return stripped.substring(start);
	}

	private static List<Span> numbersFirst(String comment, List<Numbered> numbered, int enough, List<Span> whole) {
		List<Span> parts = new ArrayList<>();
		Set<Integer> tools = new HashSet<>();
		int saying = 0;
		for (int i = 0; i < numbered.size(); i++) {
			Span at = new Span(numbered.get(i).start(), i + 1 < numbered.size() ? numbered.get(i + 1).start() : comment.length());
			String part = comment.substring(at.start(), at.end());
			Optional<ToolListLine> line = ToolListLine.read(part).filter(one -> tools.add(one.number()));
			if (line.isEmpty()) {
				return whole;
			}
			// T2 M2.5 THREAD: with its number it looks like code
			saying += CalloutReader.readComment(part).tool().isPresent() || !CalloutReader.read(part).isEmpty()
					|| CalloutReader.read(line.get().text()).stream().anyMatch(Callout::certain) ? 1 : 0;
			parts.add(at);
		}
		// of T1 TURN, T5 DRILL 8.5, T7 M10 TAP not all need be tools that are known here, and of T1 = TURN, T4 = THREAD M18 one
		boolean equal = numbered.stream().allMatch(tool -> equalsBehind(comment, tool.end()));
		if (saying < (equal ? 1 : enough)) {
			return whole;
		}
		if (parts.size() > 1 && numbered.get(0).start() > 0) {
			parts.add(0, new Span(0, numbered.get(0).start()));
		}
		return parts.size() > 1 ? parts : whole;
	}

	/**
	 * The parts where each number stands behind its tool and a sign behind that; empty elsewhere. What stands behind the last number is
	 * said of the last tool.
	 */
	private static List<Span> numbersLast(String comment, List<Numbered> numbered) {
		List<Span> parts = new ArrayList<>();
		Set<Integer> tools = new HashSet<>();
		int from = 0;
		for (Numbered tool : numbered) {
			String part = comment.substring(from, tool.end());
			boolean apart = from == 0 || BETWEEN.indexOf(part.stripLeading().charAt(0)) >= 0;
			Optional<ToolListLine> line = apart ? ToolListLine.numberLast(part) : Optional.empty();
			boolean equals = comment.substring(0, tool.start()).stripTrailing().endsWith("=");
			if (line.filter(one -> says(one.text(), equals) && tools.add(one.number())).isEmpty()) {
				return List.of();
			}
			parts.add(new Span(from, tool.end()));
			from = tool.end();
		}
		boolean rest = comment.substring(from).chars().anyMatch(Character::isLetterOrDigit);
		if (parts.size() < 2 || rest && (CalloutReader.readComment(comment.substring(from)).tool().isPresent()
				|| !CalloutReader.read(comment.substring(from)).isEmpty())) {
			return List.of();
		}
		return parts;
	}

	/** Whether a text names a tool; before an equals sign, 6.8 = T3, M8 = T5, its size or its thread may be all that is said. */
	private static boolean says(String text, boolean equals) {
		return CalloutReader.readComment(text).tool().isPresent() || equals && (CalloutReader.bareSize(text).isPresent()
				|| !CalloutReader.read(text).isEmpty());
	}

	/** How often a word for a tool stands there: a cheap look before the comment is read. */
	static int numbers(String comment) {
		int count = 0;
		for (int start = 0; start < comment.length(); start++) {
			int end = start;
			while (end < comment.length() && Character.isLetter(comment.charAt(end))) {
				end++;
			}
			boolean single = end == start + 1 && (comment.charAt(start) == 'T' || comment.charAt(start) == 't');
			count += single || end > start + 1 && numberAhead(comment, end) && ToolListLine.isTool(comment.substring(start, end)) ? 1 : 0;
			start = Math.max(start, end - 1);
		}
		return count;
	}

	private static boolean equalsBehind(String comment, int at) {
		int next = at;
		while (next < comment.length() && comment.charAt(next) == ' ') {
			next++;
		}
		return next < comment.length() && "=:".indexOf(comment.charAt(next)) >= 0;
	}

	private static boolean numberAhead(String comment, int at) {
		int next = at;
		while (next < comment.length() && " #:=.-".indexOf(comment.charAt(next)) >= 0) {
			next++;
		}
		return next < comment.length() && (comment.charAt(next) >= '0' && comment.charAt(next) <= '9'
				|| "TtNn".indexOf(comment.charAt(next)) >= 0);
	}

	/**
	 * The tools with their numbers, a word that is none of the trade not before them, unless an equals sign is behind: in AFTER T2 the tool
	 * is another's, in EBAUCHE T2 = FILETAGE it is not.
	 */
	private static List<Numbered> numbered(String comment, boolean unknown) {
		List<Numbered> tools = new ArrayList<>();
		CalloutTokens tokens = new CalloutTokens(CharStreams.fromString(comment));
		boolean open = true;
		boolean first = true;
		int tool = -1;
		for (Token token = ToolListLine.next(tokens); token.getType() != Token.EOF; token = ToolListLine.next(tokens)) {
			if (tool >= 0 && token.getType() == CalloutParser.NUMBER && (first || equalsBehind(comment, token.getStopIndex() + 1))) {
				tools.add(new Numbered(tool, token.getStopIndex() + 1));
			}
			boolean named = ToolListLine.isTool(token.getText());
			first = named && tool < 0 ? open : first;
			tool = named ? tool >= 0 ? tool : token.getStartIndex() : ToolListLine.isMark(token) ? tool : -1;
			open = unknown || !Character.isLetter(token.getText().codePointAt(0))
					|| TradeWords.words().meaning(token.getText()).filter(meaning -> meaning != Meaning.FOR).isPresent();
		}
		return tools;
	}
}
