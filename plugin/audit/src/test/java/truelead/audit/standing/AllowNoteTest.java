package truelead.audit.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/** A finding is accepted by a note that goes into the program by itself. */
class AllowNoteTest {

	/** M6 at F500 in the first operation, M8 at F600 in the second. */
	private static final String TWO_FEEDS_OFF = """
			%
			O0700 (COVER)
			G17 G21 G40 G49 G80 G90 G94
			T1 M6 (DRILL 5.0)
			G0 G54 X10. Y10. S3200 M3
			G43 Z25. H1
			G99 G81 Z-22. R2. F320
			G80
			T2 M6 (DRILL 6.8)
			G0 X40. Y10. S2400 M3
			G43 Z25. H2
			G99 G81 Z-25. R2. F260
			G80
			T3 M6 (M6X1 TAP)
			G0 X10. Y10. S520 M3
			G43 Z25. H3
			G99 G84 Z-14.5 R5. F500
			G80
			T4 M6 (M8X1.25 TAP)
			G0 X40. Y10. S400 M3
			G43 Z25. H4
			G99 G84 Z-16. R5. F600
			G80
			M30
			%
			""";

	@Test
	void theNoteStandsBeforeTheCycleAndAcceptsThereAlone() {
		AllowNote note = noteFor(TWO_FEEDS_OFF, 0, "floating holder, 3 mm").orElseThrow();
		assertThat(note.text()).isEqualTo("(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER, 3 MM)");
		String after = note.in(ProgramText.of(TWO_FEEDS_OFF)).toString();
		assertThat(after).contains("H3\n(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER, 3 MM)\nG99 G84 Z-14.5");
		assertThat(feeds(check(ProgramText.of(after))).map(finding -> finding.accepted().isPresent())).containsExactly(true, false);
	}

	@Test
	void theLineEndIsTheProgramsOwn() {
		String program = TWO_FEEDS_OFF.replace("\n", "\r\n");
		String after = noteFor(program, 1, "ok").orElseThrow().in(ProgramText.of(program)).toString();
		assertThat(after).contains("H4\r\n(ALLOW: FEED-OFF-PITCH, OK)\r\nG99 G84 Z-16.");
		assertThat(after.replace("\r\n", "")).doesNotContain("\n", "\r");
	}

	@Test
	void aReasonCannotCloseTheCommentOrStartABlock() {
		AllowNote note = noteFor(TWO_FEEDS_OFF, 0, "Gewindetiefe größer) G0 Z-50.\nM3 (é").orElseThrow();
		assertThat(note.text()).isEqualTo("(ALLOW: FEED-OFF-PITCH, GEWINDETIEFE GROSSER G0 Z-50. M3 E)");
	}

	@Test
	void withoutAWordThatCanStandInACommentThereIsNoNote() {
		assertThat(noteFor(TWO_FEEDS_OFF, 0, " () \n")).isEmpty();
	}

	@Test
	void whereRemarksStandBehindSemicolonsTheNoteDoesToo() {
		String program = TWO_FEEDS_OFF.replaceAll("\\(([^)]*)\\)", "; $1");
		assertThat(noteFor(program, 0, "ok").orElseThrow().text()).isEqualTo("; ALLOW: FEED-OFF-PITCH, OK");
	}

	private static Optional<AllowNote> noteFor(String text, int which, String reason) {
		ProgramText program = ProgramText.of(text);
		CheckResult before = check(program);
		Finding finding = feeds(before).toList().get(which);
		return AllowNote.of(file(program), before, finding, reason, AllowNoteTest::check);
	}

	private static java.util.stream.Stream<Finding> feeds(CheckResult result) {
		return result.findings().stream().filter(finding -> finding.rule().equals("feed-off-pitch"));
	}

	private static CheckResult check(ProgramText text) {
		return Checker.check(file(text), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(), RuleSettings.DEFAULT);
	}

	private static ProgramFile file(ProgramText text) {
		return new ProgramFile("cover.nc", text);
	}
}
