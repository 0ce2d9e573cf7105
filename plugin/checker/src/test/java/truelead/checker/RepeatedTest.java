package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/**
 * One thing written thousands of times is followed to its end, at a cost for each that does not grow with their number: where it does,
 * these tests take minutes.
 */
class RepeatedTest {

	private static final int MANY = 5_000;
	private static final String HEAD = "O1\nG21 G90 G17 G54\n";
	private static final String DRILL = "T2 M6 (DRILL 5.0)\nS2000 M3\nG43 H2 Z20.\n";
	private static final String TAP = "T3 M6 (M6X1 TAP)\nS500 M3\nG43 H3 Z20.\n";

	private static CheckResult check(String head, IntFunction<String> one, String tail) {
		StringBuilder text = new StringBuilder(head);
		for (int i = 0; i < MANY; i++) {
			text.append(one.apply(i)).append('\n');
		}
		return Checker.check(new ProgramFile("A.NC", ProgramText.of(text.append(tail).toString())), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.generic(), RuleSettings.DEFAULT);
	}

	private static String grid(int i) {
		return String.format(Locale.ROOT, "X%d. Y%d.", i % 100 * 12, i / 100 * 12);
	}

	@Test
	void tapsThatAreOneGroup() {
		assertThat(check(HEAD + TAP, i -> "G84 " + grid(i) + " Z-10. R4. F500.\nG80\nG0 Z50.", "M30\n").operations()).isEqualTo(MANY);
	}

	@Test
	void loopsThatAreNeverClosed() {
		assertThat(check(HEAD, i -> "WHILE[#1 LT 2]DO1", "M30\n").operations()).isZero();
	}

	@Test
	void loopsThatAreNotKnown() {
		assertThat(check(HEAD, i -> "WHILE[#500 LT 2]DO1\nG1 X#1 F100.\nEND1", "M30\n").operations()).isZero();
	}

	@Test
	void branchesOneInsideTheOther() {
		assertThat(check(HEAD, i -> "IF R1==1", "ENDIF\n".repeat(MANY) + "M30\n").operations()).isZero();
	}

	@Test
	void holesRoundARotaryAxis() {
		CheckResult result = check(HEAD + TAP, i -> String.format(Locale.ROOT, "C%.3f\nG84 X0 Y0 Z-10. R4. F500.\nG80", i * 0.03), "M30\n");
		assertThat(result.work().holes()).hasSize(MANY);
	}

	@Test
	void jumpsBackThatAreNotKnown() {
		assertThat(check("(A)\n".repeat(1_500) + "N7\n" + HEAD, i -> "IF[#500 EQ " + i + "]GOTO7", "M30\n").operations()).isZero();
	}

	@Test
	void notesAtEachOperation() {
		CheckResult result = check(HEAD + TAP, i -> String.format(Locale.ROOT, "(SURFACE: Z%d)\nG84 ", i % 20) + grid(i)
				+ " Z-10. R4. F500.\nG80", "M30\n");
		assertThat(result.work().operations().get(MANY - 1).wanted().surface().value()).isEqualTo((MANY - 1) % 20);
	}

	@Test
	void calloutsAtEachOperation() {
		CheckResult result = check(HEAD + TAP, i -> String.format(Locale.ROOT, "(M%d TAP, 4X)\nG84 ", i % 20 + 3) + grid(i)
				+ " Z-10. R4. F500.\nG80", "M30\n");
		assertThat(result.operations()).isEqualTo(MANY);
	}

	@Test
	void holesLeftOutWithinReachOfEachOther() {
		StringBuilder threaded = new StringBuilder("G80\nT4 M6 (M64X6 TAP)\nS100 M3\nG84 X0 Y0 Z-60. R12. F600.\n");
		for (int i = 1; i < MANY / 2; i++) {
			threaded.append(String.format(Locale.ROOT, "X%d. Y%d.%n", i * 2 % 100, i * 2 / 100));
		}
		CheckResult result = check(HEAD + "T2 M6 (DRILL 58)\nS100 M3\nG81 X0 Y0 Z-80. R2. F60.\n",
				i -> String.format(Locale.ROOT, "X%d. Y%d.", i % 100, i / 100), threaded + "G80\nM30\n");
		assertThat(result.work().unthreaded()).hasSize(MANY / 2);
	}

	@Test
	void acceptancesAtTheHeadForAsManyFindings() {
		StringBuilder taps = new StringBuilder(TAP);
		for (int i = 0; i < MANY; i++) {
			taps.append("G84 ").append(grid(i)).append(" Z-10. R4. F").append(700 + i).append(".\n");
		}
		CheckResult result = check("O1\n", i -> "(ALLOW: feed-off-pitch, REASON " + i + ")", "G21 G90\n" + DRILL + taps + "G80\nM30\n");
		assertThat(result.findings()).filteredOn(finding -> finding.rule().equals("feed-off-pitch")).isNotEmpty()
				.allMatch(finding -> finding.accepted().isPresent());
	}
}
