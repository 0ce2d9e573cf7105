package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/**
 * Drills for threads that stand in few charts; limits by the formulas of ISO 965-1, ASME B1.1 and DIN 103, those for wire inserts from
 * memory (DIN 8140-2, ASME B18.29.1).
 */
class OddThreadDrillTest {

	/**
	 * Thread, turns an inch or pitch, drill, what is said: largest minor diameters 16.375 (Tr20x4), 6.45 (M6 for inserts), 1.0003 in (1
	 * 1/16-12).
	 */
	@ParameterizedTest
	@CsvSource({"G21, TR20X4, 4, 16.25, ", "G21, TR20X4, 4, 16.55, WARNING drill-too-big", "G21, M6 STI, 1, 6.3, ",
			"G21, M6 STI, 1, 6.5, WARNING drill-too-big", "G21, M6 STI, 1, 6.8, ERROR drill-too-big",
			"G21, M6 STI, 1, 6.0, ERROR drill-too-small", "G20, 1 1/16-12 UN, .08333, .9844, ",
			"G20, 1 1/16-12 UN, .08333, 1.0156, ERROR drill-too-big", "G20, 1 1/16-12 UN, .08333, .9531, ERROR drill-too-small",
			"G21, M36X1, 1, 35, ", "G21, M36X1, 1, 35.5, ERROR drill-too-big", "G21, G1 3/4, 2.309, 51, ",
			"G21, G1 3/4, 2.309, 52, ERROR drill-too-big", "G20, 6-48, .02083, .1160, ", "G20, 6-48, .02083, .1250, ERROR drill-too-big"})
	void oneDrillBesideTheRightOne(String unit, String thread, String pitch, String drill, String said) {
		String depths = unit.equals("G20") ? "Z-2.5 R.3 Q.5 F5" : "Z-60 R9 Q5 F100";
		String tapped = unit.equals("G20") ? "Z-1. R.4" : "Z-24 R15";
		assertThat(Samples.findings(unit + " G17 G90 G94", "T1 M6 (DRILL " + drill + ")", "G54 G0 X0 Y0 S600 M3", "G43 H1 Z50",
				"G83 " + depths, "G80", "T2 M6 (" + thread + " TAP)", "G0 X0 Y0 S60 M3", "G43 H2 Z50", "G95 G84 " + tapped
				+ " F" + pitch, "G80 G94", "M30")).filteredOn(f -> f.severity() != Severity.INFORMATION)
				.extracting(f -> f.severity() + " " + f.rule()).containsExactly(said == null ? new String[0] : new String[] {said});
	}

	/** A drill fed by hand written moves drills as in a cycle: 6.0 and 6.8 are no holes for an M6 insert, 6.3 is. */
	@ParameterizedTest
	@CsvSource({"6.3, ", "6.0, ERROR drill-too-small", "6.8, ERROR drill-too-big"})
	void drilledByMovesForAnInsert(String drill, String said) {
		assertThat(Samples.findings("G21 G17 G90 G94", "T1 M6 (DRILL " + drill + ")", "G54 G0 X0 Y0 S600 M3", "G43 H1 Z50", "Z3",
				"G1 Z-30 F60", "G0 Z50", "T2 M6 (M6 STI TAP)", "G0 X0 Y0 S60 M3", "G43 H2 Z50", "G84 Z-15 R5 F60", "G80", "M30"))
				.filteredOn(f -> f.severity() != Severity.INFORMATION).extracting(f -> f.severity() + " " + f.rule())
				.containsExactly(said == null ? new String[0] : new String[] {said});
	}
}
