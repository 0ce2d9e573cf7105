package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A block that is left out, typed twice or forgotten shows at several places of a program; one finding names it. */
class LeftOutAndTwiceTest {

	private static final String HEAD = """
			G21 G90 G94 G17
			T1 M6 (DRILL 5.0)
			G54 G0 X10 Y10 S2500 M3
			G43 H1 Z10
			G81 Z-18 R3 F300
			X50
			Y40
			X10
			G80
			T2 M6 (M6X1 TAP)
			G0 X10 Y10 S520 M3
			G43 H2 Z10
			""";

	private static List<String> loud(String tapping) {
		return said(HEAD + tapping + "M30\n");
	}

	private static List<String> said(String program) {
		return SampleCheck.loud(program).stream().map(finding -> finding.at().line() + 1 + " " + finding.rule()).toList();
	}

	@Test
	void aPositionLeftOutOfARectangle() {
		assertThat(loud("G84 Z-14 R5 F520\nY40\nX10\nG80\n")).as("X50 is left out, so X10 Y40 comes twice")
				.containsExactly("13 hole-skipped");
	}

	@Test
	void aPositionTypedTwiceForTheNext() {
		assertThat(loud("G84 Z-14 R5 F520\nX50\nX50 Y10\nX10 Y40\nG80\n")).as("X50 Y40 is left over").containsExactly("15 threaded-twice");
	}

	@Test
	void aPositionLeftOutOfWhatTheTitleCounts() {
		String title = "(COVER, 4X M6)\n" + HEAD;
		assertThat(said(title + "G84 Z-14 R5 F520\nX50\nY40\nG80\nM30\n")).containsExactly("14 hole-skipped");
		assertThat(said(title.replace("4X M6", "5X M6") + "G84 Z-14 R5 F520\nX50\nY40\nX10\nG80\nM30\n"))
				.containsExactly("14 count-differs");
		assertThat(said(title.replace("4X M6", "8X M6") + "G84 Z-14 R5 F520\nX50\nY40\nX10\nG80\nM30\n"))
				.as("half of them from the other side").isEmpty();
	}

	/** Twelve holes round a ring, and one turn of the table too many. */
	@Test
	void aRepeatCountThatComesRoundAgain() {
		String ring = """
				G21 G90 G94 G17
				T1 M6 (DRILL 3.3)
				G54 G0 X0 Y0 A0 S4000 M3
				G43 H1 Z60
				G81 Z26 R42 F250
				G91 A30 L11
				G90 G80
				T2 M6 (M4 TAP)
				G0 X0 Y0 A0 S500 M3
				G43 H2 Z60
				G84 Z30 R44 F350
				G91 A%s
				G90 G80
				M30
				""";

		assertThat(said(ring.formatted("30 L11"))).isEmpty();
		assertThat(SampleCheck.loud(ring.formatted("30 L12"))).singleElement().satisfies(finding -> {
			assertThat(finding.message()).contains("L12 repeats the thread").endsWith("; L11 comes up to it");
			assertThat(finding.fixes().get(0).edits().get(0).text()).isEqualTo("L11");
		});
		assertThat(said(ring.formatted("36 L11"))).as("A360 is A0 again").containsExactly("12 hole-missing");
	}

	@Test
	void aWrongOffsetLeavesItsHolesOver() {
		String two = """
				G21 G90 G94 G17
				T1 M6 (DRILL 8.5)
				G54 G0 X0 Y0 S1800 M3
				G43 H1 Z20
				G99 G83 Z-30 R3 Q6 F320
				X30
				G0 Z50
				G55 X0 Y0
				G99 G83 Z-30 R3 Q6 F320
				X30
				G80
				T2 M6 (M10 TAP)
				G54 G0 X0 Y0 S300 M3
				G43 H2 Z20
				G99 G84 Z-22 R5 F450
				X30
				G0 Z50
				%s X0 Y0
				G99 G84 Z-22 R5 F450
				X30
				G80
				M30
				""";

		assertThat(said(two.formatted("G55"))).isEmpty();
		assertThat(said(two.formatted("G56"))).containsExactly("19 hole-missing");
	}

	@Test
	void aBlockThatCannotBeReadIsNoPlaceTypedTwice() {
		assertThat(loud("G84 Z-14 R5 F520\nX50\nY4.0.\nX10\nG80\n")).containsExactly("15 not-understood");
	}

	/** The hole in the floor of a pocket: nothing says where the floor is, but the drill starts above it. */
	@Test
	void aTapThatStartsFarBelowTheDrill() {
		String pocket = HEAD.replace("Z-18 R3", "Z-30 R-10");
		assertThat(said(pocket + "G84 Z-24 R-7 F520\nX50\nY40\nX10\nG80\nM30\n")).isEmpty();
		assertThat(said(pocket + "G84 Z-24 R-14 F520\nX50\nY40\nX10\nG80\nM30\n")).containsExactly("13 plane-heights-wrong");
	}

	@Test
	void aDepthThatItsLeadIsLongerThan() {
		assertThat(said(HEAD + "G84 Z-1.4 R5 F520\nX50\nY40\nX10\nG80\nM30\n")).as("Z-14 was meant").containsExactly("13 thread-too-short");
	}

	@Test
	void theWayOutWithoutItsG80() {
		assertThat(loud("G84 Z-14 R5 F520\nX50\nY40\nX10\nZ100 M9\n")).as("Z100 is taken for a depth").containsExactly("17 cycle-left-on");
	}

	@Test
	void aDigitThatLandsBesideAnotherHole() {
		assertThat(loud("G84 Z-14 R5 F520\nX50\nX48 Y40\nX10\nG80\n")).containsExactly("15 hole-off-position");
		assertThat(loud("G84 Z-14 R5 F520\nX12\nX50 Y40\nX10\nG80\n")).as("X50 Y10 is left over").containsExactly("14 hole-off-position");
	}

	/** X30 typed for X10: the tap goes into the dowel's hole, and its own is left over. */
	@Test
	void aTapInTheDowelsHole() {
		String dowel = HEAD.replace("T2 M6 (M6X1 TAP)",
				"T4 M6 (DRILL 6.0)\nG0 X30 Y10 S2500 M3\nG43 H4 Z10\nG81 Z-18 R3 F300\nG80\nT2 M6 (M6X1 TAP)")
				+ "G84 X%s Y10 Z-14 R5 F520\nX50\nY40\nX10\nG80\nM30\n";

		assertThat(said(dowel.formatted("10"))).isEmpty();
		assertThat(said(dowel.formatted("30"))).containsExactly("18 drill-too-big");
	}

	@Test
	void stepsThatAddUp() {
		String row = "G81 X0 Y0 Z-18 R3 F300\nG91 X10 L4\nG80 G90\n";
		String program = "G21 G90 G94 G17\nT1 M6 (DRILL 5.0)\nS2500 M3\nG54 G43 H1 Z10\n" + row
				+ "T2 M6 (M6X1 TAP)\nS520 M3\nG43 H2 Z10\nG84 X0 Y0 Z-14 R5 F520\nG91 X12 L4\nG80 G90\nM30\n";

		assertThat(said(program.replace("X12", "X10"))).isEmpty();
		assertThat(said(program)).as("2 off, then 4").containsExactly("12 hole-missing");
	}

	@Test
	void oneMoreZeroInS() {
		assertThat(SampleCheck.loud((HEAD + "G84 Z-14 R5 F520\nX50\nY40\nX10\nG80\nM30\n").replace("S520", "S52000"))).singleElement()
				.satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("feed-off-pitch");
			assertThat(finding.message()).endsWith("; S520, if S52000, too fast for any tap, is a slip, else F52000");
		});
	}

	/** In and out by G1 without M4 between: a self-reversing head may do it, a compression holder that is named does not. */
	@Test
	void theTurnBackLeftOutUnderAHolder() {
		String taps = HEAD.replace("M6X1 TAP", "M6X1 TAP %s")
				+ "G0 Z5\nG1 Z-14 F520\nG1 Z5\nG0 X50\nG1 Z-14\nG1 Z5\nG0 Y40\nG1 Z-14\nG1 Z5\nG0 X10\nG1 Z-14\nG1 Z5\nM30\n";

		assertThat(said(taps.formatted(""))).doesNotContain("15 spindle-wrong-way");
		assertThat(said(taps.formatted("IN TENSION COMPRESSION HOLDER"))).contains("15 spindle-wrong-way");
	}

	@Test
	void everyTapWithoutM3IsAHabit() {
		String two = HEAD.replace("S520 M3", "S520")
				+ "G84 Z-14 R5 F520\nX50\nG80\nT3 M6 (M6X1 TAP)\nG0 X50 Y40 S520 M3\nG43 H3 Z10\nG84 Z-14 R5 F520\nX10\nG80\nM30\n";

		assertThat(said(two)).containsExactly("13 spindle-not-turning");
		assertThat(said(two.replace("Y40 S520 M3", "Y40 S520"))).isEmpty();
	}

	@Test
	void repeatsThatWereMeantForIncrementalPositions() {
		String row = """
				G91 G81 X15 Z-18 R-7 F240 L4
				G80 G90
				G0 Z10
				T2 M6 (M5 TAP)
				G0 X0 Y0 S500 M3
				G43 H2 Z10
				""";
		String program = "G21 G90 G94 G17\nT1 M6 (DRILL 4.2)\nG54 G0 X0 Y0 S2500 M3\nG43 H1 Z10\n" + row
				+ "G91 G84 X15 Z-14 R-4 F400 L4\nG80 G90\nM30\n";

		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("G91 G84", "G90 G84"))).containsExactly("11 plane-heights-wrong");
	}

	@Test
	void aLoopWithoutItsCount() {
		String loop = """
				#1=0
				WHILE [#1 LT 2] DO1
				G84 X[10+#1*40] Y10 Z-14 R5 F520
				#1=#1+1
				END1
				G84 X50 Y40
				X10
				G80
				""";

		assertThat(loud(loop)).isEmpty();
		assertThat(loud(loop.replace("#1=#1+1\n", ""))).singleElement().asString().endsWith("not-followed");
	}

	@Test
	void aLeftHandTapInTheRightHandHole() {
		String pair = """
				G21 G90 G94 G17
				T2 M6 (DRILL 14)
				G54 G0 X0 Y0 S800 M3
				G43 H2 Z30
				G81 Z-46 R3 F120
				X60
				G80
				T7 M6 (M16X2 TAP)
				G0 X0 Y0 S200 M3
				G43 H7 Z30
				G84 Z-36 R8 F400
				G80
				T8 M6 (M16X2 LH TAP)
				G0 X60 Y0 S200 M4
				G43 H8 Z30
				G74 Z-36 R8 F400
				G80
				M30
				""";

		assertThat(said(pair)).isEmpty();
		assertThat(SampleCheck.loud(pair.replace("X60 Y0 S200 M4", "X0 Y0 S200 M4"))).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("threaded-twice");
			assertThat(finding.message()).startsWith("T8 threads M16x2-LH at X0 Y0, where T7 has cut M16x2: the second thread "
					+ "destroys the first");
		});
	}

	@Test
	void aThreadBelowAnotherInASteppedHole() {
		assertThat(said("""
				G21 G90 G94 G17
				T1 M6 (DRILL 8.5)
				G54 G0 X0 Y0 S1100 M3
				G43 H1 Z30
				G81 Z-40 R3 F150
				G80
				T2 M6 (M10X1.5 TAP)
				G0 X0 Y0 S300 M3
				G43 H2 Z30
				G84 Z-15 R8 F450
				G80
				T3 M6 (M10X1.5 BOTTOMING TAP)
				G0 X0 Y0 S300 M3
				G43 H3 Z30
				G84 Z-15 R8 F450
				G80
				M30
				""")).as("a second tap of the same thread follows the first").isEmpty();
	}
}
