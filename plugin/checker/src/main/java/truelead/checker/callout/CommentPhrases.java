package truelead.checker.callout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.WritableToken;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;

/**
 * Cuts a comment at its words into phrases, and phrases into pieces: a thread, a depth, a drill's diameter, a sign.
 *
 * <p>
 * A number may begin a thread, a drill, a depth or nothing. A parser that has all of a comment before it reads on to the end to tell
 * (2 ms a comment); here it gets runs of a few tokens, the longest first, and says yes or no.
 */
final class CommentPhrases {
	/** No callout has as many tokens; a longer run of numbers and signs is cut. */
	private static final int LONGEST = 20;
	private static final Set<String> DRILL_AND_TAP = Set.of("&", "+", "/");
	/** What stands behind the inches in the sizes of pipes above 1 (ISO 228-1). */
	private static final Set<String> MIXED_PIPES = Set.of("1/8", "1/4", "1/2", "3/4");

	private CommentPhrases() {
	}

	/** The phrases in order: one word each, or a run of numbers, signs and the words that stand in callouts. */
	static List<List<Token>> of(String text) {
		List<Token> tokens = tokens(text);
		List<List<Token>> phrases = new ArrayList<>();
		for (int i = 0; i < tokens.size(); i++) {
			if (i == 0 || begins(tokens, i) || phrases.get(phrases.size() - 1).size() >= LONGEST) {
				phrases.add(new ArrayList<>());
			}
			phrases.get(phrases.size() - 1).add(tokens.get(i));
		}
		return phrases;
	}

	private static List<Token> tokens(String text) {
		CalloutTokens tokens = new CalloutTokens(CharStreams.fromString(text));
		List<Token> seen = new ArrayList<>();
		for (Token token = tokens.nextToken(); token.getType() != Token.EOF; token = tokens.nextToken()) {
			if (token.getChannel() == Token.DEFAULT_CHANNEL) {
				seen.add(token);
				drillAndTap(seen);
				side(seen);
			}
		}
		return seen;
	}

	/** D&T 10-32, D/T M6: the letters of drill and tap, where T is no letter of a number. */
	private static void drillAndTap(List<Token> seen) {
		int last = seen.size() - 1;
		if (last < 3 || !seen.get(last - 1).getText().equalsIgnoreCase("T")
				|| seen.get(last - 1).getStopIndex() + 1 == seen.get(last).getStartIndex()) {
			return;
		}
		Token drill = seen.get(last - 3);
		Token sign = seen.get(last - 2);
		if (drill.getText().equalsIgnoreCase("D") && DRILL_AND_TAP.contains(sign.getText())
				&& drill.getStopIndex() + 1 == sign.getStartIndex() && sign.getStopIndex() + 1 == seen.get(last - 1).getStartIndex()) {
			name((WritableToken) drill, "DRILL");
			name((WritableToken) seen.get(last - 1), "TAP");
		}
	}

	/** M8 LEFT SIDE: no hand of the thread. */
	private static void side(List<Token> seen) {
		Token before = seen.size() > 1 ? seen.get(seen.size() - 2) : seen.get(0);
		if ((before.getType() == CalloutParser.LEFT || before.getType() == CalloutParser.RIGHT) && before.getText().length() > 2
				&& HandWords.site(seen.get(seen.size() - 1).getText())) {
			((WritableToken) before).setType(CalloutParser.TYPED);
		}
	}

	private static void name(WritableToken token, String word) {
		token.setType(CalloutParser.TYPED);
		token.setText(word);
	}

	/** At and behind words, before an M that nothing counts, and between numbers that make no mixed number. */
	private static boolean begins(List<Token> tokens, int i) {
		int before = tokens.get(i - 1).getType();
		int type = tokens.get(i).getType();
		if (isWord(tokens.get(i - 1)) || isWord(tokens.get(i))) {
			return true;
		}
		if (type == CalloutParser.NUMBER && before == CalloutParser.NUMBER) {
			boolean mixed = i + 1 < tokens.size() && tokens.get(i + 1).getType() == CalloutParser.SLASH;
			boolean letter = i > 1 && letter(tokens.get(i - 2)) && tokens.get(i - 2).getStopIndex()
					+ 1 == tokens.get(i - 1).getStartIndex();
			if (!letter && seriesAt(tokens, i + 1)) {
				return false;
			}
			return !mixed || letter && !pipeSize(tokens, i);
		}
		return (type == CalloutParser.M || type == CalloutParser.MJ || type == CalloutParser.TR || type == CalloutParser.RD)
				&& before != CalloutParser.TIMES && before != CalloutParser.DASH && before != CalloutParser.RPAREN
				&& before != CalloutParser.LETTER_WORD;
	}

	/** In G1 3/4 the letter is the system's, as the fraction of a pipe's size tells. */
	private static boolean pipeSize(List<Token> tokens, int i) {
		boolean series = tokens.get(i - 2).getType() == CalloutParser.SERIES_LETTER && i + 2 < tokens.size();
		String fraction = series ? tokens.get(i).getText() + "/" + tokens.get(i + 2).getText() : "";
		return series && MIXED_PIPES.contains(fraction) && tokens.get(i - 1).getText().length() == 1;
	}

	/** In 1/4 20 UNC a blank stands for the dash. */
	private static boolean seriesAt(List<Token> tokens, int i) {
		int at = i < tokens.size() && tokens.get(i).getType() == CalloutParser.DASH ? i + 1 : i;
		return at < tokens.size() && tokens.get(at).getType() == CalloutParser.SERIES;
	}

	/** In T5 1/2 the 5 is the tool's. */
	private static boolean letter(Token token) {
		return switch (token.getType()) {
			case CalloutParser.LETTER, CalloutParser.P, CalloutParser.D, CalloutParser.S, CalloutParser.SERIES_LETTER -> true;
			default -> false;
		};
	}

	/** A token that is in no callout. */
	static boolean isWord(Token token) {
		return switch (token.getType()) {
			case CalloutParser.TYPED, CalloutParser.WORD, CalloutParser.ANY -> true;
			default -> false;
		};
	}

	/**
	 * The pieces of a phrase, each the longest that begins where the last one ended.
	 *
	 * @param drill  whether the word of a drill stands before it
	 * @param column whether the name of another number of the tool does, as LEN
	 */
	static List<CalloutParser.ItemContext> items(List<Token> phrase, boolean drill, boolean column) {
		List<CalloutParser.ItemContext> items = new ArrayList<>();
		int from = 0;
		while (from < phrase.size()) {
			int to = phrase.size();
			Optional<CalloutParser.ItemContext> item = item(phrase.subList(from, to));
			while (to > from + 1 && (item.isEmpty() || letterBeforeFraction(phrase, from, to) || countOfSeries(phrase, from, to)
					|| noLengths(phrase, from, to) || turnsOfSeries(phrase, from, to) || depthBehindDash(phrase, from, to)
					|| depthOfTheNext(phrase, from, to) || fractionOfTheNext(phrase, from, to)
					|| column && diameterOfTheNext(phrase, from, to) || drill && from == 0 && sizeBeforeDepth(phrase, to))) {
				to--;
				item = item(phrase.subList(from, to));
			}
			item.ifPresent(items::add);
			from = to;
		}
		return items;
	}

	/** G 3/4 - 16 DEEP, DRILL 8.5 X 30 DEEP: what stands behind the dash is the depth, no threads an inch. */
	private static boolean depthBehindDash(List<Token> phrase, int from, int to) {
		boolean size = phrase.get(from).getType() == CalloutParser.NUMBER && to - 2 > from
				&& phrase.get(to - 2).getType() == CalloutParser.TIMES;
		boolean number = to - 2 > from && phrase.get(to - 1).getType() == CalloutParser.NUMBER
				&& (size || phrase.get(to - 2).getType() == CalloutParser.DASH);
		int unit = to < phrase.size() && (phrase.get(to).getType() == CalloutParser.MM || phrase.get(to).getType() == CalloutParser.INCH
				|| phrase.get(to).getType() == CalloutParser.INCH_MARK) ? to + 1 : to;
		boolean deep = unit < phrase.size() && phrase.get(unit).getType() == CalloutParser.DEPTH;
		return number && deep && !(unit + 1 < phrase.size() && phrase.get(unit + 1).getType() == CalloutParser.NUMBER);
	}

	/** PORT A 1/4 NPT, D&T 1/4-20, PERCER A 8.5: a letter apart from the fraction is not its own, and A is a word of many languages. */
	private static boolean letterBeforeFraction(List<Token> phrase, int from, int to) {
		boolean fraction = to < phrase.size() && phrase.get(to).getType() == CalloutParser.SLASH;
		return to == from + 2 && (fraction || phrase.get(from).getText().equalsIgnoreCase("A")) && phrase.get(from).getText().length() == 1
				&& Character.isLetter(phrase.get(from).getText().charAt(0)) && phrase.get(from).getStopIndex() + 1 < phrase.get(from
						+ 1).getStartIndex();
	}

	/** 2-RC1/4: the number before a series with its size counts holes. */
	private static boolean countOfSeries(List<Token> phrase, int from, int to) {
		boolean number = to > from + 1 && from + 4 < phrase.size() && phrase.get(from).getType() == CalloutParser.NUMBER
				&& phrase.get(from + 1).getType() == CalloutParser.DASH;
		boolean series = number && (phrase.get(from + 2).getType() == CalloutParser.SERIES
				|| phrase.get(from + 2).getType() == CalloutParser.SERIES_LETTER);
		return series && phrase.get(from + 3).getType() == CalloutParser.NUMBER && phrase.get(from + 4).getType() == CalloutParser.SLASH;
	}

	/** ACME 5 TPI: the number behind a series is that of its threads an inch, and no size. */
	private static boolean turnsOfSeries(List<Token> phrase, int from, int to) {
		return to == from + 2 && to < phrase.size() && phrase.get(from).getType() == CalloutParser.SERIES
				&& phrase.get(to - 1).getType() == CalloutParser.NUMBER && phrase.get(to).getType() == CalloutParser.TPI;
	}

	/**
	 * M6-6H 12/16 has the lengths of thread and hole behind its class; else, and where the hole is no deeper, a stroke makes a fraction.
	 */
	private static boolean noLengths(List<Token> phrase, int from, int to) {
		boolean metric = phrase.get(from).getType() == CalloutParser.M || phrase.get(from).getType() == CalloutParser.MJ;
		boolean stroke = metric && to > from + 4 && phrase.get(to - 1).getType() == CalloutParser.NUMBER
				&& phrase.get(to - 2).getType() == CalloutParser.SLASH && phrase.get(to - 3).getType() == CalloutParser.NUMBER;
		return stroke && phrase.get(to - 4).getType() != CalloutParser.TIMES && !(phrase.get(to - 4).getType() == CalloutParser.METRIC_CLASS
				&& deeper(phrase.get(to - 3).getText(), phrase.get(to - 1).getText()));
	}

	private static boolean deeper(String full, String hole) {
		return full.length() < 4 && hole.length() < 4 && (full + hole).chars().allMatch(c -> c >= '0' && c <= '9')
				&& Integer.parseInt(hole) > Integer.parseInt(full);
	}

	/** BOHRTIEFE 20 GEWINDETIEFE 15: a depth named by a noun is the number behind it, where one stands there. */
	private static boolean depthOfTheNext(List<Token> phrase, int from, int to) {
		boolean noun = to - 1 > from && phrase.get(to - 1).getType() == CalloutParser.DEPTH
				&& DepthWords.noun(TradeWords.fold(phrase.get(to - 1).getText()));
		return noun && to < phrase.size() && (phrase.get(to).getType() == CalloutParser.NUMBER
				|| phrase.get(to).getType() == CalloutParser.EQUALS);
	}

	/** DRILL .2130 - 1/4-28: a dash between blanks parts a size from the thread behind it, whose fraction is not cut in two. */
	private static boolean fractionOfTheNext(List<Token> phrase, int from, int to) {
		boolean cut = to - 2 > from && to < phrase.size() && phrase.get(to - 1).getType() == CalloutParser.NUMBER
				&& phrase.get(to).getType() == CalloutParser.SLASH;
		return cut && phrase.get(to - 2).getType() == CalloutParser.DASH && phrase.get(to - 3).getStopIndex()
				+ 1 < phrase.get(to - 2).getStartIndex() && phrase.get(to - 2).getStopIndex() + 1 < phrase.get(to - 1).getStartIndex();
	}

	/** LEN. - 1 DIA. - 6.8: the first number is that of the length, and the diameter the one behind its sign. */
	private static boolean diameterOfTheNext(List<Token> phrase, int from, int to) {
		int mark = phrase.get(to - 1).getType() == CalloutParser.DOT ? to - 2 : to - 1;
		int sign = to < phrase.size() && phrase.get(to).getType() == CalloutParser.DOT ? to + 1 : to;
		return mark > from && phrase.get(mark).getType() == CalloutParser.DIA && sign + 1 < phrase.size()
				&& phrase.get(sign + 1).getType() == CalloutParser.NUMBER && switch (phrase.get(sign).getType()) {
					case CalloutParser.DASH, CalloutParser.EQUALS, CalloutParser.COLON -> true;
					default -> false;
				};
	}

	/** DRILL 5.0 DEEP 20: the first number is the drill's size. */
	private static boolean sizeBeforeDepth(List<Token> phrase, int to) {
		return to == 2 && phrase.get(1).getType() == CalloutParser.DEPTH && phrase.size() > 2
				&& phrase.get(2).getType() == CalloutParser.NUMBER;
	}

	private static Optional<CalloutParser.ItemContext> item(List<Token> tokens) {
		CalloutParser parser = new CalloutParser(new CommonTokenStream(new ListTokenSource(tokens)));
		parser.removeErrorListeners();
		// no two pieces are written alike, so the quick prediction is enough
		parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
		parser.setErrorHandler(new BailErrorStrategy());
		try {
			return Optional.of(parser.only().item());
		} catch (ParseCancellationException longerThanOnePiece) {
			return Optional.empty();
		}
	}
}
