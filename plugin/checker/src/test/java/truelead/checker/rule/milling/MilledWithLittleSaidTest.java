package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;
import static truelead.checker.Samples.one;

import org.junit.jupiter.api.Test;

/**
 * Milled threads of which a programmer says as little as will do: a size in the title, a bare word at the cutter, a bore without a drill
 * before it.
 */
class MilledWithLittleSaidTest {

	private static final String PORT = """
			O1913(G1/4)
			G21G17G40G80G90G54
			T1M6
			G0X12.5Y8.S2200M3
			G43H1Z30.M8
			G83Z-22.R2.Q4.F200.
			G80Z30.
			T2M6
			G0X12.5Y8.S4000M3
			G43H2Z30.
			G1Z-13.334F1000.
			G91
			G1G41D2X1.Y-5.58F300.
			G3X5.58Y5.58Z.334R5.58F90.
			G3I-6.58Z1.337
			G3X-5.58Y5.58Z.334R5.58
			G1G40X-1.Y-5.58
			G90
			G0Z30.
			M30
			""";
	private static final String NUT = """
			O4805
			(M48X5 - SPINDLE NUT)
			T2 M6 (INDEXABLE DRILL 43)
			G21 G17 G40 G80 G90
			G54 G0 X0 Y0 S900 M3
			G43 H2 Z30.
			G81 Z-52. R5. F80.
			G80
			T8 M6 (THREADMILL D30 SINGLE INSERT)
			G0 X0 Y0 S1500 M3
			G43 H8 Z30.
			G0 Z-31.25
			G91
			G3 X9. Z1.25 I4.5 F200
			"""
			+ "G3 I-9. Z5.\n".repeat(6) + "G3 X-9. Z1.25 I-4.5\nG90 G0 Z30.\nM30\n";
	private static final String BORED = """
			(SPINDELMUTTER TR30X6)
			G21 G17 G40 G80 G90
			T6 M6 (BOHRSTANGE D24.2)
			G54 G0 X0 Y0 S900 M3
			G43 H6 Z20.
			G85 Z-62. R2. F90.
			G80
			T14 M6 (TRAPEZ-GEWINDEFRAESER D18)
			G0 X0 Y0 S1400 M3
			G43 H14 Z20.
			G0 Z-64.5
			G91
			G3 X6.5 Z1.5 I3.25 F200
			"""
			+ "G3 I-6.5 Z6.\n".repeat(11) + "G3 X-6.5 Z1.5 I-3.25\nG90 G0 Z20.\nM30\n";
	private static final String FLANGE = """
			; FLANSCH 2X M8
			N1 G17 G90 G71 G94
			N2 T1 M6 ; VHM-BOHRER 6.8
			N3 S3000 M3 F350
			N4 G54 G0 X0 Y0 Z50 D1
			N5 MCALL CYCLE81(20,0,2,-24)
			N6 X45 Y0
			N7 X0 Y45
			N8 MCALL
			N9 T2 M6 ; GEWINDEFRAESER D6 KAMM
			N10 S5000 M3
			N11 G54 G0 X0 Y0 Z50 D1
			N12 FOR R1=0 TO 1
			N13 TRANS X=45*COS(R1*90) Y=45*SIN(R1*90)
			N14 G0 X0 Y0
			N15 Z2
			N16 G1 Z-16.313 F800
			N17 G3 X1.02 Y0 Z-16 I.51 J0 F100
			N18 G3 X1.02 Y0 Z-14.75 I-1.02 J0
			N19 G3 X0 Y0 Z-14.438 I-.51 J0
			N20 G0 Z20
			N21 ENDFOR
			N22 TRANS
			N23 G0 Z100 M5
			N24 M30
			""";

	@Test
	void aHelixUpBesideItsPathIsTheThreadOfTheTitle() {
		assertThat(loud(PORT)).isEmpty();
		one(PORT.replace("G41", "G42"), "comp-missing", "G42 puts the cutter outside the wall of G 1/4");
		one(PORT.replace("Z1.337", "Z1."), "helix-off-pitch", "advances 1.000 mm a turn, G 1/4 needs 1.337");
		one(PORT.replace("G40X", "X"), "comp-left-on", "G41");
		one(PORT.replace("S4000M3", ""), "spindle-not-turning", "M6 stopped the spindle before T2 cuts");
	}

	@Test
	void aNutIsThePartAndItsThreadIsMilled() {
		assertThat(loud(NUT)).isEmpty();
		one(NUT.replace("DRILL 43", "DRILL 40"), "drill-too-small", "M48x5");
		one(NUT.replace("I-9.", "I-8.5").replace("X9.", "X8.5").replace("I4.5", "I4.25").replace("X-9.", "X-8.5").replace("I-4.5",
				"I-4.25"), "helix-off-size", "cuts 47 mm, M48x5 needs at least 48 mm");
		one(NUT.replace("M48X5", "M48X3"), "helix-off-pitch", "M48x3 needs 3.000");
	}

	/** A bar opens a hole that goes on below; where the thread's depth is said, so far it must be bored. */
	@Test
	void aBarAloneMakesNoBottom() {
		assertThat(loud(BORED)).isEmpty();
		one(BORED.replace("TR30X6", "TR30X6 64 TIEF"), "cutter-hits-bottom",
				"the cutter's end goes 64.5 mm deep, the hole has its full diameter down to 62 mm");
		one(BORED.replace("Z-62.", "Z-42."), "cutter-hits-bottom", "22.5 mm into the bottom");
	}

	@Test
	void placesShiftedByNameAreThoseOfTheHoles() {
		assertThat(loud(FLANGE)).isEmpty();
		one(FLANGE.replace("Y=45*SIN", "Y=54*SIN"), "hole-missing", "X0 Y54");
		one(FLANGE.replace("-24)", "-14)"), "cutter-hits-bottom", "16.31 mm deep");
		one(FLANGE.replace("BOHRER 6.8", "BOHRER 8.6"), "drill-too-big", "M8x1.25");
	}

	@Test
	void anotherArcForTheLeadInIsSaidOnce() {
		one(NUT.replace("Z1.25 I4.5 F200", "Z1.25 R20. F200"), "entry-straight", "the lead-in arc meets the wall at 77 degrees");
	}

	@Test
	void aMillThatNoFeedMovesStops() {
		one("G21 G17 G40 G80 G90 G94\n(M30X2)\nT7 M6 (THREAD MILL D16 SINGLE)\nG54 G0 X0 Y0 S1800 M3\nG43 H7 Z20.\nG0 Z-15.5\n"
				+ "G3 X7. Y0 Z-15. I3.5 J0\n" + "G91 G3 I-7. Z2.\n".repeat(8) + "G3 X-7. Z.5 I-3.5\nG90 G0 Z20.\nM30\n", "feed-missing",
				"no F is in force where T7 mills the thread");
	}

	@Test
	void aShallowHoleIsSaidOnceOfTheToolsThatRoughAndFinishInIt() {
		String rough = NUT.substring(NUT.indexOf("T8 M6"), NUT.indexOf("M30\n"));
		String both = NUT.replace("M30\n", rough.replace("T8 M6", "T9 M6").replace("H8", "H9") + "M30\n");
		assertThat(loud(both)).isEmpty();
		one(both.replace("Z-52.", "Z-30."), "cutter-hits-bottom", "the cutter's end goes 31.25 mm deep");
	}

	@Test
	void aTaperBoltIsLeftOutwardsToo() {
		String good = """
				(3/4-14 NPT EXTERNAL - NIPPLE END)
				G20 G17 G40 G80 G90
				T7 M6 (3/4 THREAD MILL 1 TOOTH)
				G54 G0 X2. Y0. S1800 M3
				G43 H7 Z1.
				Z.0714
				G1 X.828 Y0. F10.
				G2 X.8303 Z0. I-.828 J0.
				G2 X.8325 Z-.0714 I-.8303 J0.
				G2 X.8347 Z-.1429 I-.8325 J0.
				G2 X.837 Z-.2143 I-.8347 J0.
				G2 X.8392 Z-.2857 I-.837 J0.
				G2 X.8414 Z-.3571 I-.8392 J0.
				G2 X.8437 Z-.4286 I-.8414 J0.
				G2 X.8459 Z-.5 I-.8437 J0.
				G1 X2. F30.
				G0 Z1.
				M30
				""";
		assertThat(loud(good)).isEmpty();
		one(good.replace("G1 X2. F30.\n", ""), "exit-scars-thread", "the cutter leaves along the axis 0.5 in below the face");
	}

	/** A comb of 0.48 in led as one of 0.6 in does not even come to the crests. */
	@Test
	void aTaperCombIsHeldToTheConeAsFarAsItIsKnown() {
		String good = """
				(1/2-14 NPT)
				G20 G17 G40 G80 G90
				T3 M6 (45/64 DRILL)
				G54 G0 X0. Y0. S650 M3
				G43 H3 Z1.
				G83 Z-1.2 R.1 Q.2 F5.
				G80
				T8 M6 (.600 NPT THREAD MILL 14 TPI COMB)
				G0 X0. Y0. S2200 M3
				G43 H8 Z1.
				G1 Z-.6379 F30.
				G3 X.0985 Y0. Z-.62 I.0493 J0. F3.
				G3 X0. Y.0991 Z-.6021 I-.0985 J0.
				G3 X-.0996 Y0. Z-.5843 I0. J-.0991
				G3 X0. Y-.1002 Z-.5664 I.0996 J0.
				G3 X.1007 Y0. Z-.5486 I0. J.1002
				G3 X0. Y0. Z-.5307 I-.0504 J0.
				G0 Z1.
				M30
				""";
		assertThat(loud(good)).isEmpty();
		one(good.replace(".600 NPT", ".480 NPT"), "helix-off-size", "1/2-14 NPT has about 0.8356 in there");
	}

	/** X1.135 for X5.135 is no taper that is off, but one arc that does not close. */
	@Test
	void anEndFarBesideTheConeIsThatOfItsArc() {
		String good = """
				(RC 3/4 - VERTEILER)
				G21 G17 G40 G80 G90
				T1 M6 (BOHRER 24.0)
				G54 G0 X0 Y0 S900 M3
				G43 H1 Z20
				G81 Z-32 R2 F120
				G80
				T2 M6 (GEWINDEFRAESER D16 EINZAHNIG)
				G0 X0 Y0 S2600 M3
				G43 H2 Z20
				G1 Z1.361 F1000
				G2 X5.249 Y0 Z0.907 I2.6244 J0 F180
				G2 X5.192 Y0 Z-0.907 I-5.249 J0
				G2 X5.135 Y0 Z-2.721 I-5.192 J0
				G2 X5.079 Y0 Z-4.536 I-5.135 J0
				G2 X5.022 Y0 Z-6.35 I-5.079 J0
				G2 X4.965 Y0 Z-8.164 I-5.022 J0
				G2 X4.909 Y0 Z-9.979 I-4.965 J0
				G2 X4.852 Y0 Z-11.793 I-4.909 J0
				G2 X4.795 Y0 Z-13.607 I-4.852 J0
				G2 X4.739 Y0 Z-15.421 I-4.795 J0
				G2 X0 Y0 Z-15.875 I-2.3693 J0
				G0 Z20
				M30
				""";
		assertThat(loud(good)).isEmpty();
		one(good.replace("X5.135 Y0", "X1.135 Y0"), "arc-not-closed", "starts 5.192 mm from its centre and ends 1.135 mm from it");
	}

	/** The mill that breaks the edge makes a circle wider than the thread: the hole is the drill's. */
	@Test
	void anEdgeBrokenByAMillIsNotTheHole() {
		String good = NUT.replace("M48X5 - SPINDLE NUT", "M48X5, 25 DEEP")
				.replace("T8 M6", "T3 M6 (DEBURR TOOL 90 DEG D16)\nG0 X0 Y0 S3000 M3\nG43 H3 Z30.\nG1 Z-8.5 F1000\nG1 X16.5 F400\n"
						+ "G3 I-16.5\nG1 X0\nG0 Z30.\nT8 M6");
		assertThat(loud(good)).isEmpty();
		one(good.replace("D30", "D28"), "helix-off-size", "cuts 46 mm, M48x5 needs at least 48 mm");
	}

	/** Level 0 lies under the part, and nothing says where its top is: neither the core nor the thread goes below it. */
	@Test
	void aCoreThatIsMilledTooLiesWhereTheThreadDoes() {
		String core = """
				G21 G90 G17 G40
				T1 M6 (END MILL D16)
				S3000 M3
				G0 X50. Y40.
				G43 H1 Z175.
				G0 Z151.
				G1 X55.25 F400.
				G3 I-5.25 Z146.
				G3 I-5.25 Z141.
				G3 I-5.25 Z136.
				G3 I-5.25 Z131.
				G3 I-5.25 Z126.
				G3 I-5.25
				G1 X50.
				G0 Z175.
				T2 M6 (M30X3.5 THREAD MILL D19.5)
				S1300 M3
				G0 X50. Y40.
				G43 H2 Z175.
				G0 Z128.
				G41 G1 X52.625 Y37.375 D2 F55.
				G3 X55.25 Y40. Z128.875 I0. J2.625
				G3 X55.25 Y40. Z132.375 I-5.25 J0.
				G3 X55.25 Y40. Z135.875 I-5.25 J0.
				G3 X55.25 Y40. Z139.375 I-5.25 J0.
				G3 X55.25 Y40. Z142.875 I-5.25 J0.
				G3 X55.25 Y40. Z146.375 I-5.25 J0.
				G3 X55.25 Y40. Z149.875 I-5.25 J0.
				G3 X52.625 Y42.625 Z150.75 I-2.625 J0.
				G40 G1 X50. Y40.
				G0 Z175.
				M30
				""";
		assertThat(loud(core)).isEmpty();
	}
}
