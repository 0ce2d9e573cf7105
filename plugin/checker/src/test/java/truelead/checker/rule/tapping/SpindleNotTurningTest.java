package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/** Taps that nothing starts, on a machine of which nobody says whether the cycle does. */
class SpindleNotTurningTest {

	private static List<Severity> stopped(String first, String second) {
		return Samples.findings("G21 G90", "T1 M6 (M6 TAP)", first, "G0 X0 Y0 Z5", "G84 Z-12 R5 F500", "G80", "T2 M6 (M8 TAP)", second,
				"G0 X30 Y0 Z5", "G84 Z-16 R5 F625", "G80", "M30").stream().filter(f -> f.rule().equals("spindle-not-turning"))
				.map(f -> f.severity()).toList();
	}

	@Test
	void whereEveryTapIsProgrammedSoTheCycleStartsThem() {
		assertThat(stopped("S500", "S500")).containsOnly(Severity.INFORMATION);
	}

	@Test
	void whereOneIsStartedTheOtherWasForgotten() {
		assertThat(stopped("S500 M3", "S500")).containsExactly(Severity.WARNING);
	}

	@Test
	void aCodeThatIsSynchronisedByItselfStartsTheSpindle() {
		assertThat(Samples.findings("G21 G90", "T1 M6 (M6 LH TAP)", "G0 X0 Y0 Z5", "G84.3 Z-12 R5 F500 S500", "G80", "M30"))
				.noneMatch(f -> f.rule().equals("spindle-not-turning"));
	}
}
