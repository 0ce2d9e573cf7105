package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;

/** Parallel holes for taper taps, held to ASME B1.20.1 and ISO 7-1; the drills that are right are those of common charts (from memory). */
class TaperHoleTest {

	private static List<String> said(String unit, String drill, String thread) {
		return Samples.findings("O1", unit + " G90", "T1 M6 (" + drill + ")", "S900 M3", "G81 X0 Y0 Z-40 R3 F90", "G80", "T2 M6 (" + thread
				+ " TAP)", "S100 M3", "G84 X0 Y0 Z-16 R5 F" + (unit.equals("G20") ? "5.556" : "133.7"), "G80", "M30").stream()
				.filter(f -> f.rule().startsWith("drill-too-")).map(f -> f.rule() + " " + f.severity().name().toLowerCase(Locale.ROOT))
				.toList();
	}

	@ParameterizedTest
	@CsvSource({"G20, DRILL Q, 1/8-27 NPT", "G20, DRILL R, 1/8-27 NPT", "G20, 11/32 DRILL, 1/8-27 NPT", "G20, 7/16 DRILL, 1/4-18 NPT",
			"G20, 37/64 DRILL, 3/8-18 NPT", "G20, 45/64 DRILL, 1/2-14 NPT", "G20, 23/32 DRILL, 1/2-14 NPT", "G20, 59/64 DRILL, 3/4-14 NPT",
			"G20, 1-5/32 DRILL, 1-11.5 NPT", "G20, 1-1/2 DRILL, 1-1/4-11.5 NPT", "G20, 2-7/32 DRILL, 2-11.5 NPT", "G21, DRILL 8.4, RC 1/8",
			"G21, DRILL 11.2, RC 1/4", "G21, DRILL 11.8, RC 1/4", "G21, DRILL 18.5, RC 1/2", "G20, 7/16 DRILL, 1/4-18 NPTF"})
	void theDrillsOfTheChartsAreRight(String unit, String drill, String thread) {
		assertThat(said(unit, drill, thread)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"G20, 3/8 DRILL, 1/4-18 NPT, drill-too-small error", "G20, 27/64 DRILL, 1/4-18 NPT, ",
			"G20, 13/32 DRILL, 1/4-18 NPT, drill-too-small error", "G20, 1/2 DRILL, 1/4-18 NPT, drill-too-big error",
			"G20, 31/64 DRILL, 1/4-18 NPT, drill-too-big warning", "G21, DRILL 10, RC 1/4, drill-too-small error",
			"G21, DRILL 12.5, RC 1/4, drill-too-big error"})
	void aDrillBesideThemIsNot(String unit, String drill, String thread, String finding) {
		assertThat(said(unit, drill, thread)).isEqualTo(finding == null ? List.of() : List.of(finding));
	}

	@Test
	void theMessageNamesTheDiametersAndTheDrill() {
		List<Finding> found = Samples.findings("O1", "G20 G90", "T1 M6 (1/2 DRILL)", "S900 M3", "G81 X0 Y0 Z-1. R.1 F9.", "G80",
				"T2 M6 (1/4-18 NPT TAP)", "S100 M3", "G84 X0 Y0 Z-.7 R.2 F5.556", "G80", "M30");
		assertThat(found).filteredOn(f -> f.rule().equals("drill-too-big")).singleElement()
				.satisfies(f -> assertThat(f.message())
						.isEqualTo("the hole is drilled 0.5 in, the minor diameter of 1/4-18 NPT at the gauge plane is 0.4472 in: 0.0528 "
								+ "in too big, 41 % of thread left there, and the joint leaks; drill 7/16 (0.4375)"));
	}

	@Test
	void aReamedHoleMayBeACone() {
		List<Finding> found = Samples.findings("O1", "G20 G90", "T1 M6 (13/32 DRILL)", "S900 M3", "G81 X0 Y0 Z-1. R.1 F9.", "G80",
				"T3 M6 (TAPER REAMER)", "G85 X0 Y0 Z-.7 R.1 F5.", "G80", "T2 M6 (1/4-18 NPT TAP)", "S100 M3", "G84 X0 Y0 Z-.7 R.2 F5.556",
				"G80", "M30");
		assertThat(found).extracting(Finding::rule).doesNotContain("drill-too-small");
	}
}
