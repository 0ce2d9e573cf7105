package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;
import static truelead.checker.Samples.one;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import truelead.checker.rule.Severity;

/**
 * Milled threads as further shops write them: by macros with whole numbers, tapers in quarters by R, through holes, cutters ground the
 * other way.
 */
class MilledByNewHandsTest {

	private static final String DRILLED = """
			G21 G90 G17 G40
			T1 M6 (DRILL 18.5)
			G54 G0 X0 Y0 S700 M3
			G43 H1 Z20.
			G81 Z-32. R3. F100
			G80
			""";
	private static final String MACRO = DRILLED + """
			T2 M6 (THREAD MILL D12 SINGLE)
			(M20X1.5)
			G0 X0 Y0 S2400 M3
			G43 H2 Z20.
			#1=20.
			#2=12.
			#3=[#1-#2]/2
			#4=-18.
			G0 Z2.
			G1 Z[#4-.75] F500
			#5=-180.
			WHILE [#5 LT 0] DO1
			#5=#5+10.
			G1 X[#3/2+#3/2*COS[#5]] Y[#3/2*SIN[#5]] Z[#4+1.5*#5/360.] F60.
			END1
			#6=0
			WHILE [#6 LT 4680.] DO1
			#6=#6+5.
			G1 X[#3*COS[#6]] Y[#3*SIN[#6]] Z[#4+1.5*#6/360.] F120.
			END1
			G1 X0 Y0 F600.
			G0 Z50.
			M30
			""";
	private static final String BITES = """
			G21 G90 G17 G40
			T1 M6 (DRILL 18.5)
			G54 G0 X%s Y0 S700 M3
			G43 H1 Z20.
			G81 Z-32. R3. F100
			G80
			T2 M6 (THREAD MILL D12 M20X1.5 COMB 24 LOC)
			G0 X0 Y0 S2400 M3
			G43 H2 Z20.
			G0 Z2.
			G1 Z-20.375 F600
			G41 D2 X1. Y-8.5 F300
			G3 X9.5 Y0 Z-20. I0 J8.5 F120
			G3 X9.5 Y0 Z-18.5 I-9.5 J0
			G3 X1. Y8.5 Z-18.125 I-8.5 J0
			G1 G40 X0 Y0 F600
			G1 Z-20.375
			G41 D2 X1.5 Y-8.5 F300
			G3 X10. Y0 Z-20. I0 J8.5 F120
			G3 X10. Y0 Z-18.5 I-10. J0
			G3 X1.5 Y8.5 Z-18.125 I-8.5 J0
			G1 G40 X0 Y0 F600
			G0 Z20.
			M30
			""";
	private static final String SIDE = """
			G21 G90 G17 G40 G80
			T11 M6 (DRILL 14.5)
			S1100 M3
			G54 G0 X-30. Z0.
			G43 H11 Y20.
			G18 G81 X-30. Z0. Y-26. R2. F110.
			G80
			T12 M6 (THREAD MILL D8 SINGLE, M16X1.5)
			S4000 M3
			G0 X-30. Z0.
			G43 H12 Y20.
			G18 G0 Y2.
			G1 Y-18.75 F800.
			G3 Z4. X-30. Y-18. K2. I0. F90.
			%sG3 Z0. X-30. Y.75 K-2. I0.
			G0 Y20.
			M30
			""".formatted("G3 K-4. Y%s\n".repeat(12).formatted(-16.5, -15.0, -13.5, -12.0, -10.5, -9.0, -7.5, -6.0, -4.5, -3.0, -1.5, 0.0));
	private static final String BOLT = """
			G21 G90 G17 G40
			(THREAD: M24X1.5, DEPTH 15)
			T5 M6 (THREAD MILL D12 SINGLE)
			G54 G0 X40. Y0 S3000 M3
			G43 H5 Z20.
			G0 Z1.5
			G1 X17.08 F150.
			%sG1 X40. F800.
			G0 Z20.
			M30
			""".formatted("G2 I-17.08 Z%s\n".repeat(11).formatted(0, -1.5, -3.0, -4.5, -6.0, -7.5, -9.0, -10.5, -12.0, -13.5, -15.0));
	private static final String THROUGH = """
			G21 G90 G17 G40
			T1 M6 (DRILL 20.5)
			G54 G0 X0 Y0 S700 M3
			G43 H1 Z20.
			G81 Z%s R3. F100
			G80
			T2 M6 (THREAD MILL D11.5 SINGLE)
			(%s)
			G0 X0 Y0 S2400 M3
			G43 H2 Z20.
			G0 Z-21.75
			G3 X5.25 Z-21. I2.625 F120
			%sG3 X0 Z2.25 I-2.625
			G0 Z20.
			M30
			""";
	private static final String CLIMBS = "G3 I-5.25 Z%s\n".repeat(15).formatted(-19.5, -18.0, -16.5, -15.0, -13.5, -12.0, -10.5, -9.0, -7.5,
			-6.0, -4.5, -3.0, -1.5, 0, 1.5);
	private static final String NPT_COMB = """
			G20 G17 G40 G80 G90
			T1 M6 (7/16 DRILL)
			G54 G0 X0 Y0 S900 M3
			G43 H1 Z1.
			G81 Z-.95 R.1 F6.
			G80
			T2 M6 (THREAD MILL .370 DIA 1/4-18 NPT FULL FORM)
			G0 X0 Y0 S3500 M3
			G43 H2 Z1.
			G0 Z.1
			G1 Z-.5694 F30.
			G1 G41 D2 X.0636 Y-.2 F10.
			G3 X.2636 Y0 Z-.5555 I0 J.2 F5.
			G3 X.2636 Y0 Z-.5 I-.2636 J0
			G3 X.0636 Y.2 Z-.4861 I-.2 J0
			G1 G40 X0 Y0 F30.
			G0 Z1.
			M30
			""";
	private static final String HARD = """
			G21 G90 G17 G40
			T1 M6 (DRILL 2.5)
			G54 G0 X5. Y5. S1500 M3
			G43 H1 Z5.
			G83 Z-9.5 R1. Q.5 F30.
			G80
			T2 M6 (THREAD MILL M3X0.5 D2.0%s)
			G0 X5. Y5. S8000 M4
			G43 H2 Z5.
			G0 Z.25
			G2 X5.5 Z0 I.25 F40.
			%sG2 X5. Z-6.25 I-.25
			G0 Z5.
			M30
			""";

	@Test
	void aMacroOfWholeNumbersIsNoLessExactForThat() {
		assertThat(loud(MACRO)).isEmpty();
		one(MACRO.replace("1.5*#6", "1.25*#6"), "helix-off-pitch", "advances 1.250 mm a turn");
		one(MACRO.replace("#2=12.", "#2=10."), "helix-off-size", "cuts 22 mm");
		one(MACRO.replace("LT 4680.", "LT 180."), "helix-too-short", "only 0.5 of a turn");
	}

	@Test
	void aCutterThatGoesBackForTheNextPassGoesIntoTheSameHole() {
		assertThat(loud(BITES.formatted("0"))).isEmpty();
		one(BITES.formatted("0.3"), "hole-off-position", "0.3 mm off");
	}

	@Test
	void aRoughingPassHasItsCompensationToo() {
		String good = BITES.formatted("0");
		one(good.replaceFirst("G41", "G42"), "comp-missing", "G42 puts the cutter outside the wall of M20x1.5, which cuts 43 mm");
		one(good.replaceFirst("G41 D2 ", "").replaceFirst("G40 ", ""), "comp-missing",
				"the path of 19 mm is the wall of M20x1.5 and no compensation is in force");
		one(good.replace("G41 D2 ", "").replace("G40 ", ""), "comp-missing", "the path of 20 mm is the wall");
		assertThat(loud(NPT_COMB)).isEmpty();
		one(NPT_COMB.replace("G41 D2 ", "").replace("G40 ", ""), "comp-missing", "the path of 0.527 in is the wall of 1/4-18 NPT");
	}

	@Test
	void underAnAngleHeadArcsHaveTheWordsOfTheirPlane() {
		assertThat(loud(SIDE)).isEmpty();
		one(SIDE.replace("G3 Z0. X-30.", "G3 Z1. X-30."), "arc-not-closed", "starts 2 mm from its centre and ends 1 mm from it");
		one(SIDE.replace("S4000 M3", "S4000 M4"), "spindle-wrong-way", "M4 turns T12 counter-clockwise, the drill turned clockwise");
	}

	@Test
	void aBoltIsLeftAwayFromItsThread() {
		assertThat(loud(BOLT)).isEmpty();
		one(BOLT.replace("G1 X40. F800.\n", ""), "exit-scars-thread",
				"15 mm below the face while its teeth still reach in to a diameter of 22.16 mm, the bolt is 24 mm: it scars 0.92 mm of the "
				+ "thread; lead out away from the bolt first");
	}

	@Test
	void aTaperInQuartersByRadiusIsHeldToItsCircle() {
		String[] quarters = quarters();
		String good = taper(quarters);
		assertThat(loud(good)).isEmpty();
		String tenth = quarters[10];
		one(good.replace(tenth, tenth.replaceAll("R.*", "R.2237")), "arc-not-closed",
				"this arc goes round another centre than the helix: R 0.2237 in, the circle has 0.157 in; R0.157");
		one(good.replace(tenth, tenth.replace("R", "R-")), "arc-not-closed", "R with a minus takes the long way round, 270 degrees");
		one(good.replace(tenth, tenth.replace("G3", "G2")), "arc-not-closed",
				"this arc goes clockwise, the arcs of the helix beside it counter-clockwise: it turns back round another centre and cuts "
				+ "into the thread; G3");
		one(good.replace(quarters[0], quarters[0].replace("G3", "G2")), "arc-not-closed", "this arc goes clockwise");
		one(good.replace(quarters[9], quarters[9].replace("X-0.1567", "X-0.2067")), "arc-not-closed", "beside the circle of the others");
	}

	private static String[] quarters() {
		double pitch = 1 / 14.0;
		String[] quarters = new String[32];
		for (int i = 0; i < quarters.length; i++) {
			double radius = .1511 + pitch / 128 * (i + 1);
			double angle = Math.PI / 2 * (i + 1);
			quarters[i] = String.format(Locale.ROOT, "G3 X%.4f Y%.4f Z%.4f R%.4f", radius * Math.cos(angle), radius * Math.sin(angle),
					-.5357 + pitch / 4 * (i + 1), radius - pitch / 256);
		}
		return quarters;
	}

	private static String taper(String[] quarters) {
		return "G20 G90 G17 G40\nT8 M6 (45/64 DRILL)\nG54 G0 X0 Y0 S650 M3\nG43 H8 Z1.\nG81 Z-1.2 R.1 F6.\nG80\n"
				+ "T18 M6 (THREAD MILL .500 1/2-14 NPT SINGLE)\nG0 X0 Y0 S2400 M3\nG43 H18 Z1.\n"
				+ "G0 Z-.5536\nG3 X.1511 Z-.5357 I.0756 F7.\n" + String.join("\n", quarters)
				+ "\nG3 X0 Y0 Z.0536 I-.0845 J0\nG0 Z1.\nM30\n";
	}

	@Test
	void aThroughHoleIsDrilledOutOfItsWall() {
		assertThat(loud(THROUGH.formatted("-30.", "M22X1.5)\n(HOLE: THROUGH 18", CLIMBS))).isEmpty();
		one(THROUGH.formatted("-20.", "M22X1.5)\n(HOLE: THROUGH 18", CLIMBS), "cutter-hits-bottom",
				"has its full diameter down to 13.84 mm, the wall is 18 mm: the drill's cone is left in the last 4.16 mm");
		one(THROUGH.formatted("-20.", "THREAD: M22X1.5, THROUGH 18", CLIMBS), "cutter-hits-bottom", "the wall is 18 mm");
		one(THROUGH.formatted("-20.", "THREAD: M22X1.5, THROUGH", CLIMBS), "cutter-hits-bottom",
				"7.91 mm into the drill's cone where the wall is as thick; drill deeper, or say WALL");
		one(THROUGH.formatted("-60.", "THREAD: M22X1.5, THROUGH", CLIMBS), "not-through",
				"the helix goes 21 mm deep in a hole that is called through and drilled to its full diameter down to 53.84 mm");
		one(THROUGH.formatted("-60.", "THREAD: M22X1.5, THROUGH 26", CLIMBS), "helix-too-short",
				"the helix travels 22.5 mm, the thread is 26 mm deep");
	}

	@Test
	void aCentreTypedWrongIsOneNumberAndNoOtherPlace() {
		String good =
				DRILLED + "T2 M6 (THREAD MILL D12 M20X1.5 COMB)\nG0 X0 Y0 S2400 M3\nG43 H2 Z20.\nG0 Z-18.375\nG91\nG3 X4. Z.375 I2. F120\n"
				+ "G3 I-4. Z1.5\nG3 X-4. Z.375 I-2.\nG90\nG0 Z20.\nM30\n";
		assertThat(loud(good)).isEmpty();
		one(good.replace("G3 I-4.", "G3 I-3.5"), "helix-off-size",
				"2 x R3.5 mm + cutter 12 mm cuts 19 mm, M20x1.5 needs at least 20 mm: 1 mm too small; radius 4 mm");
		one(good.replace("G81 Z-32. R3. F100\n", "").replace("G3 I-4.", "G3 I-3.5"), "helix-off-size", "radius 4 mm");
	}

	@Test
	void ofALoopWithoutAnEndNobodyKnowsTheLastRadius() {
		String loop =
				DRILLED + "T2 M6 (THREAD MILL D12 SINGLE, M20X1.5)\nG0 X0 Y0 S2400 M3\nG43 H2 Z20.\n#1=0\nN10 #1=#1+1\n#2=3.4+.2*#1\n"
				+ "#3=-18.\nG0 X0 Y0\nG0 Z-18.375\nG3 X#2 Z#3 I[#2/2] F120\nN20 #3=#3+1.5\n"
				+ "G3 I[0-#2] Z#3\nIF [#3 LT 1] GOTO20\nG3 X0 Z[#3+.375] I[0-#2/2]\nG0 Z2.\nIF [#1 LT 3] GOTO10\nG0 Z20.\nM30\n";
		assertThat(loud(loop)).isEmpty();
		one(loop.replace("N10 #1=#1+1", "N10 #1=1"), "not-followed", "has no end");
	}

	@Test
	void chordsUnderAnArcCodeLeftOnAreSaidOnce() {
		StringBuilder chords = new StringBuilder();
		for (int i = 1; i <= 720; i++) {
			chords.append(String.format(Locale.ROOT, "X%.3f Y%.3f Z%.3f%n", 4 * Math.cos(Math.toRadians(5 * i)),
					4 * Math.sin(Math.toRadians(5 * i)), -18 + i * 1.5 / 72));
		}
		String good =
				DRILLED + "T2 M6 (THREAD MILL D12 SINGLE)\n(M20X1.5)\nG0 X0 Y0 S2400 M3\nG43 H2 Z20.\nG0 Z-18.375\n"
				+ "G3 X4. Z-18. I2. F120\nG1\n" + chords + "G3 X0 Z-2.625 I-2.\nG0 Z20.\nM30\n";
		assertThat(loud(good)).noneMatch(finding -> finding.rule().equals("not-followed"));
		one(good.replace("\nG1\n", "\n"), "not-followed", "G3 is still in force, and an arc has neither centre nor radius in this block");
	}

	@Test
	void aCutterGroundTheOtherWayTurnsTheOtherWay() {
		String down = "G2 I-.5 Z%s\n".repeat(12).formatted(-0.5, -1.0, -1.5, -2.0, -2.5, -3.0, -3.5, -4.0, -4.5, -5.0, -5.5, -6.0);
		assertThat(loud(HARD.formatted(" LEFT HAND CUTTING", down))).isEmpty();
		assertThat(loud(HARD.formatted(", LINKSSCHNEIDEND", down))).isEmpty();
		assertThat(loud(HARD.formatted(" LINKS SCHNEIDEND", down))).isEmpty();
		assertThat(loud(HARD.formatted(" LEFT-HANDED CUT", down))).isEmpty();
		assertThat(loud(HARD.formatted("", down))).singleElement().satisfies(finding -> {
			assertThat(finding.severity()).isEqualTo(Severity.WARNING);
			assertThat(finding.message()).endsWith("M3, or say that it is ground LEFT HAND CUTTING");
		});
	}
}
