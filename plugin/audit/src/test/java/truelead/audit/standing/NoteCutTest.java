package truelead.audit.standing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.job.Allowance;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** A note that accepts a finding is taken back, and nothing else with it. */
class NoteCutTest {

	private static String without(String program, int line) {
		ProgramText text = ProgramText.of(program);
		int at = text.line(line).indexOf("hole-missing");
		Allowance note = new Allowance("hole-missing", "CAST", new Location(new ProgramFile("a.nc", text), line, new Span(at, at + 12)));
		return NoteCut.of(text, note).map(cut -> program.substring(0, cut.offset()) + program.substring(cut.offset() + cut.length()))
				.orElse("not there");
	}

	@Test
	void aLineThatIsTheNoteAloneGoesWhole() {
		assertThat(without("G0 X1.\r\n(ALLOW: hole-missing, CAST)\r\nM30\r\n", 1)).isEqualTo("G0 X1.\r\nM30\r\n");
		assertThat(without("M30\n; ALLOW: hole-missing, CAST", 1)).isEqualTo("M30\n");
	}

	@Test
	void behindWordsOnlyTheCommentGoes() {
		assertThat(without("N10 G84 Z-5. (ALLOW: hole-missing, CAST) F500\n", 0)).isEqualTo("N10 G84 Z-5.  F500\n");
	}

	@Test
	void whereTheNoteIsGoneNothingIsCut() {
		ProgramText text = ProgramText.of("M30\n");
		Location gone = new Location(new ProgramFile("a.nc", text), 7, new Span(8, 20));
		assertThat(NoteCut.of(text, new Allowance("hole-missing", "CAST", gone))).isEmpty();
	}
}
