package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** A hole that is centred here was not there before: with no drill in the program its tool was forgotten. */
class SpottedAloneTest {

	private static Finding missing(String spot, String depth) {
		return Samples.findings("O1", "G21 G90 G17", "T1 M6 (" + spot + ")", "G54 G0 X10 Y10 S2500 M3", "G43 H1 Z20",
				"G81 Z" + depth + " R2 F200", "X30", "G80", "T3 M6 (M6 TAP)", "G54 G0 X10 Y10 S500 M3", "G43 H3 Z20", "G84 Z-12 R5 F500",
				"X30", "G80", "M30").stream().filter(f -> f.rule().equals("hole-missing")).findFirst().orElseThrow();
	}

	@Test
	void aSpotNarrowerThanTheHoleMarksIt() {
		Finding finding = missing("SPOT DRILL 90 D10", "-2");

		assertThat(finding.severity()).as("4 mm wide, the hole would be 5").isEqualTo(Severity.ERROR);
		assertThat(finding.message()).endsWith("before T3 goes in, nor at its 1 other place; T1 centres it, so nothing was there before");
	}

	@Test
	void aCentreDrillGoesIntoNoHole() {
		assertThat(missing("CENTER DRILL", "-2").severity()).isEqualTo(Severity.ERROR);
	}

	@Test
	void aSpotDrillMayBreakTheEdgeOfAHoleMadeElsewhere() {
		assertThat(missing("SPOT DRILL 90 D10", "-3.3").severity()).as("6.6 mm wide").isEqualTo(Severity.INFORMATION);
		assertThat(missing("SPOT DRILL", "-2").severity()).as("nobody says its angle").isEqualTo(Severity.INFORMATION);
		assertThat(missing("COUNTERSINK 90", "-2").severity()).isEqualTo(Severity.INFORMATION);
	}

	@Test
	void aCentreDrillThatGoesAsDeepAsTheThreadMakesItsHole() {
		assertThat(missing("CENTER DRILL FORM D", "-16").severity()).as("DIN 332-2: it drills for the thread")
				.isEqualTo(Severity.INFORMATION);
	}
}
