package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import truelead.checker.Samples;

/** The drill's point against a table of worked values: the tap needs two pitches below it, counted from the full diameter. */
class DrillTooShallowTest {

	@ParameterizedTest
	@CsvFileSource(resources = "/truelead/checker/rule/drill-point.csv", numLinesToSkip = 2)
	void theFullDiameterEndsWhereTheTableSays(int angle, double factor) {
		double enough = 12 + 2 + 5 * factor;
		assertThat(found(angle, enough - 0.05)).as("drilled to %s at %s degrees", enough - 0.05, angle).isTrue();
		assertThat(found(angle, enough + 0.05)).isFalse();
	}

	@Test
	void aThroughHoleHasNoBottom() {
		assertThat(Samples.findings("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G81 X0 Y0 Z-12.5 R5 F200", "G80", "T2 M6 (M6X1 TAP)", "(THREAD: M6X1, THROUGH)",
				"S500 M3", "G84 X0 Y0 Z-12 R5 F500", "G80")).noneMatch(f -> f.rule().equals("drill-too-shallow"));
	}

	private static boolean found(int angle, double depth) {
		return Samples.findings("G21 G90", "(TOOL: T1, DRILL, DIA 5, POINT " + angle + ")", "T1 M6", "S2000 M3", "G81 X0 Y0 Z-" + depth + " R5 F200", "G80",
				"T2 M6 (M6X1 TAP)", "(THREAD: M6X1, BLIND)", "S500 M3", "G84 X0 Y0 Z-12 R5 F500", "G80").stream().anyMatch(f -> f.rule().equals("drill-too-shallow"));
	}
}
