package truelead.checker.callout;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.WritableToken;
import org.antlr.v4.runtime.misc.Interval;

/** The tokens of a comment, with the words of the trade given their types, and quotes told apart from inch marks. */
final class CalloutTokens extends CalloutLexer {
	private static final Map<Meaning, Integer> TYPES = types();

	private static final Set<String> JAPANESE_TPI = Set.of("28", "19", "14", "11");
	/** What a tool or a hole is in, and words before that: DRILL 5.0 IN SPINDLE, M4 X2 IN LINE have no inches. */
	private static final Set<String> NO_INCHES = Set.of("SPINDLE", "POCKET", "TURRET", "STATION", "CHUCK", "MAGAZINE", "CAROUSEL", "LINE",
			"ROW", "FACE", "SIDE", "FLAT", "RIM", "HUB", "FLANGE", "BODY", "BOSS", "BOTH", "EACH", "ONE", "THE", "THIS", "A", "EINER",
			"EINEM", "EINE", "DER", "DEM");

	private boolean inString;
	private int numberEnd = -1;
	private int listComma = -1;
	private int closing = -1;
	private String wordBefore = "";
	private int wordEnd = -1;

	CalloutTokens(CharStream text) {
		super(text);
		removeErrorListeners();
	}

	@Override
	public Token nextToken() {
		WritableToken token = (WritableToken) super.nextToken();
		switch (token.getType()) {
			case MARKED -> {
				token.setType(NUMBER);
				token.setText(token.getText().substring(1));
			}
			case WORD, DOTTED -> {
				partFromSize(token);
				token.setType(countOfMetric(token) || timesPitch(token) ? CalloutParser.TIMES : typeInPlace(token.getText()));
				if (TradeWords.words().meaning(token.getText()).filter(meaning -> meaning == Meaning.SILENT).isPresent()) {
					token.setChannel(HIDDEN);
				}
				wordBefore = TradeWords.fold(token.getText());
				wordEnd = token.getStopIndex() + 1;
				accent(token);
			}
			case QUOTE -> quote(token);
			case NUMBER -> partFromList(token);
			default -> {
				if (token.getStartIndex() == listComma) {
					token.setType(CalloutParser.DASH);
				} else if (bracketed(token)) {
					token.setChannel(HIDDEN);
				}
			}
		}
		if (token.getType() == NUMBER) {
			if (token.getStartIndex() == wordEnd && token.getText().startsWith(".")
					&& (DepthWords.cutShort(wordBefore) || wordBefore.equals("D") && abroad())) {
				token.setText(token.getText().substring(1));
			}
			numberEnd = token.getStopIndex() + 1;
		}
		return token;
	}

	/** M8,1.25,TAP: the comma parts the size from its pitch, which has a point of its own. */
	private void partFromList(WritableToken token) {
		int comma = token.getText().indexOf(',');
		if (comma > 0 && _input.LA(1) == '.' && wordBefore.equals("M")) {
			listComma = token.getStartIndex() + comma;
			_input.seek(listComma);
			((CommonToken) token).setStopIndex(listComma - 1);
		}
	}

	/** DEPTH [16]: signs about a number alone. */
	private boolean bracketed(WritableToken token) {
		if (token.getText().equals("[")) {
			int end = digits(1);
			end = _input.LA(end) == '.' || _input.LA(end) == ',' ? digits(end + 1) : end;
			closing = end > 1 && _input.LA(end) == ']' ? token.getStartIndex() + end : -1;
			return closing > 0;
		}
		return token.getStartIndex() == closing && closing > 0;
	}

	/**
	 * FORET D.5 has a D cut short where DRILL D.5 has half an inch: numbers without their nought are English (common practice, no source).
	 */
	private boolean abroad() {
		String text = _input.getText(Interval.of(0, _input.size() - 1));
		int start = 0;
		for (int i = 0; i <= text.length(); i++) {
			if (i == text.length() || !Character.isLetter(text.charAt(i))) {
				if (i - start > 1 && TradeWords.abroad(text.substring(start, i))) {
					return true;
				}
				start = i + 1;
			}
		}
		return false;
	}

	/** 3/8" is three eighths of an inch, but "DRILL 8.5" is a name in quotes. */
	private void quote(WritableToken token) {
		if (!inString && token.getStartIndex() == numberEnd) {
			token.setType(CalloutParser.INCH_MARK);
		} else {
			inString = !inString;
			token.setChannel(HIDDEN);
		}
	}

	/** PROFONDITA' 16: an accent written as keyboards without it have it. */
	private void accent(WritableToken token) {
		if (token.getType() == CalloutParser.DEPTH && _input.LA(1) == '\'') {
			_input.consume();
			((CommonToken) token).setStopIndex(token.getStopIndex() + 1);
			token.setText(wordBefore);
		}
	}

	/** 4XM6: behind a number the X is a sign, and the M belongs to the size. */
	private boolean countOfMetric(WritableToken token) {
		boolean count = token.getStartIndex() == numberEnd && token.getText().equalsIgnoreCase("XM") && digits(1) > 1;
		if (count) {
			_input.seek(token.getStopIndex());
			((CommonToken) token).setStopIndex(token.getStopIndex() - 1);
		}
		return count;
	}

	/** M12 XP1.5: the P belongs to the pitch. */
	private boolean timesPitch(WritableToken token) {
		boolean pitch = numberEnd >= 0 && token.getText().equalsIgnoreCase("XP") && (digits(1) > 1 || _input.LA(1) == '.');
		if (pitch) {
			_input.seek(token.getStopIndex());
			((CommonToken) token).setStopIndex(token.getStopIndex() - 1);
		}
		return pitch;
	}

	/** TAPM6: the M belongs to the size. */
	private void partFromSize(WritableToken token) {
		String word = token.getText();
		boolean size = word.length() > 2 && (word.endsWith("M") || word.endsWith("m")) && digits(1) > 1;
		if (size && TradeWords.words().meaning(word.substring(0, word.length() - 1)).filter(Meaning::threading).isPresent()) {
			_input.seek(token.getStopIndex());
			((CommonToken) token).setStopIndex(token.getStopIndex() - 1);
		}
	}

	/** PT 1/4 is a pipe thread where SPIRAL PT 1/4-20 is a point; STUB belongs to ACME, and is else a short drill; S36x6 is a saw tooth. */
	private int typeInPlace(String word) {
		String folded = TradeWords.fold(word);
		return switch (folded) {
			case "PT", "PS" -> pipeAhead() && !wordBefore.startsWith("SP") ? CalloutParser.SERIES : typeOf(word);
			case "STUB" -> wordBefore.equals("ACME") || ahead(skipped(1), "ACME") ? CalloutParser.STUB : typeOf(word);
			case "S" -> CalloutParser.S;
			case "IN" -> NO_INCHES.stream().anyMatch(place -> wordAhead(skipped(1), place)) ? WORD : typeOf(word);
			default -> typeOf(word);
		};
	}

	/** Whether a size of pipes follows, 1/4, 1 or 1 1/4, with the threads an inch of pipe threads or none. */
	private boolean pipeAhead() {
		int at = skipped(1);
		int first = digits(at);
		int end = fraction(at);
		if (end == at && first == at + 1) {
			int part = skipped(_input.LA(first) == '-' ? first + 1 : first);
			int mixed = fraction(part);
			end = mixed > part ? mixed : first;
		}
		if (end == at || Character.isLetterOrDigit(_input.LA(end)) || _input.LA(end) == '.' || _input.LA(end) == ','
				|| _input.LA(end) == '/') {
			return false;
		}
		int dash = skipped(end);
		int from = skipped(dash + 1);
		return _input.LA(dash) != '-' || JAPANESE_TPI.stream().anyMatch(tpi -> ahead(from, tpi) && digits(from) == from + tpi.length());
	}

	/** Where a fraction ends; where it would begin if there is none. */
	private int fraction(int at) {
		int slash = digits(at);
		int end = slash > at && _input.LA(slash) == '/' ? digits(slash + 1) : at;
		return end > slash + 1 ? end : at;
	}

	private int skipped(int at) {
		int next = at;
		while (_input.LA(next) == ' ') {
			next++;
		}
		return next;
	}

	private int digits(int at) {
		int next = at;
		while (_input.LA(next) >= '0' && _input.LA(next) <= '9') {
			next++;
		}
		return next;
	}

	private boolean wordAhead(int at, String word) {
		return ahead(at, word) && !Character.isLetterOrDigit(_input.LA(at + word.length()));
	}

	private boolean ahead(int at, String text) {
		for (int i = 0; i < text.length(); i++) {
			if (Character.toUpperCase(_input.LA(at + i)) != text.charAt(i)) {
				return false;
			}
		}
		return true;
	}

	private static int typeOf(String word) {
		return TradeWords.words().meaning(word).map(TYPES::get).orElse(word.codePointCount(0, word.length()) == 1
				? CalloutParser.LETTER : WORD);
	}

	private static Map<Meaning, Integer> types() {
		Map<Meaning, Integer> types = new EnumMap<>(Meaning.class);
		for (Meaning meaning : Meaning.values()) {
			types.put(meaning, CalloutParser.TYPED);
		}
		for (int type = 1; type <= CalloutParser.VOCABULARY.getMaxTokenType(); type++) {
			String name = CalloutParser.VOCABULARY.getSymbolicName(type);
			for (Meaning meaning : Meaning.values()) {
				if (meaning.name().equals(name)) {
					types.put(meaning, type);
				}
			}
		}
		return types;
	}
}
