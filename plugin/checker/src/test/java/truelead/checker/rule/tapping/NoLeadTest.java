package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** Taps in programs without a comment: what no thread can be is said all the same. */
class NoLeadTest {

	private static List<Finding> loud(String feed) {
		return Samples.findings("G21 G17 G90 G94", "T3 M6", "G54 G0 X10. Y10. S500 M3", "G43 H3 Z10.", "G84 G98 Z-16. R5. " + feed, "G80",
				"M30").stream().filter(f -> f.severity() != Severity.INFORMATION).toList();
	}

	@Test
	void aFeedThatCanBeAThreadsIsNotJudged() {
		assertThat(loud("F625.")).isEmpty();
		assertThat(loud("F500.")).isEmpty();
		assertThat(loud("F100.")).as("0.2 mm").isEmpty();
	}

	@Test
	void inchesAMinuteInAMetricProgram() {
		assertThat(loud("F24.6")).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("inch-metric-mixup");
			assertThat(f.message()).isEqualTo("F24.6 at S500 advances 0.049 mm a turn, the lead of no thread; 25.4 times as much is 1.250: "
					+ "the value is in inches");
		});
	}

	@Test
	void aPitchReadPerMinuteAndAFeedReadPerTurn() {
		assertThat(loud("F1.25")).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("feed-in-wrong-mode");
			assertThat(f.message()).isEqualTo("F1.25 at S500 is read per minute and advances 0.003 mm a turn, the lead of no thread; per "
					+ "revolution it is 1.250: the word for feed per revolution");
		});
		assertThat(loud("G95 F625.")).extracting(Finding::rule).contains("feed-in-wrong-mode");
	}

	/** One cycle taps at two levels: the R plane of the lower says nothing of the upper holes' tops. */
	@Test
	void holesAtTwoLevelsAreNotReadInInches() {
		assertThat(Samples.findings("G21 G17 G90 G94", "T2 M6 (DRILL 3.3)", "G54 G0 X0 Y0 S3800 M3", "G43 H2 Z60.",
				"G98 G83 X10. Y0 Z-10.5 R2. Q3. F77.", "X40. Z-22.5 R-10.", "G80", "T3 M6 (TAP M4X0.7)", "G0 X0 Y0 S800 M3", "G43 H3 Z60.",
				"G98 G84 X10. Y0 Z-7. R5. F560.", "X40. Z-19. R-7.", "G80", "M30"))
				.allSatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.INFORMATION));
	}
}
