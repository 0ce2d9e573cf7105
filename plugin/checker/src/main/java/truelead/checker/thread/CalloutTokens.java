package truelead.checker.thread;

import java.util.EnumMap;
import java.util.Map;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.WritableToken;

/** The tokens of a comment, with the words of the trade given their types, and quotes told apart from inch marks. */
final class CalloutTokens extends CalloutLexer {
	private static final Map<Meaning, Integer> TYPES = types();

	private boolean inString;
	private int numberEnd = -1;

	CalloutTokens(CharStream text) {
		super(text);
		removeErrorListeners();
	}

	@Override
	public Token nextToken() {
		WritableToken token = (WritableToken) super.nextToken();
		switch (token.getType()) {
			case WORD, HAND_DOTTED -> token.setType(typeOf(token.getText()));
			case QUOTE -> quote(token);
			default -> { }
		}
		if (token.getType() == NUMBER) {
			numberEnd = token.getStopIndex() + 1;
		}
		return token;
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

	private static int typeOf(String word) {
		return TradeWords.words().meaning(word).map(TYPES::get).orElse(word.codePointCount(0, word.length()) == 1 ? CalloutParser.LETTER : WORD);
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
