package truelead.grammar;

import java.util.BitSet;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.Token;

/** Tells a comment in parentheses from the arguments of a call, and finds where a comment ends. */
final class Parentheses {

	/** Tokens behind which values may stand in parentheses. */
	static final BitSet OPENS_VALUES = Gaps.set(GCodeLexer.EQUALS, GCodeLexer.IF, GCodeLexer.WHILE, GCodeLexer.ELSEIF, GCodeLexer.UNTIL,
			GCodeLexer.CASE);

	private Parentheses() {
	}

	/**
	 * Whether the parenthesis just read opens a value: right behind a name ({@code MSG(}), or behind an equals sign or an operator once an
	 * equals sign or a word such as IF has been read ({@code R1=(R2+1)*2}). Everywhere else it opens a comment.
	 */
	static boolean openValue(CharStream line, Token before, boolean assigned) {
		if (before == null) {
			return false;
		}
		boolean adjacent = before.getStopIndex() + 2 == line.index();
		return switch (before.getType()) {
			case GCodeLexer.NAME -> adjacent ? !Damage.looksLikeWord(before.getText()) : line.LA(1) == '"';
			case GCodeLexer.FUNCTION, GCodeLexer.ATAN -> adjacent;
			case GCodeLexer.EQUALS, GCodeLexer.IF, GCodeLexer.WHILE, GCodeLexer.ELSEIF, GCodeLexer.UNTIL, GCodeLexer.CASE -> true;
			case GCodeLexer.TO, GCodeLexer.PLUS, GCodeLexer.MINUS, GCodeLexer.STAR, GCodeLexer.SLASH, GCodeLexer.SIGN_COMPARE,
					GCodeLexer.JOIN, GCodeLexer.WORD_COMPARE, GCodeLexer.LOGIC,
					GCodeLexer.NOT, GCodeLexer.MOD, GCodeLexer.POWER -> assigned;
			default -> false;
		};
	}

	/**
	 * The end of the comment that opens at {@code start}: behind the parenthesis that matches it. Where none does, behind the last closing
	 * one if words of code follow it ({@code (TAP (M8) G84 Z-10.}), else the end of the line.
	 */
	static int commentEnd(CharStream line, int start) {
		int depth = 1;
		int lastClose = -1;
		int at = start + 1;
		for (;; at++) {
			int c = line.LA(at - line.index() + 1);
			if (c == IntStream.EOF || c == '\n' || c == '\r') {
				break;
			} else if (c == '(') {
				depth++;
			} else if (c == ')') {
				lastClose = at;
				if (--depth == 0) {
					return at + 1;
				}
			}
		}
		return lastClose >= 0 && wordFollows(line, lastClose + 1) ? lastClose + 1 : at;
	}

	private static boolean wordFollows(CharStream line, int from) {
		int at = from - line.index() + 1;
		while (line.LA(at) == ' ' || line.LA(at) == '\t') {
			at++;
		}
		int letter = line.LA(at) & ~0x20;
		int next = line.LA(at + 1);
		return letter >= 'A' && letter <= 'Z' && (next >= '0' && next <= '9' || next == '-' || next == '.' || next == '#' || next == '[');
	}
}
