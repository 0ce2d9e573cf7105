package truelead.audit.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/** What changes the mark of a finding and what does not, on findings that the rules make. */
class FingerprintTest {

	/** An M10 hole drilled 9 mm: a finding on the whole tapping block. */
	private static final String FLANGE = """
			%
			O0610 (FLANGE)
			N10 T1 M6 (DRILL 9.0)
			N20 G21 G90 G94 G54 G0 X10. Y10. S900 M3
			N30 G43 Z20. H1
			N40 G81 Z-24. R2. F120
			N50 G80
			N60 T2 M6 (TAP M10X1.5)
			N70 G0 X10. Y10. S400 M3
			N80 G43 Z20. H2
			N90 G99 G84 X10. Y10. Z-15. R6. F600
			N100 G80
			N110 M30
			%
			""";

	@Test
	void anotherWordInTheBlockDoesNotMakeItANewFinding() {
		assertThat(marks(FLANGE.replace("R6.", "R7."))).isEqualTo(marks(FLANGE)).hasSize(1);
		assertThat(marks(FLANGE.replace("N90 G99", "N95"))).isEqualTo(marks(FLANGE));
	}

	@Test
	void anotherNumberMakesItANewFinding() {
		assertThat(marks(FLANGE.replace("9.0", "9.2"))).doesNotContainAnyElementsOf(marks(FLANGE)).hasSize(1);
	}

	@Test
	void anotherPlaceMakesItANewFinding() {
		assertThat(marks(FLANGE.replace("X10.", "X12."))).doesNotContainAnyElementsOf(marks(FLANGE)).hasSize(1);
	}

	@Test
	void anotherToolMakesItANewFinding() {
		assertThat(marks(FLANGE.replace("T2", "T7").replace("H2", "H7"))).doesNotContainAnyElementsOf(marks(FLANGE)).hasSize(1);
	}

	private static List<String> marks(String program) {
		CheckResult result = Checker.check(new ProgramFile("flange.nc", ProgramText.of(program)), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.generic(), RuleSettings.DEFAULT);
		List<String> marks = new ArrayList<>();
		for (Judged judged : Judged.all(result.findings())) {
			if (judged.finding().rule().equals("drill-too-big")) {
				marks.add(judged.fingerprint());
			}
		}
		return marks;
	}
}
