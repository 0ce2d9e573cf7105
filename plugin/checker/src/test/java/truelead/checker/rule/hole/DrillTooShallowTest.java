package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
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

	/** The point of 6.8 mm is 2.04 mm long. */
	@Test
	void aDrillThatGoesInWithItsPointAloneIsToldByItsDepth() {
		assertThat(drilled("Z-1.8")).isEqualTo("the tap goes 15 mm deep, the drill goes 1.8 mm with its point and leaves no full diameter: "
				+ "its end meets the drill's cone at 0.26 mm and the tap breaks; drill to 19.6 mm");
		assertThat(drilled("Z1.8")).isEqualTo("the tap goes to Z-15, the drill to Z1.8, on the other side of Z0: no hole is there "
				+ "where the tap ends; see the sign of both depths");
	}

	private static String drilled(String depth) {
		return Samples.findings("G21 G90", "T1 M6 (DRILL 6.8)", "S1500 M3", "G81 X0 Y0 " + depth + " R2. F200", "X20.", "G80",
				"T2 M6 (M8X1.25 TAP)", "S500 M3", "G84 X0 Y0 Z-15. R5. F625", "X20.", "G80").stream()
				.filter(f -> f.rule().equals("drill-too-shallow")).map(Finding::message).findFirst().orElse("");
	}

	/** No twist drill of 26.5 runs at 125 m/min: it has inserts, or a point that nobody here knows. */
	@Test
	void aLargeDrillThatRunsFastMayEndFlat() {
		assertThat(large("DRILL 26.5", 1500, 50)).as("room, if it ends flat").isTrue();
		assertThat(large("DRILL 26.5", 300, 50)).as("25 m/min, a twist drill").isFalse();
		assertThat(large("DRILL 26.5 118 DEG", 1500, 50)).as("the point is said").isFalse();
		assertThat(large("DRILL 26.5", 1500, 43)).as("no room at all").isFalse();
	}

	@ParameterizedTest
	@ValueSource(strings = {"UDRILL 26.5", "U-BOHRER D26.5", "WENDESCHNEIDPLATTENBOHRER D26.5", "KURZLOCHBOHRER D26.5",
		"FORET A PLAQUETTES D26.5", "PUNTA A INSERTI D26.5", "BROCA DE PLAQUITAS D26.5", "BROCA DE INSERTOS 26.5",
		"WIERTLO SKLADANE 26.5", "VRTAK S VBD 26.5", "TAKMA UCLU MATKAP 26.5", "VÄNDSKÄRSBORR 26.5", "WISSELPLAATBOOR 26.5"})
	void aDrillWithInsertsEndsFlatInEveryLanguage(String drill) {
		assertThat(large(drill, 300, 50)).isTrue();
	}

	/** The same hole under a thread mill. */
	@Test
	void aThreadMillMayGoToTheFloorOfALargeDrill() {
		assertThat(milled(1500, 45)).isTrue();
		assertThat(milled(300, 45)).as("a twist drill's cone begins at 42").isFalse();
		assertThat(milled(1500, 51)).as("below its end").isFalse();
	}

	private static boolean milled(int speed, int deep) {
		return Samples.findings("G21 G90 G94 G17", "T3 M6 (DRILL 26.5)", "G54 G0 X0 Y0 S" + speed + " M3", "G81 Z-50 R2 F150", "G80",
				"T5 M6 (THREAD MILL D16, M30X3.5)", "S2000 M3", "G0 X0 Y0", "G0 Z-" + deep, "G1 G41 D5 X7.5 Y-7.5 F200", "G3 X15 Y0 R7.5",
				"G3 I-15 Z-" + (deep - 3.5), "G3 I-15 Z-" + (deep - 7), "G3 X7.5 Y7.5 R7.5", "G1 G40 X0 Y0", "G0 Z5").stream()
				.noneMatch(f -> f.rule().equals("cutter-hits-bottom"));
	}

	private static boolean large(String drill, int speed, int deep) {
		return Samples.findings("G21 G90 G94 G17", "T3 M6 (" + drill + ")", "G54 G0 X0 Y0 S" + speed + " M3", "G81 Z-" + deep + " R2 F150",
				"G80", "T5 M6 (M30X3.5 TAP)", "S100 M3", "G84 X0 Y0 Z-44 R12 F350", "G80").stream()
				.noneMatch(f -> f.rule().equals("drill-too-shallow") && f.severity() != Severity.INFORMATION);
	}

	/** A drill of 8.5 at 100 m/min is of carbide and has a point of 140 degrees: 1 mm less than at 118. */
	@Test
	void aDrillThatRunsFastHasThePointOfCarbide() {
		assertThat(carbide("DRILL 8.5", 3745)).as("2 mm left").isEqualTo(Severity.INFORMATION);
		assertThat(carbide("DRILL 8.5", 900)).as("1 mm left").isEqualTo(Severity.WARNING);
	}

	private static Severity carbide(String drill, int speed) {
		return Samples.findings("G21 G90 G94 G17", "T3 M6 (" + drill + ")", "G54 G0 X0 Y0 S" + speed + " M3", "G81 Z-25 R2 F400",
				"G80", "T5 M6 (M10 TAP)", "S300 M3", "G84 X0 Y0 Z-21.4 R8 F450", "G80").stream()
				.filter(f -> f.rule().equals("drill-too-shallow")).findFirst().orElseThrow().severity();
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
			assertThat(finding.message()).endsWith("and the tap breaks; see the depth of the tap, 9.4 mm at most");
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
