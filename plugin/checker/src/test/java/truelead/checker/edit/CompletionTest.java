package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.work.Work;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

/** What may be typed at the mark {@code |}. */
class CompletionTest {

	private static final String HEAD = "G21 G90 G94 G17\nT3 M6 (M6X1 TAP)\nG0 X0 Y0 S520 M3\nF300\n";

	@Test
	void theFeedThatFitsTheTapComesFirstThenTheOneInForce() {
		assertThat(labels(HEAD + "G84 Z-10. R2. F|\n")).startsWith("F520 — S520 × 1 for M6x1", "F300 — feed in force");
	}

	@Test
	void aWrittenFeedIsOfferedTheOneThatFits() {
		assertThat(labels(HEAD + "G84 Z-10. R2. F500|\n")).startsWith("F520 — S520 × 1 for M6x1");
	}

	@Test
	void aWordThatGoesBeforeAnotherIsPartedFromIt() {
		assertThat(texts(HEAD + "G84 |Z-10. R2.\n")).startsWith("F520 ");
		assertThat(texts(HEAD + "G84 | Z-10. R2.\n")).startsWith("F520");
	}

	@Test
	void codesComeWithTheirMeaningInTheProfile() {
		assertThat(labels(HEAD + "G8|\n")).contains("G84 — tap", "G83 — peck drill", "G80 — cycle off")
				.allMatch(label -> label.startsWith("G8"));
		assertThat(labels(HEAD + "G99 M0|")).containsExactly("M0 — stop");
		assertThat(labels(HEAD + "M3|")).contains("M30 — program end");
	}

	@Test
	void addressesTellWhatTheySayInTheCycleInForce() {
		assertThat(labels(HEAD + "G84 Z-10. R2. F520\n|\n")).contains("Z — bottom of the hole", "X — place of the hole along X");
		assertThat(labels(HEAD + "|\n")).contains("Z — where to along Z");
	}

	@Test
	void aCommentOffersNotesAndThreads() {
		assertThat(labels(HEAD + "(TH|")).contains("THREAD: — what thread is wanted at the holes of this operation");
		assertThat(texts(HEAD + "(TAP M8X1|)")).startsWith("M8X1", "M8X1.25");
		assertThat(texts(HEAD + "(TAP M8|)")).contains("M8X1.25", "M8X1").allMatch(text -> text.startsWith("M8"));
		assertThat(texts(HEAD + "(1/4-|)")).anyMatch(text -> text.startsWith("1/4-20 UNC"));
	}

	@Test
	void aNoteOffersItsItems() {
		assertThat(texts(HEAD + "(THREAD: M6X1, D|)")).containsExactly("DEPTH");
		assertThat(texts(HEAD + "(ALLOW: feed-o|)")).containsExactly("feed-off-pitch, ");
		assertThat(texts(HEAD + "(TOOL: T5, FORM|)")).containsExactly("FORM TAP");
	}

	@Test
	void aJumpOffersTheBlocksOfItsProgram() {
		assertThat(labels("O1\nN10 G0\nN20 X1.\nGOTO |\nO2\nN30\n")).containsExactly("10 — block N10", "20 — block N20");
	}

	@Test
	void theProposalReplacesWhatIsTyped() {
		String program = HEAD + "G8";
		Proposal proposal = proposals(program + "|").get(0);
		assertThat(proposal.offset()).isEqualTo(program.length() - 2);
		assertThat(proposal.length()).isEqualTo(2);
	}

	@Test
	void theLeadOfATurnedThreadIsOfferedWhereTheProgramNamesItAlone() {
		assertThat(proposals("O1 (M20X1.5 SHAFT END)\nG21 G99\nT0303\nG97 S600 M3\nG0 X24. Z6.\nG92 X19.3 Z-27. F|\nX18.16\n"
				+ "G0 X100.\nM30\n", MachineProfile.named("turning"))).extracting(Proposal::label).startsWith("F1.5 — pitch of M20x1.5");
	}

	private static List<String> labels(String program) {
		return proposals(program).stream().map(Proposal::label).toList();
	}

	private static List<String> texts(String program) {
		return proposals(program).stream().map(Proposal::text).toList();
	}

	private static List<Proposal> proposals(String program) {
		return proposals(program, MachineProfile.named("milling-metric"));
	}

	private static List<Proposal> proposals(String program, MachineProfile machine) {
		int offset = program.indexOf('|');
		ProgramText text = ProgramText.of(program.replace("|", ""));
		Work work = WorkReader.read(new ProgramFile("test.nc", text), ProgramFolder.EMPTY, Job.EMPTY, machine);
		return Completion.at(text, ProgramFolder.EMPTY, work, offset, Budget.of(machine));
	}
}
