package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.grammar.ProgramText;

/** Blocks become comments and blocks again; nothing else does. */
class BlocksTest {

	@Test
	void aBlockGoesIntoParenthesesAndItsOwnCommentStays() {
		assertThat(comment("G84 Z-10. F500 (M6X1)\n")).isEqualTo("(G84 Z-10. F500) (M6X1)\n");
	}

	@ParameterizedTest
	@ValueSource(strings = {"G0 X1.\n", "N10 G84 Z-10. F500 (M6X1)\n", "/G1 X2.\nG0\n", "(A) G0 X1.\n", "#1=[#2+1.]\nG1 X#1\n",
			"X1. ; LEFT SIDE\n", "G0 X1. (TO (THE) LEFT)\n"})
	void twiceIsAsBefore(String program) {
		assertThat(comment(program)).isNotEqualTo(program);
		assertThat(comment(comment(program))).isEqualTo(program);
	}

	@ParameterizedTest
	@ValueSource(strings = {"%\n", "O1000 (PART)\n", "(CLEAR OF THE CLAMP)\n", "(M6X1)\n", "(M8X1.25 TAP)\n", "(THREAD: M6X1, DEPTH 12)\n"})
	void whatIsNoBlockStays(String line) {
		assertThat(comment(line)).isEqualTo(line);
	}

	@Test
	void blockDeleteComesAndGoes() {
		assertThat(delete("G0 X1.\n(CLEAR)\nN20 Y1.\n")).isEqualTo("/G0 X1.\n(CLEAR)\n/N20 Y1.\n");
		assertThat(delete("/G0 X1.\n(CLEAR)\n/N20 Y1.\n")).isEqualTo("G0 X1.\n(CLEAR)\nN20 Y1.\n");
		assertThat(delete("/G0\nX1.\n")).as("one not marked yet").isEqualTo("/G0\n/X1.\n");
	}

	@Test
	void capitalsOutsideCommentsTextsAndNames() {
		ProgramText text = ProgramText.of("g1 x1. (drill for M6)\n#<depth>=sin[30]\nmsg(\"tool change\") ; now\n");
		assertThat(Replacement.apply(text.toString(), Blocks.upperCase(text, 0, 2).replacements()))
				.isEqualTo("G1 X1. (drill for M6)\n#<depth>=SIN[30]\nMSG(\"tool change\") ; now\n");
	}

	private static String comment(String program) {
		ProgramText text = ProgramText.of(program);
		return Replacement.apply(program, Blocks.toggleComment(text, 0, text.lineCount() - 1).replacements());
	}

	private static String delete(String program) {
		ProgramText text = ProgramText.of(program);
		return Replacement.apply(program, Blocks.toggleBlockDelete(text, 0, text.lineCount() - 1).replacements());
	}
}
