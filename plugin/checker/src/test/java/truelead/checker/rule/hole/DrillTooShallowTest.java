package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

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
		assertThat(Samples.findings("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G81 X0 Y0 Z-12.5 R5 F200", "G80", "T2 M6 (M6X1 TAP)",
				"(THREAD: M6X1, THROUGH)", "S500 M3", "G84 X0 Y0 Z-12 R5 F500", "G80"))
				.noneMatch(f -> f.rule().equals("drill-too-shallow"));
	}

	@Test
	void aHoleDrilledThroughThePlateOfTheTitleHasNone() {
		assertThat(plate("(PLATE .75 IN. THICK)", "-.95")).as("full diameter down to .823").isFalse();
		assertThat(plate("(BRACKET, THICKNESS .75)", "-.95")).isFalse();
		assertThat(plate("(PLATE .75 THICK)", "-.85")).as("full diameter down to .723").isTrue();
		assertThat(plate("(PLATE)", "-.95")).isTrue();
	}

	private static boolean plate(String title, String drilled) {
		return Samples.findings(title, "G20 G90 G17", "T1 M6 (27/64 DRILL)", "S600 M3", "G81 X3. Y3. Z" + drilled + " R.1 F6.", "G80",
				"T2 M6 (1/2-13 TAP)", "S130 M3", "G84 X3. Y3. Z-.95 R.25 F10.", "G80").stream()
				.anyMatch(f -> f.rule().equals("drill-too-shallow"));
	}

	/** Many shops leave between one and two pitches, and their programs run. */
	@Test
	void roomForOneToTwoPitchesIsWorthAWord() {
		assertThat(tapped("COVER", "M8 TAP", "M5", "-10")).as("1.96 mm, 1.6 pitches").singleElement()
				.satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.INFORMATION));
		assertThat(tapped("COVER", "M8 TAP", "M5", "-11")).as("0.96 mm").singleElement().satisfies(finding -> assertThat(finding.severity())
				.isEqualTo(Severity.WARNING));
	}

	@Test
	void aDepthThatNobodyTapsIsTheSlip() {
		assertThat(tapped("COVER", "M8 TAP", "M5", "-100")).singleElement().satisfies(finding -> {
			assertThat(finding.message()).endsWith("and the tap breaks; see the depth of the tap");
			assertThat(finding.fixes()).as("no drill that goes as deep").isEmpty();
		});
	}

	@Test
	void throughAsSaidOfTheDrill() {
		String tap = "G84 Z-16.5 R5 F500";
		assertThat(Samples.findings("G21 G90", "T1 M6 (6.8 DRILL THRU)", "S1400 M3", "G0 X0 Y0 Z5", "G81 Z-17 R3 F200", "G80",
				"T2 M6 (M8 TAP)", "S400 M3", "G0 X0 Y0 Z5", tap, "G80", "M30")).noneMatch(f -> f.rule().equals("drill-too-shallow"));
	}

	@Test
	void chipsFallIntoAPilotThatGoesDeeper() {
		assertThat(bored("Z-60", "Z-40", "Z-38")).as("2 mm below the tap, and 20 mm of pilot").isEmpty();
		assertThat(bored("Z-44", "Z-40", "Z-38")).hasSize(1);
		assertThat(bored("Z-60", "Z-36", "Z-38")).singleElement().asString()
				.contains("its end meets the end of the full diameter at 36 mm and the tap breaks");
	}

	private static List<Finding> tapped(String title, String tap, String more, String depth) {
		return Samples.findings("(" + title + ")", "G21 G90", "T1 M6 (DRILL 6.8)", "S1400 M3", "G0 X0 Y0 Z5", "G81 Z-14 R3 F200", "G80",
				more, "T2 M6 (" + tap + ")", "S400 M3", "G0 X0 Y0 Z5", "G84 Z" + depth + " R5 F500", "G80", "M30").stream()
				.filter(f -> f.rule().equals("drill-too-shallow")).toList();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			COVER           | M8 SPIRAL POINT TAP | M5                                       | a spiral point
			COVER           | M8 TAP              | T4 M6 (12 DRILL)~G81 X50 Z-15.562 R3~G80 | holes of another diameter end at the same full depth
			""")
	void aHoleThatMayGoThrough(String title, String tap, String more, String why) {
		assertThat(tapped(title, tap, more.replace("~", "\n"), "-16")).singleElement().satisfies(finding -> {
			assertThat(finding.severity()).isEqualTo(Severity.INFORMATION);
			assertThat(finding.message()).contains("it is taken to go through, for ").contains(why);
		});
	}

	@Test
	void aPlateInTheTitleIsAWall() {
		assertThat(tapped("10MM PLATE", "M8 TAP", "M5", "-16")).isEmpty();
		assertThat(tapped("BASE PLATE 10.5", "M8 TAP", "M5", "-16")).isEmpty();
		assertThat(tapped("COVER, THK: 11", "M8 TAP", "M5", "-16")).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			COVER               | M8 TAP                     | M5                                     | -16
			15MM PLATE          | M8 TAP                     | M5                                     | -16
			10MM PLATE          | M8 TAP                     | M5                                     | -26
			10MM PLATE          | M8 SPIRAL POINT TAP, BLIND | M5                                     | -16
			PLATE 10            | M8 TAP                     | M5                                     | -16
			COVER               | M8 TAP                     | T4 M6 (12 DRILL)~G81 X50 Z-14 R3~G80   | -16
			""")
	void oneThatDoesNot(String title, String tap, String more, String depth) {
		assertThat(tapped(title, tap, more.replace("~", "\n"), depth)).singleElement().satisfies(finding -> assertThat(finding.severity())
				.isEqualTo(Severity.ERROR));
	}

	private static List<String> bored(String pilot, String bore, String tap) {
		return Samples.findings(MachineProfile.named("turning"), "G21 G99", "T0202 (U DRILL 20)", "G97 S1200 M3", "G0 X0 Z3",
				"G1 " + pilot + " F.1", "G0 Z100", "T0303 (BORING BAR)", "G96 S140 M3", "G0 X22 Z2", "G1 " + bore + " F.15", "X20",
				"G0 Z100", "T0404 (M24X2 TAP)", "G97 S120 M3", "G0 X0 Z6", "G84 " + tap + " F2", "G80", "M30").stream()
				.filter(f -> f.rule().equals("drill-too-shallow")).map(Finding::message).toList();
	}

	private static boolean found(int angle, double depth) {
		return Samples.findings("G21 G90", "(TOOL: T1, DRILL, DIA 5, POINT " + angle + ")", "T1 M6", "S2000 M3", "G81 X0 Y0 Z-" + depth
				+ " R5 F200", "G80", "T2 M6 (M6X1 TAP)", "(THREAD: M6X1, BLIND)", "S500 M3", "G84 X0 Y0 Z-12 R5 F500", "G80").stream()
				.anyMatch(f -> f.rule().equals("drill-too-shallow"));
	}
}
