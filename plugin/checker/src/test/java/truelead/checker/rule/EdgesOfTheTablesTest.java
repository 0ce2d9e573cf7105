package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;
import static truelead.checker.Samples.one;

import org.junit.jupiter.api.Test;

/** Threads at the edges of the tables in the hands of several shops, and slips too small or too plain for the usual way of looking. */
class EdgesOfTheTablesTest {

	private static final String SMALL = """
			G21 G90 G17 G94
			T1 M6 (DRILL 1.75)
			G54 G0 X10 Y10 S3000 M3
			G43 H1 Z20
			G81 X10 Y10 Z-4.4 R2 F100
			G81 X20 Y10 Z-4.4 R2 F100
			G81 X30 Y10 Z-4.4 R2 F100
			G80
			T2 M6 (TAP M2X0.25)
			G0 X10 Y10 S700 M3
			G43 H2 Z20
			G84 Z-3 R5 F175
			X20
			X30
			G80
			M30""";

	private static void silent(String program) {
		assertThat(heard(program)).isEmpty();
	}

	/** ISO 965-1 has no 6H at pitch 0.25, nor 5H at 0.2: minor diameter 1.729 to 1.785 mm by 5H, M1.2x0.2 0.983 to 1.021 by 4H. */
	@Test
	void aPitchTooFineForTheUsualClassHasTheNextFinerOne() {
		silent(SMALL);
		one(SMALL.replace("DRILL 1.75", "DRILL 1.86"), "drill-too-big", "the largest minor diameter of M2x0.25 (5H, assumed) is 1.785 mm");
		one(SMALL.replace("DRILL 1.75", "DRILL 1.6"), "drill-too-small", "M2x0.25 (5H, assumed)");
		String finest = SMALL.replace("M2X0.25", "M1.2X0.2").replace("DRILL 1.75", "DRILL 1").replace("F175", "F140");
		silent(finest);
		one(finest.replace("DRILL 1)", "DRILL 1.1)"), "drill-too-big", "M1.2x0.2 (4H, assumed) is 1.021 mm");
	}

	@Test
	void aFeedByAPitchOfThreeDigitsIsNoSlip() {
		String inch = """
				G20 G90 G17 G94
				T1 M6 (DRILL 29)
				G54 G0 X1. Y1. S1200 M3
				G43 H1 Z1.
				G81 Z-.6 R.1 F5.
				G80
				T2 M6 (8-32 TAP)
				G0 X1. Y1. S300 M3
				G43 H2 Z1.
				G84 Z-.4 R.2 F9.39
				G80
				M30""";
		silent(inch);
		silent(SMALL.replace("F175", "F175.2"));
		one(inch.replace("F9.39", "F9.41"), "feed-off-pitch", "F9.41 at S300 advances 0.03137 in a turn");
		one(SMALL.replace("F175", "F176"), "feed-off-pitch", "F176 at S700");
	}

	@Test
	void ofHolesThatEachSayTheirCycleOneIsForgotten() {
		one(SMALL.replace("F175\nX20", "F175"), "hole-skipped", "the hole at X20 Y10 is drilled with the 2 that T2 threads");
		silent(SMALL.replace("F175\nX20", "F175").replace("G81 X20 Y10", "G80\nG0 Z5\nG81 X20 Y10").replace("G81 X30", "G80\nG0 Z5\nG81 X30"));
	}

	@Test
	void aSignLostNearTheSurfaceIsNoUnit() {
		one(SMALL.replace("G84 Z-3", "G84 Z3"), "plane-heights-wrong", "R is at Z5 and the bottom at Z3");
		one(SMALL.replace("G84 Z-3 R5", "G84 Z5.3 R5"), "plane-heights-wrong", "the bottom is not below R");
		one(SMALL.replace("G84 Z-3 R5", "G84 Z-3 R-2.8"), "plane-heights-wrong", "R is inside the stock");
		String move = SMALL.replace("G84 Z-3 R5 F175\nX20\nX30\nG80", "G0 Z5\nG33.1 Z3.3 K0.25\nG0 X20\nG33.1 Z3.3 K0.25\nG0 X30\nG33.1 Z3.3 K0.25");
		one(move, "plane-heights-wrong", "the move goes from Z5 to Z3.3");
		silent(move.replace("Z3.3", "Z-3.3"));
	}

	/** The comment stands behind the T, and M6 below; what the name leaves open, the comment says. */
	@Test
	void aNamedToolsCommentIsReadToo() {
		String named = """
				G710 G17 G90 G54 G94
				T="DRILL" ; DRILL 5.55
				M6
				S1100 M3
				G0 X12 Y10 Z50
				G81 Z-18 R2 F100
				G80
				T="TAP" ; M6 FORM TAP
				M6
				S600 M3
				G0 X12 Y10 Z50
				G84 Z-12 R5 F600
				G80
				M30""";
		silent(named);
		one(named.replace("DRILL 5.55", "DRILL 5.9"), "drill-too-big", "5.9 mm for forming M6x1");
		one(named.replace("FORM TAP", "CUT TAP"), "drill-too-big", "M6x1 (6H, assumed)");
	}
}
