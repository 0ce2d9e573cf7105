package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;
import static truelead.checker.Samples.loud;

import org.junit.jupiter.api.Test;

/** What stands beside a tool, and what it leaves open: depths said at the tap, comments above a tool's own T, calls that are not here. */
class SaidAtTheToolTest {

	private static final String DRILLED = """
			G21 G90 G17 G94
			(6.8 DRILL)
			T1
			M6
			G54 G0 X10 Y10 S1200 M3
			G43 H1 Z20
			G81 Z-24 R2 F150
			X30
			G80
			(TAP M8 15 DEEP)
			T2
			M6
			G0 X10 Y10 S400 M3
			G43 H2 Z20
			G84 Z-15 R5 F500
			X30
			G80
			M30""";

	private static void silent(String program) {
		assertThat(heard(program)).isEmpty();
	}

	private static void once(String program, String what) {
		assertThat(heard(program)).singleElement().asString().contains(what);
	}

	@Test
	void theDepthSaidAtATapMayBeThatOfItsTip() {
		silent(DRILLED);
		once(DRILLED.replace("G84 Z-15", "G84 Z-14"), "thread-too-short the tap goes 14 mm deep");
		once(DRILLED.replace("TAP M8 15 DEEP", "TAP M8-6H 15 DEEP"), "thread-too-short the tap goes 15 mm deep");
		once(DRILLED.replace("TAP M8 15 DEEP", "TAP 2X M8 15 DEEP"), "thread-too-short the tap goes 15 mm deep");
		once(DRILLED.replace("TAP M8 15 DEEP", "TAP M8 15 FULL THREAD"), "thread-too-short the tap goes 15 mm deep");
		once(DRILLED.replace("(TAP M8 15 DEEP)", "(TAP M8)\n(THREAD: M8X1.25, DEPTH 15)"), "thread-too-short the tap goes 15 mm deep");
	}

	@Test
	void aStatementWithNumbersMayHaveDrilledTheHoles() {
		String more = DRILLED.replace("X30\nG80\nM30", "X30\nX50\nG80\nM30");
		once(more, "hole-missing nothing in this program makes a hole at X50 Y10");
		silent(more.replace("G80\n(TAP", "G80\nDRILL_ROW(10,3)\n(TAP"));
		silent(more.replace("G21 G90", "WARM_UP(3)\nG21 G90").replace("G80\n(TAP", "G80\nDRILL_ROW(10,3)\n(TAP"));
	}

	@Test
	void aThroughHoleWhoseWallNobodyStatesIsNoSureBreakage() {
		String plate = DRILLED.replace("15 DEEP", "THRU").replace("G81 Z-24", "G81 Z-15");
		silent(plate.replace("G84 Z-15", "G84 Z-22"));
		String deep = plate.replace("G84 Z-15", "G84 Z-30");
		once(deep, "17.04 mm above the tap's end, more than a tap's lead and the way that is left free below a wall");
		assertThat(loud(deep)).singleElement().satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.WARNING));
		assertThat(loud(deep.replace("THRU", "THRU 20 THICK"))).singleElement().satisfies(finding -> assertThat(finding.severity())
				.isEqualTo(Severity.ERROR));
	}

	/** The first tool's comment stands above a T in a block of its own. */
	@Test
	void theFirstToolsCommentAboveItsTSpeaksOfIt() {
		once("""
				G21 G90 G17 G94
				(THREAD MILL D16 P2)
				T1
				M6
				G54 G0 X10 Y10 S1500 M3
				G43 H1 Z20
				G0 Z-20
				G1 X13 F100
				G3 X13 Z-18 I-3 J0
				G1 X10
				G0 Z20
				(DRILL 20)
				T2
				M6
				G0 X10 Y10 S400 M3
				G43 H2 Z20
				G81 Z-40 R2 F60
				G80
				M30""", "threaded-before-drilled");
	}

	@Test
	void underAnotherPlaneNoDepthIsInchesAndNoReachTooShort() {
		String g18 = DRILLED.replace("(TAP M8 15 DEEP)", "(TAP M8)\n(TOOL: T2, REACH 12)\n(THREAD: M8X1.25, DEPTH 10)")
				.replace("G84 Z-15 R5", "G84 X10 Y10 Z-15 R5");
		once(g18.replace("G0 X10 Y10 S400", "G18 G0 X10 Y200 S400").replace("G84 X10 Y10", "G84 X10 Y200"), "plane-wrong");
	}

	@Test
	void theTitlesOfLocalSubprogramsBehindTheProgramSpeakOfNoToolBeforeIt() {
		String drill = """
				(T2 4.2 DRILL)
				(T3 M5 TAP)
				G21 G17 G90 G40 G80 G94
				T2 M6
				S3500 M3
				G54 G0 X0 Y0
				G43 H2 Z80.
				M97 P600
				G0 Z120.
				T3 M6
				S500 M3
				G54 G0 X0 Y0
				G43 H3 Z80.
				M97 P700
				G0 Z120.
				M30
				N600 (DRILL)
				G83 G98 X10. Z-18. R3. Q4. F350
				X30.
				G80
				M99
				N700 (TAP)
				G84 G98 X10. Z-11. R5. F400
				X30.
				G80
				M99
				""";
		assertThat(loud(drill)).isEmpty();
		assertThat(loud(drill.replace("F400", "F500"))).singleElement().extracting(Finding::rule).isEqualTo("feed-off-pitch");
	}

	@Test
	void aDepthThatTheDrawingAsksForIsNoWarning() {
		String tapped = """
				G20 G90 G80 G17
				(DRILL #29 .136)
				T2 M6
				G0 G54 X.5 Y.5 S2400 M3
				G43 H2 Z1.
				G83 G98 Z-.85 R.1 Q.1 F7.
				G80
				(TAP 8-32 .5 DEEP)
				T3 M6
				G0 G54 X.5 Y.5 S480 M3
				G43 H3 Z1.
				G84 G98 Z-.6 R.2 F15.
				G80
				M30
				""";
		assertThat(loud(tapped)).isEmpty();
		assertThat(loud(tapped.replace(".5 DEEP", ".9 DEEP").replace("Z-.85", "Z-1.25").replace("Z-.6", "Z-1.")))
				.singleElement().extracting(Finding::rule).isEqualTo("deep-thread");
	}

	@Test
	void aLineOfTheListThatNamesDrillAndTapIsOfTheOneThatDoesTheWork() {
		String hole = """
				(T15 - 5.0 CARBIDE DRILL - M6 TAP)
				(T16 - M6X1.0 CUT TAP)
				G21 G17 G90 G40 G80 G94
				T15 M6
				G54 G0 X0 Y0 S3000 M3
				G43 H15 Z50.
				G83 G98 Z-20. R2. Q5. F450.
				G80
				T16 M6
				G54 G0 X0 Y0 S600 M3
				G43 H16 Z50.
				G84 G98 Z-14. R4. F600.
				G80
				M30
				""";
		assertThat(loud(hole)).isEmpty();
		assertThat(loud(hole.replace("5.0 CARBIDE", "5.5 CARBIDE"))).singleElement().extracting(Finding::rule)
				.isEqualTo("drill-too-big");
	}
}
