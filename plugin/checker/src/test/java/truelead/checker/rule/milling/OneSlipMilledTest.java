package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;
import static truelead.checker.Samples.one;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Milled threads of shops: along X in an angle head, by a comb in two bites, by two D offsets, in turns of one block. A slip is one
 * finding.
 */
class OneSlipMilledTest {

	private static final String ANGLE_HEAD = text("133-angle-head-along-x.nc");
	private static final String BITES = text("135-comb-in-two-bites.nc");
	private static final String SUBPROGRAM = """
			G21 G90 G17
			T1 M6 (DRILL 25)
			G54 G0 X50 Y0 S600 M3
			G43 H1 Z10
			G81 Z-36 R2 F100
			G80
			T2 M6 (M27X2 THREAD MILL D20 SINGLE)
			G0 X50 Y0 S1800 M3
			G43 H2 Z10
			G0 Z-28
			G91 G3 X3.5 Y0 Z.5 I1.75 J0 F180
			M98 P52 L14
			G3 X-3.5 Y0 Z.5 I-1.75 J0
			G90 G0 Z10
			M30
			O52
			G3 I-3.5 J0 Z2
			M99
			""";

	private static String text(String name) {
		try (InputStream in = Objects.requireNonNull(OneSlipMilledTest.class.getResourceAsStream("/truelead/checker/programs/" + name))) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}

	@Test
	void aToolThatComesFromTheOtherSideGoesDeepTowardsLargerNumbers() {
		assertThat(loud(ANGLE_HEAD)).isEmpty();
		one(ANGLE_HEAD.replace("X-25. Y-20. Z-30.", "X-35. Y-20. Z-30."), "cutter-hits-bottom",
				"the cutter's end goes 17 mm deep, the hole has its full diameter down to 7.64 mm");
		one(ANGLE_HEAD.replace("G2 Y", "G3 Y"), "helix-wrong-hand", "the helix goes counter-clockwise and towards X-");
	}

	@Test
	void ofAnArcWrittenForAnotherPlaneItsCentreWordsTellWhich() {
		one(ANGLE_HEAD.replace("N30 G19", "N30 G18"), "plane-wrong", "G18 is in force, the arc is written for Y, Z, J and K");
	}

	@Test
	void everyBiteOfACombIsMeasured() {
		assertThat(loud(BITES)).isEmpty();
		one(BITES.replace("X21. Y0 Z-32.25 R10.5", "X20.7 Y0 Z-32.25 R10.35").replace("X21. Y0 Z-29.25 I-21.",
				"X20.7 Y0 Z-29.25 I-20.7").replace("Z-28.5 R10.5", "Z-28.5 R10.35"), "helix-off-size",
				"2 x R20.7 mm + cutter 22 mm cuts 63.4 mm");
	}

	/** 27 below the first bite is 9 pitches of 3; 26 leaves the second groove a millimetre beside the first. */
	@Test
	void theSecondBiteRunsInTheGrooveOfTheFirst() {
		one(BITES.replace("Z-33.", "Z-34.").replace("Z-32.25", "Z-33.25").replace("Z-29.25", "Z-30.25").replace("Z-28.5", "Z-29.5"),
				"helix-uneven", "this pass runs 1 mm beside the groove of the pass before");
	}

	@Test
	void aFinishingPassWithoutItsCompensationIsCutTooBig() {
		String program = text("137-rough-and-finish-by-d.nc");

		assertThat(loud(program)).isEmpty();
		one(program.replace("G41 D32 ", ""), "comp-missing", "the cutter, 12 mm, cuts 32 mm");
	}

	@Test
	void g43WithoutHTakesEachToolsOwnLength() {
		assertThat(loud(text("134-turns-in-one-block.ngc"))).isEmpty();
	}

	@Test
	void arcsThatWereWrittenForAnotherReadingAreOneFindingThatSaysWhich() {
		one(text("136-centres-as-places.ngc").replace("G90 G90.1", "G90"), "arc-not-closed",
				"I, J and K close it read as places; G90.1 before it");
		one(SUBPROGRAM.replace("G91 G3", "G3"), "arc-not-closed", "its end closes it counted from its start; G91 before it");
	}

	@Test
	void aWrongRadiusTakesTheCentreWithIt() {
		assertThat(loud(SUBPROGRAM)).isEmpty();
		one(SUBPROGRAM.replace("I-3.5 J0 Z2", "I-3 J0 Z2"), "helix-off-size", "2 x R3 mm + cutter 20 mm cuts 26 mm");
	}

	@Test
	void aLevelWithItsPointLostIsNoOtherHand() {
		one(BITES.replace("Z-56.25 I-21.", "Z-562.5 I-21."), "helix-off-pitch", "the helix advances 503.250 mm a turn");
	}

	@Test
	void theHoleOfAMilledTaperThreadIsMeasured() {
		String program = text("138-npt-growing-radius.nc");

		assertThat(loud(program)).isEmpty();
		one(program.replace("1-5/32", "1-1/32"), "drill-too-small", "and the crests are not cut");
		one(program.replace("1-5/32", "1-7/32"), "drill-too-big", "% of thread left there");
		one(program.replace("(1-11.5 NPT)", "(3/4-14 NPT)"), "helix-off-pitch", "helix and the drill of 1.1563 in make 1-11.5 NPT");
	}

	@Test
	void ofAHoleFarTooSmallTheCutterIsNotAccused() {
		one(SUBPROGRAM.replace("DRILL 25", "DRILL 20"), "drill-too-small", "the hole is drilled 20 mm");
	}

	@Test
	void aLoopWithoutEndIsSaidAlone() {
		one("""
				G21 G90 G17
				T1 M6 (DRILL 5.0)
				G54 G0 X0 Y0 S3500 M3
				G43 H1 Z20
				G81 Z-14 R2 F350
				X15
				G80
				T2 M6 (2X M6X1 9 DEEP, THREAD MILL D4.5)
				G0 X0 Y0 S6000 M3
				G43 H2 Z20
				G0 Z-10
				G3 X.75 Y0 Z-9.5 R.375 F90
				#2=-9.5
				WHILE [#2 LT 0] DO1
				G3 X.75 Y0 I-.75 Z#2
				END1
				M30
				""", "not-followed", "has no end");
	}

	@Test
	void aVariableThatNothingSetsIsOneFinding() {
		one("""
				G21 G90 G17
				T1 M6 (DRILL 5.0)
				G54 G0 X0 Y0 S3500 M3
				G43 H1 Z20
				G81 Z-14 R2 F350
				G80
				T2 M6 (M6X1 THREAD MILL D4.5)
				G0 X0 Y0 S6000 M3
				G43 H2 Z20
				G0 Z[-9-#2]
				G3 X.75 Y0 Z[-9-#2/2] R.375 F90
				G3 X.75 Y0 I-.75 Z[-9+#2/2]
				G3 X0 Y0 Z[-9+#2] R.375
				G0 Z20
				M30
				""", "not-followed", "#2 is not set in the program");
	}

	/** M10 up from 17.5 deep by quarters of R1.5 from a lead-in of R0.75. */
	private static String quarters() {
		StringBuilder text =
				new StringBuilder("G21 G90 G17\nT1 M6 (8.5 DRILL)\nG54 G0 X0 Y0 S2200 M3\nG43 H1 Z20\nG81 Z-28 R3 F300\nG80\n"
						+ "T2 M6 (M10X1.5 THREAD MILL D7 SINGLE)\n"
						+ "G0 X0 Y0 S4200 M3\nG43 H2 Z20\nG0 Z-17.875\nG3 X1.5 Y0 Z-17.5 R.75 F180\n");
		double z = -17.5;
		for (int quarter = 0; z < 0; quarter++) {
			z += 0.375;
			text.append(List.of("X0 Y1.5", "X-1.5 Y0", "X0 Y-1.5", "X1.5 Y0").get(quarter % 4))
					.append(String.format(Locale.ROOT, " Z%.3f R1.5%n", z));
		}
		return text.append("X0 Y0 Z.875 R.75\nG0 Z20\nM30\n").toString();
	}

	@Test
	void anRThatIsNotTheCirclesIsOneFindingWithItsFix() {
		assertThat(loud(quarters())).isEmpty();
		one(quarters().replace("Z-14.125 R1.5", "Z-14.125 R-1.5"), "arc-not-closed",
				"R with a minus takes the long way round, 270 degrees; R1.5");
		one(quarters().replace("Z-17.125 R1.5", "Z-17.125 R-1.5"), "arc-not-closed", "R with a minus takes the long way round");
		one(quarters().replace("Z-10.000 R1.5", "Z-10.000 R15"), "arc-not-closed", "R 15 mm, the circle has 1.5 mm; R1.5");
		assertThat(loud(quarters().replace("Z-14.125 R1.5", "Z-14.125 R-1.5"))).singleElement()
				.satisfies(f -> assertThat(f.fixes()).singleElement().satisfies(fix -> assertThat(fix.edits()).singleElement()
						.satisfies(edit -> assertThat(edit.text()).isEqualTo("R1.5"))));
	}

	@Test
	void allArcsTurnedRoundAreAHandAndNoSize() {
		one(quarters().replace("G3 X1.5", "G2 X1.5"), "helix-wrong-hand", "the helix goes clockwise and up");
	}

	@Test
	void oneLevelWithItsPointLostIsThatLevel() {
		one(quarters().replace("X1.5 Y0 Z-10.000", "X1.5 Y0 Z-100.00"), "helix-uneven", "; Z-10.00");
	}

	@Test
	void aCutterThatComesDownAtTheWallHitsTheEdge() {
		one(quarters().replace("G0 Z-17.875\nG3 X1.5 Y0 Z-17.5 R.75 F180", "G0 X1.5\nG1 Z-17.5 F180\nG3"), "entry-straight",
				"the cutter comes down at the wall: its teeth reach a diameter of 10 mm, the hole is 8.5 mm");
	}

	@Test
	void aThreadMillUnderM4RunsBackwards() {
		one(quarters().replace("S4200 M3", "S4200 M4"), "spindle-wrong-way", "M4 turns T2 counter-clockwise, the drill turned clockwise");
	}

	@Test
	void aPlaneCodeBehindTheToolChangeIsChangedItself() {
		String program = SUBPROGRAM.replace("G0 X50 Y0 S1800 M3", "G18 G0 X50 Y0 S1800 M3");

		assertThat(loud(program)).singleElement().satisfies(f -> assertThat(f.fixes()).singleElement()
				.satisfies(fix -> assertThat(fix.title()).isEqualTo("Change G18 in line 8 to G17")));
	}

	@Test
	void aBoreInADrilledHoleIsFullDownToItsEnd() {
		String program = SUBPROGRAM.replace("G81 Z-36", "G81 Z-32")
				.replace("T2 M6", "T5 M6 (BORING HEAD 25.2)\nG0 X50 Y0 S500 M3\nG43 H5 Z10\nG85 Z-28.5 R2 F60\nG80\nT2 M6");

		assertThat(loud(program)).isEmpty();
		one(program.replace("G85 Z-28.5", "G85 Z-20"), "cutter-hits-bottom", "the hole has its full diameter down to 24.49 mm");
	}

	@Test
	void oneCircleOfAnotherRadiusIsOneFinding() {
		String program = quarters().replaceAll("(?m)^X0 Y1.5.*\\n^X-1.5 Y0.*\\n^X0 Y-1.5.*\\n^X1.5 Y0 (Z\\S+) R1.5", "G3 I-1.5 J0 $1");

		assertThat(loud(program)).isEmpty();
		one(program.replace("I-1.5 J0 Z-10.000", "I-15 J0 Z-10.000"), "helix-off-size", "2 x R15 mm + cutter 7 mm cuts 37 mm");
	}

	@Test
	void anotherThreadOfTheSameLeadIsACalloutToMend() {
		one(SUBPROGRAM.replace("M27X2", "M30X2"), "helix-off-size", "or mend the callout: path and the drill of 25 mm make M27x2");
	}

	@Test
	void ofAThreadThatNobodyNamesTheCutterTellsTheLead() {
		String program = """
				G21 G90 G17
				T1 M6 (DRILL 14.5)
				G54 G0 X0 Y0 S1100 M3
				G43 H1 Z20
				G81 Z-30 R3 F150
				G80
				T3 M6 (THREAD MILL D12 P1.5)
				G0 X0 Y0 S2600 M3
				G43 H3 Z20
				G0 Z-18.375
				G3 X2 Y0 Z-18 R1 F130
				G3 X2 Y0 Z-16.5 I-2 J0
				G3 X0 Y0 Z-16.125 R1
				G0 Z20
				M30
				""";

		assertThat(loud(program)).isEmpty();
		one(program.replace("Z-16.5 I", "Z-16.75 I"), "cutter-pitch-mismatch",
				"the helix advances 1.250 a turn, the cutter has a pitch of 1.500");
	}

	/** Down by ten turns of R7.5, out to the middle, and up again at R8 without coming out of the hole. */
	@Test
	void roughingDownAndFinishingUpInOneGoLeavesAtTheTop() {
		StringBuilder text =
				new StringBuilder("G21 G90 G17\nT1 M6 (DRILL 33.0)\nG54 G0 X0 Y0 S500 M3\nG43 H1 Z20\nG81 Z-45 R3 F80\nG80\n"
						+ "T2 M6 (M36X3-6H, THREAD MILL D20 SINGLE)\n"
						+ "G0 X0 Y0 S1500 M3\nG43 H2 Z20\nG0 Z1.5\nG2 X7.5 Y0 Z.75 R3.75 F200\n");
		for (int turn = 1; turn <= 10; turn++) {
			text.append(String.format(Locale.ROOT, "G2 I-7.5 J0 Z%.2f%n", 0.75 - 3 * turn));
		}
		text.append("G2 X0 Y0 Z-30. R3.75\nG3 X8. Y0 Z-29.25 R4.\n");
		for (int turn = 1; turn <= 10; turn++) {
			text.append(String.format(Locale.ROOT, "G3 I-8. J0 Z%.2f%n", -29.25 + 3 * turn));
		}

		assertThat(loud(text + "G3 X0 Y0 Z1.5 R4.\nG0 Z20\nM30\n")).isEmpty();
	}
}
