package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.work.Work;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

/** The blocks for a callout fit into the program they are put in, and our own check finds nothing in them. */
class SequenceTest {

	private static final String HEAD = """
			G21 G17 G40 G49 G80 G90 G94
			T7 M6 (FACE MILL)
			G0 G54 X0. Y0. S800 M3
			G43 Z20. H7
			G1 Z0. F200
			X50.
			G0 Z20.
			M5
			""";

	@ParameterizedTest
	@CsvSource({"M8X1.25 DEPTH 16,cut", "M6X1 DEPTH 9,form", "M10X1.5 DEPTH 15,mill", "M8X1.25 12 DEEP THROUGH,cut"})
	void theyPassOurOwnCheck(String callout, String way) {
		List<String> blocks = Sequence.of(ProgramText.of(HEAD + "(" + callout + ")\n"), work(HEAD), way);
		assertThat(blocks).anyMatch(block -> block.startsWith("T10 M6")).noneMatch(block -> block.contains("%") || block.contains("M30"));
		CheckResult result = check(HEAD + "(" + callout + ")\n" + String.join("\n", blocks) + "\nM30\n");
		assertThat(result.operations()).isEqualTo(1);
		assertThat(result.findings()).filteredOn(finding -> finding.severity() != Severity.INFORMATION).isEmpty();
	}

	@Test
	void aLatheDrillsAndTapsOnItsCentreline() {
		String head = """
				G21 G18 G40 G80 G99
				T0202 (ROUGHING TOOL)
				G97 S800 M3
				G0 X50. Z5.
				G1 X-1. F0.2
				G0 Z50.
				""";
		MachineProfile turning = MachineProfile.named("turning");
		Work lathe = WorkReader.read(new ProgramFile("a.nc", ProgramText.of(head)), ProgramFolder.EMPTY, Job.EMPTY, turning);
		List<String> blocks = Sequence.of(ProgramText.of("(M8X1.25 DEPTH 16)\n"), lathe, "cut");
		assertThat(blocks).anyMatch(block -> block.startsWith("T0505 (SPIRAL FLUTE TAP M8X1.25)"))
				.anyMatch(block -> block.startsWith("G84 Z-19.75 F1.25"));
		ProgramFile whole = new ProgramFile("a.nc", ProgramText.of(head + "(M8X1.25 DEPTH 16)\n" + String.join("\n", blocks) + "\nM30\n"));
		CheckResult result = Checker.check(whole, ProgramFolder.EMPTY, Job.EMPTY, turning, RuleSettings.DEFAULT);
		assertThat(result.operations()).isEqualTo(1);
		assertThat(result.findings()).filteredOn(finding -> finding.severity() != Severity.INFORMATION).isEmpty();
	}

	@Test
	void anInchThreadLeavesTheProgramInItsOwnUnit() {
		assertThat(Sequence.of(ProgramText.of(HEAD + "(1/4-20 UNC DEPTH .5IN)\n"), work(HEAD), "cut")).endsWith("G21")
				.anyMatch(block -> block.startsWith("G20"));
	}

	@Test
	void withoutACalloutTheySayWhatIsMissing() {
		assertThat(Sequence.of(ProgramText.of("(DRILL THE HOLES)\n"), work(HEAD), "cut"))
				.containsExactly("(WRITE A CALLOUT SUCH AS M8X1.25 DEPTH 16 IN A COMMENT ABOVE)");
	}

	private static Work work(String program) {
		return WorkReader.read(new ProgramFile("test.nc", ProgramText.of(program)), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.named("milling-metric"));
	}

	private static CheckResult check(String program) {
		return Checker.check(new ProgramFile("test.nc", ProgramText.of(program)), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.named("milling-metric"), RuleSettings.DEFAULT);
	}
}
