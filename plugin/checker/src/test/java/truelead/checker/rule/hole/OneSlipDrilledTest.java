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
		return Samples.findings(blocks).stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> f.rule() + ": " + f.message()).toList();
	}

	/** A plate that is drilled and tapped at four places. */
	private static String[] plate(String drill, String tap, String cycle, String... places) {
		List<String> blocks = new ArrayList<>(List.of("G21 G90 G17", "T1 M6 (" + drill + ")", "G0 X10 Y10 S3000 M3", "G43 H1 Z20",
				"G99 G83 Z-16 R2 Q3 F260", "X90", "Y50", "X10", "G80", tap, "G0 X10 Y10 S500 M3", "G43 H2 Z20", cycle));
		blocks.addAll(Arrays.asList(places));
		blocks.addAll(List.of("G80", "M30"));
		return blocks.toArray(String[]::new);
	}

	@Test
	void oneDrillForThreadsOfBothHandsIsSaidOnce() {
		assertThat(loud("G21 G90 G17", "T9 M6 (12.0 DRILL)", "G0 X50 Y0 S900 M3", "G43 H9 Z40", "G99 G83 Z-40 R3 Q5 F200", "X-50", "G80",
				"T10 M6 (M14X1.5 TAP)", "G0 X50 Y0 S160 M3", "G43 H10 Z40", "G99 G84 Z-28 R8 F240", "G80", "T11 M6 (M14X1.5 LH TAP)",
				"G0 X-50 Y0 S160 M4", "G43 H11 Z40", "G99 G74 Z-28 R8 F240", "G80", "M30")).singleElement().asString()
				.startsWith("drill-too-small").contains("M14x1.5 (6H, assumed)").contains("the same at 1 more block");
	}

	@Test
	void oneHoleOfAnotherSizeIsNamedWhereItStands() {
		assertThat(loud("G21 G90 G17", "T1 M6 (DRILL 8.5)", "G0 X10 Y10 S2000 M3", "G43 H1 Z20", "G99 G81 Z-30 R2 F260", "X30", "G80",
				"T2 M6 (REAMER 10H7)", "G0 X50 Y10 S300 M3", "G43 H2 Z20", "G99 G85 Z-30 R2 F90", "G80", "T3 M6 (M10 TAP)",
				"G0 X10 Y10 S300 M3", "G43 H3 Z20", "G99 G84 Z-22 R5 F450", "X50", "G80", "M30")).singleElement().asString()
				.startsWith("drill-too-big: the hole at X50 Y10 is reamed 10 mm");
	}

	@Test
	void aMacroIsToldItsCycleByM() {
		String[] good = {"O1", "G21 G90 G17", "T1 M6 (DRILL 6.8)", "G0 X0 Y0 S2400 M3", "G43 H1 Z30",
				"G65 P20 C8. D120. Z-22. R3. F350. M81.", "T2 M6 (M8 TAP)", "G0 X0 Y0 S400 M3", "G43 H2 Z30",
				"G65 P20 C8. D120. Z-16. R5. F500. M84.", "M30", "O20", "#31=0", "WHILE [#31 LT #3] DO1",
				"G99 G#13 X[#7/2*COS[#31*45]] Y[#7/2*SIN[#31*45]] Z#26 R#18 F#9", "#31=#31+1", "END1", "G80", "M99"};
		assertThat(loud(good)).isEmpty();
		good[9] = "G65 P20 C8. D120. Z-16. R5. F350. M84.";
		assertThat(loud(good)).singleElement().asString().startsWith("feed-off-pitch").contains("at 8 holes; F500");
	}

	@Test
	void theTitlesThicknessIsTheWallOfItsThroughHoles() {
		String[] plate = {"(CAP .875 THK)", "(2 HOLES 10-24 THRU)", "G20 G90 G17", "T2 M6 (#25 DRILL)", "G0 X1.5 Y.5 S3000 M3", "G43 H2 Z1",
				"G99 G83 Z-.97 R.1 Q.12 F10", "Y2", "G80", "T4 M6 (10-24 TAP)", "G0 X1.5 Y.5 S480 M3", "G43 H4 Z1",
				"G99 G84 Z-1.05 R.2 F20", "Y2", "G80", "M30"};
		assertThat(loud(plate)).isEmpty();
		plate[12] = "G99 G84 Z-.8 R.2 F20";
		assertThat(loud(plate)).singleElement().asString().startsWith("not-through").contains("it ends 0.075 in before the far face");
	}

	@Test
	void aToolThatDrillsAndTapsGoesDeeperThanItsLead() {
		assertThat(loud("G21 G90 G17", "T1 M6 (COMBI DRILL TAP M4X0.7 THRU 2MM SHEET)", "G0 X10 Y10 S800 M3", "G43 H1 Z20",
				"G99 G84 Z-12 R5 F560", "X50", "G80", "M30")).isEmpty();
		assertThat(loud("G21 G90 G17", "T1 M6 (TAP M4X0.7 THRU 2MM SHEET)", "G0 X10 Y10 S800 M3", "G43 H1 Z20", "G99 G84 Z-12 R5 F560",
				"X50", "G80", "M30")).singleElement().asString().startsWith("tap-through-fixture");
	}

	@Test
	void aToolsNameThatSpeaksOfTheThreadAlone() {
		assertThat(loud("G90 G17 G71", "T=\"BOHRER_6.8\"", "M6", "S2500 M3 F350", "G0 X15 Y15 Z20", "MCALL CYCLE81(10,0,2,-22)", "X15 Y15",
				"MCALL", "T=\"GEWINDE_M8\"", "M6", "S400 M3", "G0 X15 Y15 Z20", "MCALL CYCLE84(10,0,5,-16,,,3,,1,,400,400)", "X15 Y15",
				"MCALL", "M30")).singleElement().asString().startsWith("feed-off-pitch").contains("M8x1.25 needs 1.250");
	}

	@Test
	void besideAHoleUnderAnotherPlaneThePlaneIsMeant() {
		assertThat(loud("G21 G90", "T5 M6 (ANGLE HEAD DRILL 5.0)", "G18", "G0 X20 Z-15 S2500 M3", "Y-50", "G99 G81 X20 Z-15 Y16 R-3 F250",
				"X60", "G80", "G0 Y-100", "G17", "T6 M6 (ANGLE HEAD M6 TAP)", "G18", "G0 X20 Z-15 S400 M3", "Y-50",
				"G99 G84 X20 Z-16 Y11 R-6 F400", "X60", "G80", "G0 Y-100", "M30")).singleElement().asString()
				.startsWith("hole-off-position");
	}

	@Test
	void anEdgeOfTheDrawingIsNoTool() {
		String[] plate = plate("DRILL 4.2", "T2 M6\n(CHAMFER 1X45)\n(REAMER IN OP20)", "G99 G84 Z-10.5 R5 F400", "X90", "Y50", "X10");
		assertThat(loud(String.join("\n", plate).split("\n"))).isEmpty();
	}

	@Test
	void aLeftHandTapOnALatheIsTurnedByM4() {
		String[] lathe = {"G18 G21 G40 G99", "T0202 (8.5 DRILL)", "G97 S1500 M3", "G0 X0 Z3", "G1 Z-30 F.15", "G0 Z50",
				"T0404 (M10 LH TAP)", "G97 S250 M4", "G0 X0 Z8", "G84 Z-22 R5 F1.5", "G80", "G0 Z50", "M30"};
		assertThat(loud(lathe)).isEmpty();
		lathe[7] = "G97 S250 M3";
		assertThat(loud(lathe)).singleElement().asString().startsWith("spindle-wrong-way: M3 turns clockwise, M10x1.5-LH is left-hand");
	}

	@Test
	void fInTheOtherModeMayBeRounded() {
		assertThat(loud("G20 G40 G99 G97", "T0202 (#3 DRILL)", "G97 S2800 M3", "G0 X0 Z.1", "G1 Z-.8 F.005", "G0 Z2.", "T0303 (1/4-28 TAP)",
				"G97 S400 M3", "G0 X0 Z.3", "G84 Z-.6 R.2 F14.28", "G80", "G0 Z2.", "M30")).singleElement().asString()
				.startsWith("feed-in-wrong-mode");
	}

	@Test
	void aPlaceBehindAMissedOneKeepsItsX() {
		assertThat(loud("G21 G90 G17", "T1 M6 (8.5 DRILL)", "G0 X0 Y0 S1900 M3", "G43 H1 Z50", "G98 G83 X0 Y0 Z-28 R3 Q5 F300", "X40",
				"Y40", "X0", "G80", "T2 M6 (M10 TAP)", "G0 X0 Y0 S300 M3", "G43 H2 Z50", "G98 G84 X0 Y0 Z-21 R6 F450", "X45 Y5", "Y40",
				"X0", "G80", "M30")).singleElement().asString().startsWith("hole-missing").contains("X45 Y5");
	}

	@Test
	void levelNoughtAtTheUndersideIsNoTop() {
		String[] plate = {"(PLATE 25 THK, Z0 = BOTTOM, 2X M10 THRU)", "G21 G90 G17", "T1 M6 (8.5 DRILL)", "G0 X20 Y20 S1900 M3",
				"G43 H1 Z60", "G98 G83 Z-4 R28 Q6 F300", "X80", "G80", "T2 M6 (M10 TAP)", "G0 X20 Y20 S280 M3", "G43 H2 Z60",
				"G98 G84 Z-5 R31 F420", "X80", "G80", "M30"};
		assertThat(loud(plate)).isEmpty();
		plate[11] = "G98 G84 Z-5 R22 F420";
		assertThat(loud(plate)).singleElement().asString().startsWith("plane-heights-wrong").contains("R is 6 mm below Z28");
	}

	@Test
	void aHoleDrilledAllTheWayIsThreadedFromBothEnds() {
		String[] part = {"G21 G90 G17", "T1 M6 (14.0 DRILL)", "B0", "G54 G0 X30 Y30 S1000 M3", "G43 H1 Z100", "G98 G83 Z-88 R3 Q10 F160",
				"G80", "T2 M6 (M16 TAP)", "G54 G0 X30 Y30 S150 M3", "G43 H2 Z100", "G98 G84 Z-31 R8 F300", "G80", "G0 Z200", "B180",
				"G55 X-30 Y30", "G98 G84 Z-31 R8 F300", "G80", "M30"};
		assertThat(loud(part)).isEmpty();
		part[13] = "B90";
		assertThat(loud(part)).singleElement().asString().startsWith("hole-missing").contains("X-30 Y30 B90");
	}

	@Test
	void onATombstoneEachSideIsDrilledForItself() {
		List<String> sides = new ArrayList<>(List.of("G21 G90 G17", "T1 M6 (5.0 DRILL)"));
		for (String side : List.of("G54 B0", "G55 B90", "G56 B180", "G57 B270")) {
			sides.addAll(List.of("G0 X-30 Y30 S2000 M3 " + side, "G43 H1 Z100", "G98 G83 Z-24 R3 Q5 F300", "X30", "G80"));
		}
		sides.add("T2 M6 (M6 TAP)");
		for (String side : List.of("G54 B0", "G55 B90", "G56 B180", "G57 B270")) {
			sides.addAll(List.of("G0 X-30 Y30 S400 M3 " + side, "G43 H2 Z100", "G98 G84 Z-15 R5 F400", "X30", "G80"));
		}
		sides.add("M30");
		assertThat(loud(sides.toArray(String[]::new))).isEmpty();
		sides.remove(sides.indexOf("G0 X-30 Y30 S2000 M3 G56 B180") + 2);
		sides.remove(sides.indexOf("G0 X-30 Y30 S2000 M3 G56 B180") + 2);
		assertThat(loud(sides.toArray(String[]::new))).singleElement().asString().startsWith("hole-missing").contains("B180");
	}

	@Test
	void aBareInchThreadAtTheTapOfTheListSaysItsWall() {
		String[] part = {"(T1 7/8 DRILL)", "(T2 1-8 UNC TAP)", "G20 G90 G17", "T1 M6", "G54 G0 X0 Y0 S350 M3", "G43 H1 Z2.",
				"G98 G83 Z-2.4 R.1 Q.3 F3.5", "G80", "T2 M6 (1-8 THRU 2.0)", "G54 G0 X0 Y0 S80 M3", "G43 H2 Z2.",
				"G98 G84 Z-2.35 R.4 F10.", "G80", "M30"};
		assertThat(loud(part)).isEmpty();
		part[11] = "G98 G84 Z-1.35 R.4 F10.";
		assertThat(loud(part)).singleElement().asString().startsWith("not-through").contains("a wall of 2 in");
	}

	@Test
	void columnsOfAListAreNoSizes() {
		assertThat(loud("(T  | H | D  | DESCRIPTION  )", "(01 | 01| 01 | DRILL 10.2   )", "(02 | 02| 02 | TAP M12X1.75 )", "G21 G90 G17",
				"T1 M6", "G0 X0 Y0 S1400 M3", "G43 H1 Z20", "G99 G83 Z-36 R3 Q6 F220", "G80", "T2 M6", "G0 X0 Y0 S200 M3", "G43 H2 Z20",
				"G99 G84 Z-26 R7 F350", "G80", "M30")).isEmpty();
	}

	@Test
	void alongXByG19OnALatheWithY() {
		assertThat(loud("G21 G40 G99 G18", "T0606 (4.2 DRILL LIVE)", "G97 S3000 M53", "G98 G19", "G0 X40 Y-8 Z-15", "G83 X2 Y-8 R-3 F250",
				"Y8", "G80", "G0 X80", "T0707 (M5 TAP LIVE)", "G97 S500 M53", "G0 X44 Y-8 Z-15", "G84 X10 Y-8 R-5 F400", "Y8", "G80",
				"G0 X80", "M30")).isEmpty();
	}

	@Test
	void twoTurretToolsAreALathesWithY() {
		String[] lathe = {"G18 G21 G99", "T0505 (6.8 LIVE DRILL)", "S2200 M53", "G0 X50 Z5 C0 Y0", "G83 Z-24 R-3 Q4000 F.14", "C90", "G80",
				"G0 Z50", "T0707 (M8 LIVE TAP)", "S400 M53", "G0 X50 Z8 C0 Y0", "G84 Z-17 R-3 F1.25", "C90", "G80", "M30"};
		assertThat(loud(lathe)).isEmpty();
		lathe[11] = "G84 Z-17 R-3 F1.5";
		assertThat(loud(lathe)).singleElement().asString().startsWith("feed-off-pitch").contains("at 2 holes; F1.25");
	}

	@Test
	void theTitlesOnlyThreadWithItsCountIsTheTaps() {
		String[] ring = {"(4X 5/8-11 UNC-2B X 1.25 FULL THD)", "G20 G90 G17", "T1 M6 (DRILL)", "G0 X2 Y2 S700 M3", "G43 H1 Z1",
				"G99 G83 Z-1.95 R.1 Q.3 F6", "X8", "Y6", "X2", "G80", "T2 M6 (TAP)", "G0 X2 Y2 S110 M3", "G43 H2 Z1",
				"G99 G84 Z-1.52 R.35 F11", "X8", "Y6", "X2", "G80", "M30"};
		assertThat(loud(ring)).singleElement().asString().startsWith("feed-off-pitch").contains("F10");
		ring[0] = "(3X 5/8-11 UNC-2B X 1.25 FULL THD)";
		assertThat(loud(ring)).isEmpty();
	}

	@Test
	void aSisterToolDoesWhatTheOtherWould() {
		String[] life = {"G21 G90 G17", "T1 M6 (5.0 DRILL)", "G0 X0 Y0 S3000 M3", "G43 H1 Z25", "G99 G81 Z-18 R2 F300", "X20", "G80",
				"IF [#501 EQ 1] GOTO 20", "T2 M6 (M6 TAP)", "G43 H2 Z25", "GOTO 30", "N20 T12 M6 (SISTER TAP)", "G43 H12 Z25",
				"N30 G0 X0 Y0 S450 M3", "G99 G84 Z-12.5 R5 F450", "X20", "G80", "M30"};
		assertThat(loud(life)).isEmpty();
		life[12] = "G43 H12 Z25 F300 S500";
		assertThat(loud(life)).as("the two ways differ in more than the tool").singleElement().asString().startsWith("not-followed");
	}

	@Test
	void aDrillThatComesAndCutsNothingHasLostItsCycle() {
		String[] plate = plate("DRILL 5.0", "T2 M6 (M6 TAP)", "G99 G84 Z-12 R5 F500", "X90", "Y50", "X10");
		plate[4] = "";
		assertThat(loud(plate)).singleElement().asString().startsWith("hole-missing")
				.contains("nor at its 3 other places; T1, a drill of 5 mm for it, moves and cuts nothing");
		plate[4] = "G65 P9100 Z-16";
		assertThat(loud(plate)).as("a macro that is not at hand may drill").noneMatch(said -> said.startsWith("hole-missing"));
		plate[4] = "G1 X200 F260";
		assertThat(loud(plate)).as("cuts something else").noneMatch(said -> said.startsWith("hole-missing"));
		plate[1] = "T1 M6 (DRILL 9.0)";
		plate[4] = "";
		assertThat(loud(plate)).as("is for another hole").isEmpty();
	}

	@Test
	void theRapidLevelOfATapIsWithinAHoleThatNothingHasOpenedSoFar() {
		String[] plate = {"G21 G90 G17", "T1 M6", "G0 X10 Y10 S2000 M3", "G43 H1 Z20", "G99 G81 Z-3 R2 F150", "X40", "G80", "T2 M6",
				"G0 X10 Y10 S2300 M3", "G43 H2 Z20", "G99 G83 Z-22 R2 Q5 F345", "X40", "G80", "T3 M6", "G0 X10 Y10 S500 M3", "G43 H3 Z20",
				"G99 G84 Z-16 R5 F625", "X40", "G80", "M30"};
		assertThat(loud(plate)).isEmpty();
		plate[16] = "G99 G84 Z-16 R-6 F625";
		assertThat(loud(plate)).singleElement().asString().startsWith("plane-heights-wrong: R is at Z-6");
		plate[4] = "G99 G82 Z-8 R2 F150";
		assertThat(loud(plate)).as("from the floor of a counterbore").isEmpty();
	}

	@Test
	void aSingleHoleOfTheRightDrillIsWhatTheTapWasMeantFor() {
		String[] port = {"G21 G90 G17", "T1 M6 (DRILL 5.0)", "G54 G0 X10 Y10 S2500 M3", "G43 H1 Z20", "G99 G81 Z-16 R2 F260", "G80",
				"T2 M6 (M6 TAP)", "G54 G0 X10 Y10 S500 M3", "G43 H2 Z20", "G99 G84 Z-12 R5 F500", "G80", "M30"};
		assertThat(loud(port)).isEmpty();
		port[7] = "G54 G0 X-10 Y10 S500 M3";
		assertThat(loud(port)).singleElement().asString().startsWith("hole-missing")
				.contains("the hole at X10 Y10 is made and never threaded");
		port[4] = "G99 G81 Z-8 R2 F260";
		assertThat(loud(port)).as("too shallow for this tap, it may be for a dowel").isEmpty();
	}

	@Test
	void holesAroundAShaftUnderAnotherOffsetAreNoFarEndsOfLongHoles() {
		String[] shaft = {"G21 G90 G17", "T1 M6 (4.2 DRILL)", "G54 G0 X20 Y0 A0 S3500 M3", "G43 H1 Z60", "G83 G98 X20 Y0 Z12 R32 Q2 F300",
				"A90", "A180", "A270", "G80", "T2 M6 (M5X0.8 TAP)", "G54 G0 X20 Y0 A0 S800 M3", "G43 H2 Z60", "G84 G98 X20 Y0 Z17 R35 F640",
				"A90", "A180", "A270", "G80", "M30"};
		assertThat(loud(shaft)).isEmpty();
		shaft[10] = "G55 G0 X20 Y0 A0 S800 M3";
		assertThat(loud(shaft)).singleElement().asString().startsWith("hole-missing").contains("under another work offset");
	}

	@Test
	void aWrongOffsetInASubprogramForEachPalletIsNoHabit() {
		String[] pallets = {"O1", "G21 G90 G17", "G54 M98 P20", "G55 M98 P20", "M30", "O20", "T1 M6 (DRILL 3.3)", "S3500 M3", "G0 X0 Y0",
				"G43 H1 Z50", "G81 Z-14 R2 F250", "G80", "T2 M6 (TAP M4)", "S600 M3", "G0 X0 Y0", "G43 H2 Z50", "G84 Z-9 R4 F420",
				"G80", "M99"};
		assertThat(loud(pallets)).isEmpty();
		pallets[15] = "G43 H3 Z50";
		assertThat(loud(pallets)).singleElement().asString().startsWith("length-offset-missing: H3 is not T2's");
	}

	@Test
	void aTapCalledByTheNumberOfADrillIsThatDrill() {
		String[] plate = {"G21 G90 G17", "T1 D1 M6 (SPOT DRILL)", "G54 G0 X10 Y10 S2500 M3", "G81 Z-3 R2 F260", "G80",
				"T2 D1 M6 (DRILL 5.0)", "G0 X10 Y10 S2500 M3", "G81 Z-16 R2 F260", "G80", "M1", "T3 D1 M6 (M6 TAP)", "G0 X10 Y10 S500 M3",
				"G84 Z-12 R5 F500", "G80", "M30"};
		assertThat(loud(plate)).isEmpty();
		plate[10] = "T2 D1 M6 (M6 TAP)";
		assertThat(loud(plate)).singleElement().asString().startsWith("drill-in-tapping-cycle: T2 is called a drill before and a tap here");
		plate[9] = "M0 (PUT THE TAP IN POCKET 2)";
		assertThat(loud(plate)).as("a person puts it in").isEmpty();
		plate[9] = "M1";
		plate[1] = "T2 D1 M6 (SPOT DRILL)";
		assertThat(loud(plate)).as("one number for all: they are changed by hand").isEmpty();
	}
}
