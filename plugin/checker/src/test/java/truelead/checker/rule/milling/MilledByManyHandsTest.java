package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;
import static truelead.checker.Samples.one;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Slips put into milled threads as different shops write them: each is one finding at its block. */
class MilledByManyHandsTest {

	/** A counterbore, the bore behind it and the thread with its chamfer; the tap hole of M24x1.5 is 22.5 (ISO 2306, from memory). */
	static final String STEPPED = """
			G21 G90 G17 G40
			T1 M6 (DRILL 20)
			G54 G0 X0 Y0 S700 M3
			G43 H1 Z10
			G81 Z-40 R2 F120
			G80
			T2 M6 (END MILL 16)
			G0 X0 Y0 S3000 M3
			G43 H2 Z10
			G1 Z0.5 F1000
			G1 X8 F600
			G3 I-8 Z-3
			G3 I-8 Z-6
			G3 I-8
			G1 X3.25
			G3 I-3.25 Z-18
			G3 I-3.25 Z-30
			G3 I-3.25
			G1 X0
			G0 Z10
			T3 M6 (THREAD MILL 17 M24X1.5 COMB WITH CHAMFER 90 DEG)
			G0 X0 Y0 S2200 M3
			G43 H3 Z10
			G1 Z-24.375 F1000
			G3 X3.5 Y0 Z-24 I1.75 F150
			G3 I-3.5 Z-22.5
			G3 X0 Y0 Z-22.125 I-1.75
			G1 Z-21 F1000
			G1 X2.6 F150
			G3 I-2.6
			G1 X0
			G0 Z10
			M30
			""";
	private static final String ROW = """
			G21 G90 G17 G40
			T1 M6 (DRILL 18.5)
			G54 G0 X0 Y0 S800 M3
			G43 H1 Z10
			G81 Z-30 R2 F140
			X50
			X100
			G80
			T2 M6 (THREAD MILL D14 M20X1.5)
			G54 G0 X0 Y0 S2600 M3
			G43 H2 Z10
			G0 Z-18.375
			G91 G3 X3 Z0.375 I1.5 F140
			G3 I-3 Z1.5
			G3 X-3 Z0.375 I-1.5
			G90 G0 Z10
			G0 X50
			G0 Z-18.375
			G91 G3 X3 Z0.375 I1.5
			G3 I-3 Z1.5
			G3 X-3 Z0.375 I-1.5
			G90 G0 Z10
			G0 X100
			G0 Z-18.375
			G91 G3 X3 Z0.375 I1.5
			G3 I-3 Z1.5
			G3 X-3 Z0.375 I-1.5
			G90 G0 Z10
			M30
			""";
	private static final String BOSS = """
			G21 G90 G17 G40
			(M40X1.5 STUD)
			T8 M6 (THREAD MILL D16 P1.5 SINGLE)
			S2000 M3
			G54 G0 X40 Y0
			G43 H8 Z50
			(M40X1.5)
			%s
			G0 Z50
			M30
			""";
	private static final String LEVELS = """
			G21 G90 G17
			T1 M6 (DRILL 25.5)
			S500 M3
			G54 G0 X0 Y0
			G43 H1 Z20
			G81 Z-48 R3 F90
			G80
			T2 M6 (THREAD MILL D16 COMB P1.5 12 LONG)
			(M27X1.5 32 DEEP)
			S2000 M3
			G54 G0 X0 Y0
			G43 H2 Z20
			%s
			G0 Z20
			M30
			""";
	private static final String LOOP = """
			G21 G90 G17
			T1 M6 (DRILL 16.5)
			S900 M3
			G54 G0 X0 Y0
			G43 H1 Z20
			G81 Z-27 R2 F100
			G80
			T2 M6 (THREAD MILL D12 SINGLE M18X1.5)
			S2800 M3
			G54 G0 X0 Y0
			G43 H2 Z20
			#1=-15
			#2=3
			G1 Z[#1-0.375] F500
			G3 X#2 Y0 Z#1 I[#2/2] F110
			WHILE[#1LT1]DO1
			#1=#1+1.5
			G3 X#2 Y0 Z#1 I-#2
			END1
			G3 X0 Y0 Z[#1+0.375] I[-#2/2]
			G0 Z50
			M30
			""";

	/** Smaller and smaller: 2 x 27.08 - 16 = 38.16 is the root of M40x1.5, 40 - 1.2269 x 1.5 (ISO 68-1). */
	private static String outside(double... radii) {
		StringBuilder passes = new StringBuilder();
		for (double radius : radii) {
			passes.append("G0 X40 Y7\nG0 Z1.5\nG1 X").append(radius + 7).append(" Y7 F800\nG3 X").append(radius)
					.append(" Y0 I0 J-7 F200\n");
			for (int turn = 0; turn < 5; turn++) {
				passes.append("G2 I-").append(radius).append(" Z").append(-1.5 * turn).append('\n');
			}
			passes.append("G3 X").append(radius + 7).append(" Y-7 I7 J0\nG0 Z50\n");
		}
		return BOSS.formatted(passes.toString().strip());
	}

	private static String levels(double... bottoms) {
		StringBuilder levels = new StringBuilder();
		for (double z : bottoms) {
			levels.append("G1 X0 Y0 Z").append(z - 0.375).append(" F1000\nG3 X5.5 Z").append(z).append(" I2.75 F160\nG3 I-5.5 Z")
					.append(z + 1.5).append("\nG3 X0 Z").append(z + 1.875).append(" I-2.75\n");
		}
		return LEVELS.formatted(levels.toString().strip());
	}

	@Test
	void aCounterboreIsNotTheBoreBelowItAndAChamferNoThread() {
		assertThat(loud(STEPPED)).isEmpty();
		one(STEPPED.replace("3.25", "2.75"), "drill-too-small", "the hole is milled 21.5 mm");
		one(STEPPED.replace("3.25", "4.25"), "drill-too-big", "the hole is milled 24.5 mm");
		one(STEPPED.replace("G3 I-3.5 Z-22.5", "G3 I-3.5 Z-22"), "helix-off-pitch", "the helix advances 2.000 mm a turn");
	}

	@Test
	void aCutterThatGoesAcrossBelowTheSurfaceGoesThroughTheWall() {
		assertThat(loud(ROW)).isEmpty();
		one(ROW.replace("G90 G0 Z10\nG0 X100", "G0 Z10\nG0 X100"), "exit-scars-thread",
				"at rapid 6.13 mm below the surface: through the wall of the hole; G91 is in force, G90 before the way out");
		one(ROW.replace("G90 G0 Z10\nG0 X100", "G90\nG0 X100"), "exit-scars-thread",
				"at rapid 16.13 mm below the surface: through the wall of the hole; up above the surface first");
		one(ROW.replace("G90 G0 Z10\nG0 X100", "G90 G0 X100 Z10"), "exit-scars-thread", "at rapid 16.13 mm below the surface");
		one(ROW.replace("G90 G0 Z10\nG0 X100", "G90 G0 Z-10\nG0 X100"), "exit-scars-thread", "at rapid 10 mm below the surface");
		String twoInOneFile = "O1\n" + ROW.replace("G90 G0 Z10\nG0 X100", "G90 G0 Z-10\nG0 X100") + "O2\n" + ROW;
		one(twoInOneFile, "exit-scars-thread", "at rapid 10 mm below the surface");
	}

	@Test
	void outsideTheLastPassIsTheSmallest() {
		assertThat(loud(outside(27.6, 27.2, 27.08, 27.08))).isEmpty();
		one(outside(27.6, 27.4), "helix-off-size", "2 x R27.4 mm - cutter 16 mm leaves a root of 38.8 mm");
	}

	/** Upwards, counter-clockwise from below the surface, on a flat arc that swings away from the bolt. */
	@Test
	void outsideAFlatLeadInIsRight() {
		String up =
				BOSS.formatted("G0 Z-6\nG1 X34.08 Y-7 F800\nG2 X27.08 Y0 I0 J7 F200\nG3 I-27.08 Z-4.5\nG3 I-27.08 Z-3\nG3 I-27.08 Z-1.5\n"
						+ "G3 I-27.08 Z0\nG3 I-27.08 Z1.5\nG2 X34.08 Y7 I7 J0");
		assertThat(loud(up)).isEmpty();
		one(up.replace("G2 X27.08 Y0 I0 J7", "G2 X27.08 Y0 Z-4 I0 J7").replace("G3 I-27.08 Z-4.5", "G3 I-27.08 Z-2.5").replace("Z-3\n",
				"Z-1\n").replace("Z-1.5\n", "Z0.5\n").replace("Z0\n", "Z2\n").replace("Z1.5\nG2", "Z3.5\nG2"), "entry-off-pitch",
				"the lead-in arc climbs 2 mm");
	}

	@Test
	void levelsOfACombLieNoFartherApartThanItCuts() {
		assertThat(loud(levels(-32, -21.5, -11))).isEmpty();
		one(levels(-32, -11), "helix-too-short",
				"this level lies 21 mm above the one below it, the cutter cuts 12 mm: 9 mm of the thread between is not cut; levels at "
				+ "most 12 mm apart");
		one(levels(-21.5, -11), "helix-too-short", "the helix reaches 21.5 mm deep, the thread is called out 32 mm");
		one(levels(-32, -21.5), "helix-too-short",
				"the cutter cuts 12 mm and goes 21.5 mm deep: the first 9.5 mm below the surface are not cut");
		assertThat(loud(levels(-32).replace(" 12 LONG", ""))).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = {"12 LONG", "LOC 12", "12 LOC", "CUT LENGTH 12", "12MM FLUTE LENGTH", "SCHNEIDLAENGE 12", "D16 X 12.0 CL"})
	void howLongACombCutsIsReadAsShopsWriteIt(String said) {
		one(levels(-32, -11).replace("12 LONG", said), "helix-too-short", "the cutter cuts 12 mm");
	}

	@Test
	void aTurnWithTheSignOfItsCentreLostTurnsBack() {
		assertThat(loud(LOOP)).isEmpty();
		one(LOOP.replace("Z#1 I-#2\n", "Z#1 I#2\n"), "arc-not-closed",
				"the centre of this arc, X6 Y0, lies on the other side of its start than that of the arc before it");
	}

	@Test
	void aLoopThatGoesDownForEverIsNoOtherHand() {
		one(LOOP.replace("#1=#1+1.5", "#1=#1-1.5"), "not-followed", "seems to have no end");
	}

	@Test
	void aFinishingPassIsHeldToTheGrooveOfTheRougher() {
		String tools = LOOP.replace("#2=3\n", "#2=2.6\n") + "";
		String finish = tools.replace("M30\n", LOOP.substring(LOOP.indexOf("T2 M6"), LOOP.length()).replace("T2 M6",
				"T3 M6").replace("H2", "H3"));
		assertThat(loud(finish)).isEmpty();
		String beside = finish.substring(0, finish.indexOf("T3 M6")) + finish.substring(finish.indexOf("T3 M6")).replace("#1=-15\n",
				"#1=-14.4\n");
		one(beside, "helix-uneven", "this pass runs 0.6 mm beside the groove of the pass before");
	}

	@Test
	void ofSeveralPassesTheDeepestHitsTheBottom() {
		one(levels(-32, -21.5, -11).replace("G81 Z-48", "G81 Z-36"), "cutter-hits-bottom", "the cutter's end goes 32.38 mm deep");
	}

	@Test
	void aHelixAboveTheWorkCutsNothing() {
		one(LOOP.replace("#1=-15\n", "#1=15\n").replace("LT1", "LT20"), "helix-too-short",
				"the whole helix lies 13 mm and more above the surface");
	}

	@Test
	void whatIsExplainedByEachOtherAloneIsSaidOnce() {
		String other = LOOP.replace("DRILL 16.5", "DRILL 30.75").replace("D12 SINGLE M18X1.5", "D20 SINGLE")
				.replace("S2800 M3", "(G3/4)\nS2800 M3").replace("#2=3\n", "#2=6.625\n").replace("+1.5\n", "+2.309\n")
				.replace("0.375", "0.577").replace("Z-27", "Z-40");
		assertThat(loud(other.replace("(G3/4)", "(G1)"))).isEmpty();
		one(other, "helix-off-pitch", "the helix advances 2.309 mm a turn, G 3/4 needs 1.814");
	}

	@Test
	void aMilledHoleForAWireInsertIsWider() {
		String insert = LOOP.replace("DRILL 16.5", "DRILL 18.4").replace("SINGLE M18X1.5", "SINGLE M18X1.5 STI")
				.replace("#2=3\n", "#2=3.97\n");
		assertThat(loud(insert)).isEmpty();
		one(insert.replace("DRILL 18.4", "DRILL 16.5"), "drill-too-small",
				"too small for a wire insert M18x1.5: the cutter cuts far more than its thread");
	}
}
