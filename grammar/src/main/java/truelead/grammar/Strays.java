package truelead.grammar;

import org.antlr.v4.runtime.Token;

/** What to say of a single sign or number that cannot stand where it does. */
final class Strays {

	private Strays() {
	}

	/** What was expected, and what to type. */
	static String message(Token token) {
		String text = token.getText();
		return switch (token.getType()) {
			case GCodeLexer.NUMBER -> text + " has no address letter; type the letter before it, or take it away";
			case GCodeLexer.MANY_POINTS -> text + " has more than one decimal point and no address letter; type one word, or take it away";
			case GCodeLexer.DOT -> "this decimal point has no digits; type the number, or take the point away";
			case GCodeLexer.RBRACK -> "this ] has no [ before it; type [ before the value, or take ] away";
			case GCodeLexer.RPAREN -> "this ) has no ( before it; type ( before the comment, or take ) away";
			case GCodeLexer.HASH -> "# has no number behind it; type the number of the variable, as in #100";
			case GCodeLexer.EQUALS -> "= has nothing before it to set; type the variable or the address letter";
			case GCodeLexer.FUNCTION, GCodeLexer.ATAN -> text + " needs its value in brackets; type it as " + text + "[...]";
			case GCodeLexer.PLUS, GCodeLexer.MINUS, GCodeLexer.STAR, GCodeLexer.POWER, GCodeLexer.MOD, GCodeLexer.SIGN_COMPARE,
					GCodeLexer.JOIN, GCodeLexer.WORD_COMPARE,
					GCodeLexer.LOGIC, GCodeLexer.NOT ->
				text + " cannot stand outside brackets here; put the whole value into [ and ]";
			default -> text + " has no meaning in a block; take it away, or put it into a comment";
		};
	}
}
