package truelead.grammar;

import java.util.BitSet;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenFactory;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.misc.Pair;

/**
 * Puts a token of no width wherever a value is expected and none begins, so that the grammar needs no empty values: with them ANTLR's look
 * ahead grows without bound on lines of signs.
 */
final class Gaps implements TokenSource {

	private static final BitSet EXPECTING = set(GCodeLexer.PLUS, GCodeLexer.MINUS, GCodeLexer.STAR, GCodeLexer.SLASH, GCodeLexer.POWER,
			GCodeLexer.SIGN_COMPARE, GCodeLexer.JOIN,
			GCodeLexer.WORD_COMPARE, GCodeLexer.LOGIC, GCodeLexer.MOD, GCodeLexer.NOT, GCodeLexer.EQUALS, GCodeLexer.LBRACK,
			GCodeLexer.LPAREN, GCodeLexer.COMMA, GCodeLexer.IF,
			GCodeLexer.WHILE, GCodeLexer.GOTO, GCodeLexer.DO, GCodeLexer.FOR, GCodeLexer.TO, GCodeLexer.ELSEIF, GCodeLexer.UNTIL,
			GCodeLexer.CASE,
			GCodeLexer.DEF);
	private static final BitSet VALUES = set(GCodeLexer.NUMBER, GCodeLexer.MANY_POINTS, GCodeLexer.EXPONENT, GCodeLexer.VARIABLE_NAME,
			GCodeLexer.HASH, GCodeLexer.LBRACK, GCodeLexer.LPAREN, GCodeLexer.ATAN, GCodeLexer.FUNCTION, GCodeLexer.STRING, GCodeLexer.NAME,
			GCodeLexer.LETTER, GCodeLexer.PLUS, GCodeLexer.MINUS, GCodeLexer.NOT, GCodeLexer.JOIN);

	private final Lexer lexer;
	private Token before;
	private Token held;

	Gaps(Lexer lexer) {
		this.lexer = lexer;
	}

	static BitSet set(int... types) {
		BitSet set = new BitSet();
		for (int type : types) {
			set.set(type);
		}
		return set;
	}

	@Override
	public Token nextToken() {
		Token next = held != null ? held : lexer.nextToken();
		held = null;
		boolean gap = before != null && EXPECTING.get(before.getType()) && (next.getType() < 0 || !VALUES.get(next.getType()));
		if (gap) {
			held = next;
			int at = before.getStopIndex() + 1;
			next = new CommonToken(new Pair<>(this, lexer.getInputStream()), GCodeParser.MISSING, Token.DEFAULT_CHANNEL, at, at - 1);
		}
		before = next;
		return next;
	}

	@Override
	public int getLine() {
		return lexer.getLine();
	}

	@Override
	public int getCharPositionInLine() {
		return lexer.getCharPositionInLine();
	}

	@Override
	public CharStream getInputStream() {
		return lexer.getInputStream();
	}

	@Override
	public String getSourceName() {
		return lexer.getSourceName();
	}

	@Override
	public void setTokenFactory(TokenFactory<?> factory) {
		lexer.setTokenFactory(factory);
	}

	@Override
	public TokenFactory<?> getTokenFactory() {
		return lexer.getTokenFactory();
	}
}
