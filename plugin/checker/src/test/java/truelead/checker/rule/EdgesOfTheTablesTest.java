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
		silent(SMALL.replace("F175\nX20", "F175").replace("G81 X20 Y10", "G80\nG0 Z5\nG81 X20 Y10")
				.replace("G81 X30", "G80\nG0 Z5\nG81 X30"));
	}

	@Test
	void aSignLostNearTheSurfaceIsNoUnit() {
		one(SMALL.replace("G84 Z-3", "G84 Z3"), "plane-heights-wrong", "R is at Z5 and the bottom at Z3");
		one(SMALL.replace("G84 Z-3 R5", "G84 Z5.3 R5"), "plane-heights-wrong", "the bottom is not below R");
		one(SMALL.replace("G84 Z-3 R5", "G84 Z-3 R-2.8"), "plane-heights-wrong", "R is inside the stock");
		String move = SMALL.replace("G84 Z-3 R5 F175\nX20\nX30\nG80",
				"G0 Z5\nG33.1 Z3.3 K0.25\nG0 X20\nG33.1 Z3.3 K0.25\nG0 X30\nG33.1 Z3.3 K0.25");
		one(move, "plane-heights-wrong", "the move goes from Z5 to Z3.3");
		silent(move.replace("Z3.3", "Z-3.3"));
	}

	private static final String INCH = """
			G20 G90 G17 G94
			(.75 END MILL)
			T1 M6
			G54 G0 X1. Y1. S1200 M3
			G43 H1 Z1.
			G82 Z-.5 R.1 F5.
			X3.
			G80
			(DRILL 57/64)
			T2 M6
			G0 X1. Y1. S400 M3
			G43 H2 Z1.
			G83 Z-3.2 R.1 Q.2 F4.
			X3.
			G80
			(1-8 UNC TAP)
			T3 M6
			G0 X1. Y1. S80 M3
			G43 H3 Z1.
			G84 Z-2.2 R.5 F10.
			X3.
			G80
			M30""";

	@Test
	void aHairOverTheLimitIsNoSlipAndWhereNoneIsKnownLittleThreadIs() {
		silent(INCH);
		one(INCH.replace("57/64", "29/32"), "drill-too-big", "the largest minor diameter of 1-8 UNC");
		String straight = INCH.replace("DRILL 57/64", "DRILL 3/4").replace("1-8 UNC", "1/2-14 NPSM").replace("S80 M3", "S140 M3")
				.replace("(.75 END MILL)", "(.7 END MILL)");
		silent(straight);
		one(straight.replace("DRILL 3/4", "DRILL 53/64"), "drill-too-big", "% of thread left in 1/2-14 NPSM");
	}

	/** Per revolution no feed tells of a digit too many in S: 1-8 at 128 m/min, four times as fast as its drill. */
	@Test
	void aTapThatTurnsFasterThanItsDrill() {
		String turn = INCH.replace("S80 M3", "G95 S80 M3").replace("F10.", "F.125").replace("M30", "G94\nM30");
		silent(turn);
		one(turn.replace("S80 M3", "S1600 M3"), "speed-over-limit", "4 times as fast as the drill of its hole, S400");
		silent(turn.replace("S80 M3", "S600 M3"));
	}

	@Test
	void belowACounterboreTheTapStartsWhereTheDrillDoes() {
		String sunk = INCH.replace("(.75 END MILL)", "(1.25 END MILL)").replace("G83 Z-3.2 R.1", "G83 Z-3.2 R-.4")
				.replace("Z-2.2 R.5", "Z-2.2 R-.1");
		silent(sunk);
		one(sunk.replace("Z-2.2 R-.1", "Z-2.2 R-.7"), "plane-heights-wrong", "R is inside the stock, whose surface is at Z-0.5");
		String small = sunk.replace("1.25 END MILL", ".625 END MILL C'BORE").replace("57/64", "5/16").replace("1-8 UNC", "3/8-16")
				.replace("F10.", "F5.").replace("R-.1", "R-.25").replace("Z-2.2", "Z-1.25").replace("Z-3.2", "Z-1.7");
		silent(small);
		one(small.replace("R-.25", "R-.75"), "plane-heights-wrong", "R is 0.35 in below Z-0.4, where the drill starts");
	}

	/** What stands at the tool says no more than TAP; its list says that it forms. */
	@Test
	void aListSaysThatATapForms() {
		String forms = SMALL.replace("G21 G90", "(T2 FORM TAP M2X0.4)\nG21 G90").replace("TAP M2X0.25", "M2 TAP").replace("F175", "F280")
				.replace("DRILL 1.75", "DRILL 1.82");
		silent(forms);
		one(forms.replace("FORM TAP", "CUT TAP"), "drill-too-big", "M2x0.4 (6H, assumed)");
	}

	/** .55 in are 13.97 mm; two turns are no thread. */
	@Test
	void depthsSaidInTheOtherUnitAndDepthsWithoutAThread() {
		String metric = SMALL.replace("DRILL 1.75", "DRILL #7").replace("Z-4.4", "Z-21").replace("TAP M2X0.25", "TAP 1/4-20, .55 DEEP")
				.replace("G84 Z-3 R5 F175", "G84 Z-14 R5 F889");
		silent(metric);
		one(metric.replace("Z-14", "Z-12"), "thread-too-short", "called out are 13.97 mm");
		one(SMALL.replace("G84 Z-3 ", "G84 Z-.5 "), "thread-too-short", "no full turn is cut");
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
