package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;
import org.junit.jupiter.api.Test;

/**
 * A question that a lexer rule asks before its first sign is asked at every token, and the lexer keeps nothing: each character is then
 * looked up anew.
 */
class LexerCacheTest {

	@Test
	void theLexerKeepsWhatItHasLearnt() {
		GCodeLexer lexer = new GCodeLexer(CharStreams.fromString("N10 G1 X10.5 Y-2.25 Z-3. F100 (A)"));
		while (lexer.nextToken().getType() != Token.EOF) {
			// learns
		}
		assertThat(lexer.getInterpreter().decisionToDFA[Lexer.DEFAULT_MODE].s0).as("the state before a token").isNotNull();
	}
}
