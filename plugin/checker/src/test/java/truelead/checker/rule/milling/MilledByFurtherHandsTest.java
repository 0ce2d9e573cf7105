package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/**
 * Milled threads of further hands: with a relief at the bottom, of several starts, round the zero of the offset, with one circle beside the
 * others.
 */
class MilledByFurtherHandsTest {

	private static final String RELIEF = """
			G21 G90 G17 G40 G80
			T1 M6 (FLAT DRILL 34.5)
			G54 G0 X0 Y0 S250 M3
			G43 H1 Z30.
			G81 Z-26. R2. F35
			G80
			T2 M6 (%s)
			G54 G0 X0 Y0 S1200 M3
			G43 H2 Z30.
			G0 Z-26.
			G1 X8.2 F120
			G3 I-8.2
			G1 X0
			G0 Z30.
			T3 M6 (THREAD MILL D22 SINGLE)
			(THREAD: M36X1.5, DEPTH 20)
			G54 G0 X0 Y0 S1400 M3
			G43 H3 Z30.
			G0 Z-23.25
			G3 X7. Y0 Z-22.5 I3.5 J0 F100
			"""
			+ turns("G3 I-7.", -22.5, 1.5, 16) + "G3 X0 Y0 Z2.25 I-3.5 J0\nG0 Z30.\nM30\n";
	private static final String STARTS = """
			G21 G17 G90 G40 G80
			T1 M6 (DRILL 28.5)
			G54 G0 X0 Y0 S350 M3
			G43 H1 Z20.
			G81 Z-36. R2. F60
			G80
			T2 M6 (THREAD MILL D14 SINGLE)
			(M30X3 P1.5)
			G54 G0 X0 Y0 S2200 M3
			G43 H2 Z20.
			""";
	private static final String ZERO = """
			G21 G17 G90 G40 G80
			T1 M6 (DRILL 8.8)
			G54 G0 X30. Y20. S1800 M3
			G43 H1 Z20.
			G81 Z-24. R2. F250
			X-30.
			G80
			T2 M6 (THREAD MILL D7 SINGLE, M10X1.25)
			S4000 M3
			G54 G0 X0 Y0
			G43 H2 Z20.
			%s
			M98 P100
			%s
			M98 P100
			M30
			O100
			G0 X0 Y0
			G0 Z2.
			G1 Z-16.875 F500
			G3 X1.5 Y0 Z-16.25 I.75 J0 F80
			""" + turns("G3 I-1.5", -16.25, 1.25, 14) + "G3 X0 Y0 Z1.875 I-.75 J0\nG0 Z20.\nM99\n";
	private static final String HANDS = """
			G21 G17 G90 G40 G80
			T1 M6 (DRILL 8.8)
			G54 G0 X0 Y0 S1800 M3
			G43 H1 Z20.
			G81 Z-24. R2. F250
			%sG80
			T2 M6 (THREAD MILL D7 SINGLE)
			(M10X1.25)
			S4000 M3
			G54 G0 X0 Y0
			G43 H2 Z20.
			G0 Z-16.875
			G3 X1.5 Y0 Z-16.25 I.75 J0 F80
			""" + turns("G3 I-1.5", -16.25, 1.25, 14) + """
			G3 X0 Y0 Z1.875 I-.75 J0
			(M10X1.25 LH)
			G0 X30. Y0
			G0 Z-16.875
			G2 X31.5 Y0 Z-16.25 I.75 J0 F80
			""" + turns("G2 I-1.5", -16.25, 1.25, 14) + "G2 X30. Y0 Z1.875 I-.75 J0\nG0 Z20.\nM30\n";
	private static final String CONVENTIONAL = """
			G21 G17 G90 G40 G80
			T1 M6 (DRILL 19)
			G54 G0 X0 Y0 S600 M3
			G43 H1 Z40.
			G81 Z-28. R2. F80
			G80
			T2 M6 (THREAD MILL D14 SINGLE G1/2)
			G54 G0 X0 Y0 S2200 M3
			G43 H2 Z40.
			G0 Z2.268
			G42 D2 G1 X2. Y8.4775 F400
			G2 X10.4775 Y0 Z1.8143 R8.4775 F110
			Z0 I-10.4775
			Z-1.8143 I-10.4775
			Z-3.6286 I-10.4775
			Z-5.4429 I%s
			Z-7.2571 I-10.4775
			Z-9.0714 I-10.4775
			G2 X2. Y-8.4775 Z-9.525 R8.4775
			G40 G1 X0 Y0 F800
			G0 Z40.
			M30
			""";

	private static String turns(String code, double from, double pitch, int count) {
		StringBuilder blocks = new StringBuilder();
		for (int turn = 1; turn <= count; turn++) {
			blocks.append(code).append(" Z").append(from + turn * pitch).append('\n');
		}
		return blocks.toString();
	}

	private static String start(int side) {
		String x = side < 0 ? "-8." : "8.";
		String i = side < 0 ? "8." : "-8.";
		return "G0 Z-21.5\nG3 X" + x + " Y0 Z-20. R4. F140\n" + turns("G3 X" + x + " Y0 I" + i + " J0", -20, 3, 8)
				+ "G3 X0 Y0 Z5.5 R4.\nG0 Z20.\n";
	}

	private static List<Finding> grave(String program) {
		return Samples.findings(program.lines().toArray(String[]::new)).stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION).toList();
	}

	private static Finding one(String program, String rule) {
		List<Finding> grave = grave(program);
		assertThat(grave).extracting(Finding::rule).containsExactly(rule);
		return grave.get(0);
	}

	@Test
	void aGrooveAtTheBottomIsNoBore() {
		for (String cutter : List.of("SLOT CUTTER D20 UNDERCUT MILL", "NUTENFRAESER D20 FREISTICH", "T-SLOT MILL D20",
				"GROOVING CUTTER D20")) {
			assertThat(grave(RELIEF.formatted(cutter))).as(cutter).isEmpty();
		}
		assertThat(one(RELIEF.formatted("END MILL D20"), "drill-too-big").message()).contains("milled 36.4 mm");
	}

	@Test
	void belowTheDrilledHoleAGrooveDoesNotHelp() {
		assertThat(one(RELIEF.formatted("UNDERCUT MILL D20").replace("G81 Z-26.", "G81 Z-22."), "cutter-hits-bottom").message())
				.contains("1.25 mm into the bottom");
	}

	@Test
	void eachStartIsMilled() {
		assertThat(grave(STARTS + start(1) + start(-1) + "M30\n")).isEmpty();
		assertThat(one(STARTS + start(1) + "M30\n", "helix-uneven").message())
				.startsWith("1 of 2 starts of M30x3P1.5 is cut to the whole depth; begin each start 1.500 farther along Z");
		assertThat(one(STARTS + start(1) + start(1) + "M30\n", "helix-uneven").message()).startsWith("all passes run in one groove");
		assertThat(grave(STARTS.replace("D14 SINGLE", "D14 MULTI TOOTH P1.5") + start(1) + "M30\n")).isEmpty();
	}

	@Test
	void helicesRoundTheZeroWereMeantForTheHoles() {
		assertThat(grave(ZERO.formatted("G52 X30. Y20.", "G52 X-30. Y20."))).isEmpty();
		Finding missed = one(ZERO.formatted("", ""), "hole-missing");
		assertThat(missed.severity()).isEqualTo(Severity.ERROR);
		assertThat(missed.message()).contains("at X0 Y0", "2 holes, the first at X30 Y20, are made and never threaded");
	}

	@Test
	void theOtherHandIsDrilledTooWhereOneIs() {
		assertThat(grave(HANDS.formatted("X30.\n"))).isEmpty();
		assertThat(one(HANDS.formatted(""), "hole-missing").message()).contains("at X30 Y0", "other holes of the operation are made here");
	}

	@Test
	void oneCircleRoundAnotherCentreIsNamed() {
		assertThat(grave(CONVENTIONAL.formatted("-10.4775"))).isEmpty();
		Finding odd = one(CONVENTIONAL.formatted("-10.7445"), "helix-off-size");
		assertThat(odd.at().line()).isEqualTo(15);
		assertThat(odd.message()).startsWith("this circle goes round a centre 0.267 mm beside that of the circles next to it, X0 Y0, with "
				+ "a radius of 10.745 mm in place of 10.478 mm");
	}

	@Test
	void withoutG91TheFirstTurnIsMeasuredByTheThread() {
		String program = STARTS.replace("M30X3 P1.5", "M30X1.5, THROUGH") + "G0 Z3.75\nG2 X8. Y0 Z3. I4. J0 F110\n"
				+ "G2 I-8. Z-1.5\n".repeat(20) + "G2 X0 Y0 Z-2.25 I-4. J0\nG0 Z30.\nM30\n";
		assertThat(one(program, "helix-uneven").message()).contains("advances 4.5 mm, its share of the lead 1.500 is 1.5 mm");
	}

	@Test
	void aFlatDrillThatStopsInTheWallIsToldToo() {
		String program = STARTS.replace("DRILL 28.5", "FLAT DRILL 28.5").replace("Z-36.", "Z-18.").replace("M30X3 P1.5",
				"M30X1.5 THRU 20 PLATE") + "G0 Z-21.75\nG3 X8. Y0 Z-21. I4. J0 F110\n" + turns("G3 I-8.", -21, 1.5, 15)
				+ "G3 X0 Y0 Z2.25 I-4. J0\nG0 Z30.\nM30\n";
		assertThat(grave(program.replace("Z-18. R2.", "Z-24. R2."))).isEmpty();
		assertThat(one(program, "cutter-hits-bottom").message())
				.contains("the wall is 20 mm: the last 2 mm is not drilled, and the end runs into it; drill 2 mm deeper");
	}

	@Test
	void theCutterComesDownOnTheFloorOfTheBore() {
		String program = """
				G21 G17 G90 G40 G80
				T1 M6 (DRILL 20)
				G54 G0 X0 Y0 S450 M3
				G43 H1 Z30.
				G81 Z-30. R2. F60
				G80
				T2 M6 (BORING BAR 40.5)
				G54 G0 X0 Y0 S300 M3
				G43 H2 Z30.
				G85 Z-14. R2. F30
				G80
				T3 M6 (THREAD MILL D20 SINGLE)
				(M42X1.5 BLIND)
				G54 G0 X0 Y0 S1800 M3
				G43 H3 Z30.
				G0 Z-16.5
				G3 X11. Y0 Z-15.75 I5.5 J0 F140
				""" + turns("G3 I-11.", -15.75, 1.5, 11) + "G3 X0 Y0 Z1.5 I-5.5 J0\nG0 Z30.\nM30\n";
		assertThat(grave(program.replace("G85 Z-14.", "G85 Z-17."))).isEmpty();
		assertThat(one(program, "cutter-hits-bottom").message())
				.contains("full diameter down to 14 mm: 2.5 mm into the floor, where the hole is narrower; bore 2.5 mm deeper");
		// the bore may come out of the wall where nobody says that it does not
		assertThat(grave(program.replace(" BLIND", ""))).isEmpty();
	}

	@Test
	void aBoltsRootFollowsItsLead() {
		String bolt =
				"G21 G17 G90 G40 G80\nT2 M6 (THREAD MILL D14 SINGLE)\n(M20X%s EXTERNAL)\nS2400 M3\nG54 G0 X40. Y0\nG43 H2 Z20.\nG0 Z1.5\n"
				+ "G1 X30. F500\nG1 X16.08 F150\n" + turns("G2 I-16.08", 1.5, -1.5, 13) + "G1 X40.\nG0 Z20.\nM30\n";
		one(bolt.formatted("1"), "helix-off-pitch");
	}

	@Test
	void byRTheControlGoesTheShortWayWhereAThirdIsLeftOut() {
		List<String> thirds = List.of("X-4. Y6.9282", "X-4. Y-6.9282", "X8. Y0");
		StringBuilder program = new StringBuilder(STARTS.replace("M30X3 P1.5", "M30X1.5") + "G0 Z-18.75\nG3 X8. Y0 Z-18. R4. F110\n");
		for (int i = 0; i < 40; i++) {
			program.append("G3 ").append(thirds.get(i % 3)).append(" Z").append(-18 + 0.5 * (i + 1)).append(" R8.\n");
		}
		program.append("X0 Y0 Z2.75 R4.\nG0 Z20.\nM30\n");
		String left = program.toString().replace("G3 X-4. Y6.9282 Z-8.5 R8.\n", "");
		assertThat(one(left, "arc-not-closed").message())
				.contains("R takes the short way, 120 degrees, between ends that are more than half a turn apart on its circle");
		Finding stray = one(program.toString().replace("X-4. Y-6.9282 Z-8.0 R8.", "X-5.5 Y-6.9282 Z-8.0 R8."), "arc-not-closed");
		assertThat(stray.message()).contains("beside the circle of the others");
	}

	@Test
	void theTitlesBareNameDoesNotHideWhatIsSaidOfTheDepth() {
		for (String head : List.of("O1 (PLATE M30X1.5)\n(M30X1.5 - 6H, 20 DEEP)\n",
				"O1 (PLATE M30X1.5-6H)\n(THREAD: M30X1.5, DEPTH 20)\n")) {
			String program = head + STARTS.replace("M30X3 P1.5", "M30X1.5") + "G0 Z-12.75\nG3 X8. Y0 Z-12. R4. F110\n"
					+ turns("G3 X8. Y0 I-8. J0", -12, 1.5, 9) + "G3 X0 Y0 Z2.25 R4.\nG0 Z20.\nM30\n";
			assertThat(one(program, "helix-too-short").message()).as(head).contains("the thread is 20 mm deep");
		}
	}

	@Test
	void aLeadInAndALeadOutAloneCutNoThread() {
		String program = STARTS.replace("M30X3 P1.5", "M30X1.5")
				+ "G0 Z-18.75\nG3 X8. Y0 Z-18. I4. J0 F110\nTURNSG3 X0 Y0 Z2.25 I-4. J0\nG0 Z30.\nM30\n";
		assertThat(grave(program.replace("TURNS", turns("G3 I-8.", -18, 1.5, 13)))).isEmpty();
		Finding alone = one(program.replace("TURNS", ""), "helix-too-short");
		assertThat(alone.message()).startsWith("the cutter leads in from the middle of the hole and out to it again without a turn round "
				+ "it: no thread is cut");
	}
}
