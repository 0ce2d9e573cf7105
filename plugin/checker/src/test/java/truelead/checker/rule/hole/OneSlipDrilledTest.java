package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/** Programs of drilled and tapped holes with one slip each: what is said, and that nothing else is. */
class OneSlipDrilledTest {

	private static List<String> loud(String... blocks) {
		return Samples.findings(blocks).stream().filter(f -> f.severity() != Severity.INFORMATION).map(f -> f.rule() + ": " + f.message()).toList();
	}

	/** A plate that is drilled and tapped at four places. */
	private static String[] plate(String drill, String tap, String cycle, String... places) {
		List<String> blocks = new ArrayList<>(List.of("G21 G90 G17", "T1 M6 (" + drill + ")", "G0 X10 Y10 S3000 M3", "G43 H1 Z20", "G99 G83 Z-16 R2 Q3 F260", "X90", "Y50", "X10", "G80", tap, "G0 X10 Y10 S500 M3",
				"G43 H2 Z20", cycle));
		blocks.addAll(Arrays.asList(places));
		blocks.addAll(List.of("G80", "M30"));
		return blocks.toArray(String[]::new);
	}

	@Test
	void aNoughtLostInAPlaceBesideAnotherHole() {
		assertThat(loud(plate("DRILL 4.2", "T2 M6 (M5 TAP)", "G99 G84 Z-10.5 R5 F400", "X90", "Y50", "X10"))).isEmpty();
		assertThat(loud(plate("DRILL 4.2", "T2 M6 (M5 TAP)", "G99 G84 Z-10.5 R5 F400", "X9", "Y50", "X10"))).singleElement().asString().startsWith("hole-missing").contains("X9 Y10");
		assertThat(loud(plate("DRILL 4.2", "T2 M6 (M5 TAP)", "G99 G84 Z-10.5 R5 F400", "X89", "Y50", "X10"))).singleElement().asString().startsWith("hole-off-position").contains("X89 Y10");
	}

	@Test
	void oneDrillForThreadsOfBothHandsIsSaidOnce() {
		assertThat(loud("G21 G90 G17", "T9 M6 (12.0 DRILL)", "G0 X50 Y0 S900 M3", "G43 H9 Z40", "G99 G83 Z-40 R3 Q5 F200", "X-50", "G80", "T10 M6 (M14X1.5 TAP)", "G0 X50 Y0 S160 M3", "G43 H10 Z40",
				"G99 G84 Z-28 R8 F240", "G80", "T11 M6 (M14X1.5 LH TAP)", "G0 X-50 Y0 S160 M4", "G43 H11 Z40", "G99 G74 Z-28 R8 F240", "G80", "M30")).singleElement().asString()
				.startsWith("drill-too-small").contains("M14x1.5 (6H, assumed)").contains("the same at 1 more block");
	}

	@Test
	void oneHoleOfAnotherSizeIsNamedWhereItStands() {
		assertThat(loud("G21 G90 G17", "T1 M6 (DRILL 8.5)", "G0 X10 Y10 S2000 M3", "G43 H1 Z20", "G99 G81 Z-30 R2 F260", "X30", "G80", "T2 M6 (REAMER 10H7)", "G0 X50 Y10 S300 M3", "G43 H2 Z20", "G99 G85 Z-30 R2 F90",
				"G80", "T3 M6 (M10 TAP)", "G0 X10 Y10 S300 M3", "G43 H3 Z20", "G99 G84 Z-22 R5 F450", "X50", "G80", "M30")).singleElement().asString().startsWith("drill-too-big: the hole at X50 Y10 is reamed 10 mm");
	}

	@Test
	void aMacroIsToldItsCycleByM() {
		String[] good = {"O1", "G21 G90 G17", "T1 M6 (DRILL 6.8)", "G0 X0 Y0 S2400 M3", "G43 H1 Z30", "G65 P20 C8. D120. Z-22. R3. F350. M81.", "T2 M6 (M8 TAP)", "G0 X0 Y0 S400 M3", "G43 H2 Z30",
				"G65 P20 C8. D120. Z-16. R5. F500. M84.", "M30", "O20", "#31=0", "WHILE [#31 LT #3] DO1", "G99 G#13 X[#7/2*COS[#31*45]] Y[#7/2*SIN[#31*45]] Z#26 R#18 F#9", "#31=#31+1", "END1", "G80", "M99"};
		assertThat(loud(good)).isEmpty();
		good[9] = "G65 P20 C8. D120. Z-16. R5. F350. M84.";
		assertThat(loud(good)).singleElement().asString().startsWith("feed-off-pitch").contains("at 8 holes; F500");
	}

	@Test
	void rigidModeWithoutItsSpeedIsTheSlipAlone() {
		String[] plate = plate("DRILL 4.2", "T2 M6 (M5 TAP)", "G99 G84 Z-10.5 R5 F400", "X90", "Y50", "X10");
		plate[10] = "G0 X10 Y10";
		plate[11] = "G43 H2 Z20 M8" + "\n" + "M29";
		assertThat(loud(String.join("\n", plate).split("\n"))).singleElement().asString().startsWith("feed-off-pitch").contains("S500, if S3000 is left over");
	}

	@Test
	void theTitlesThicknessIsTheWallOfItsThroughHoles() {
		String[] plate = {"(CAP .875 THK)", "(2 HOLES 10-24 THRU)", "G20 G90 G17", "T2 M6 (#25 DRILL)", "G0 X1.5 Y.5 S3000 M3", "G43 H2 Z1", "G99 G83 Z-.97 R.1 Q.12 F10", "Y2", "G80", "T4 M6 (10-24 TAP)",
				"G0 X1.5 Y.5 S480 M3", "G43 H4 Z1", "G99 G84 Z-1.05 R.2 F20", "Y2", "G80", "M30"};
		assertThat(loud(plate)).isEmpty();
		plate[12] = "G99 G84 Z-.8 R.2 F20";
		assertThat(loud(plate)).singleElement().asString().startsWith("not-through").contains("it ends 0.075 in before the far face");
	}

	@Test
	void aToolThatDrillsAndTapsGoesDeeperThanItsLead() {
		assertThat(loud("G21 G90 G17", "T1 M6 (COMBI DRILL TAP M4X0.7 THRU 2MM SHEET)", "G0 X10 Y10 S800 M3", "G43 H1 Z20", "G99 G84 Z-12 R5 F560", "X50", "G80", "M30")).isEmpty();
		assertThat(loud("G21 G90 G17", "T1 M6 (TAP M4X0.7 THRU 2MM SHEET)", "G0 X10 Y10 S800 M3", "G43 H1 Z20", "G99 G84 Z-12 R5 F560", "X50", "G80", "M30")).singleElement().asString().startsWith("tap-through-fixture");
	}

	@Test
	void aToolsNameThatSpeaksOfTheThreadAlone() {
		assertThat(loud("G90 G17 G71", "T=\"BOHRER_6.8\"", "M6", "S2500 M3 F350", "G0 X15 Y15 Z20", "MCALL CYCLE81(10,0,2,-22)", "X15 Y15", "MCALL", "T=\"GEWINDE_M8\"", "M6", "S400 M3", "G0 X15 Y15 Z20",
				"MCALL CYCLE84(10,0,5,-16,,,3,,1,,400,400)", "X15 Y15", "MCALL", "M30")).singleElement().asString().startsWith("feed-off-pitch").contains("M8x1.25 needs 1.250");
	}

	@Test
	void besideAHoleUnderAnotherPlaneThePlaneIsMeant() {
		assertThat(loud("G21 G90", "T5 M6 (ANGLE HEAD DRILL 5.0)", "G18", "G0 X20 Z-15 S2500 M3", "Y-50", "G99 G81 X20 Z-15 Y16 R-3 F250", "X60", "G80", "G0 Y-100", "G17", "T6 M6 (ANGLE HEAD M6 TAP)", "G18",
				"G0 X20 Z-15 S400 M3", "Y-50", "G99 G84 X20 Z-16 Y11 R-6 F400", "X60", "G80", "G0 Y-100", "M30")).singleElement().asString().startsWith("hole-off-position");
	}

	@Test
	void anEdgeOfTheDrawingIsNoTool() {
		String[] plate = plate("DRILL 4.2", "T2 M6\n(CHAMFER 1X45)\n(REAMER IN OP20)", "G99 G84 Z-10.5 R5 F400", "X90", "Y50", "X10");
		assertThat(loud(String.join("\n", plate).split("\n"))).isEmpty();
	}
}
