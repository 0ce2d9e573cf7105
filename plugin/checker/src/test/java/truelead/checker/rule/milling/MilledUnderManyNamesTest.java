package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;
import static truelead.checker.Samples.one;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;

/**
 * Milled threads by tools of many names: TM, WHIRL, GF and a number, one that breaks the edge too; and taper threads outside and short
 * ones.
 */
class MilledUnderManyNamesTest {

	/** Nothing but the title says what thread it is, and nothing what the tool is. */
	private static final String TITLED = """
			; FLANSCH 4711 OP20
			; M27x2 Gewindetiefe 22
			N10 G17 G71 G90 G94 G40
			N20 T="BO_25" M6
			N30 S500 M3 F80 D1
			N40 G54 G0 X0 Y0 Z10
			N50 CYCLE81(50,0,2,-40)
			N60 T="GF_14" M6
			N70 S1800 M3 D1
			N80 G54 G0 X0 Y0 Z10
			N90 G0 Z-26.5
			N100 G41 G1 X3 Y-10.52 F300
			N110 G3 X13.52 Y0 Z-26 CR=10.52 F90
			N120 G3 X13.52 Y0 Z-2 I-13.52 J0 TURN=11
			N130 G3 X3 Y10.52 Z-1.5 CR=10.52
			N140 G40 G1 X0 Y0 F1000
			N150 G0 Z100
			N160 M30
			""";
	/** Its path is the thread's wall. */
	private static final String RING = """
			(RING, M30X1.5, SINGLE TOOTH CUTTER D16)
			G21 G17 G40 G80 G90
			T1 M6 (DRILL 28.5)
			G54 G0 X0 Y0 S600 M3
			G43 H1 Z60.
			G83 G98 Z-40. R2. Q7. F90
			G80
			T3 M6 (THREAD MILL D16)
			G54 G0 X0 Y0 S2000 M3
			G43 H3 Z50.
			G0 Z-21.
			G1 G41 D3 X6. Y-9. F300
			G3 X15. Y0 Z-20.625 R9. F200
			""" + IntStream.rangeClosed(1, 15).mapToObj(turn -> String.format(Locale.ROOT, "G3 I-15. Z%.3f", -20.625 + 1.5 * turn))
			.collect(Collectors.joining("\n")) + "\nG3 X6. Y9. Z2.25 R9.\nG1 G40 X0 Y0\nG0 Z50.\nM30\n";
	private static final String RAIL = """
			G21 G17 G40 G80 G90
			(M24X3 X 30 DP BLIND / 42 DRILL)
			T11 M6 (DRILL 21.)
			G54 G0 X0 Y0 S600 M3
			G43 H11 Z60.
			G83 Z-48. R2. Q7. F90
			G80
			T12 M6 (%s)
			G54 G0 X0 Y0 S2300 M3
			G43 H12 Z60.
			G0 Z-31.5
			G91
			G3 X5.52 Z1.5 I2.76 F95
			"""
			+ "G3 I-5.52 Z3.\n".repeat(11) + "G3 X-5.52 Z1.5 I-2.76\nG90\nG0 Z60.\nM30\n";
	private static final String FLANGE = """
			G21 G17 G40 G80 G90
			T1 M6 (DRILL 14.5)
			G54 G0 X0 Y0 S900 M3
			G43 H1 Z40.
			G98 G81 X0 Y0 Z-30. R2. F140
			X40.
			G80
			T2 M6 (THREAD MILL D11 SINGLE, BREAKS THE EDGE TOO)
			(M16X1.5)
			G0 X0 Y0 S2800 M3
			G43 H2 Z40.
			M98 P45
			G0 X40. Y0
			M98 P45
			M30
			O45
			G90 G0 Z2.
			G1 Z-.4 F800
			G91
			%sG90 G1 Z-18.75 F800
			G91
			G3 X2.52 Y0 I1.26 Z.75 F150
			"""
			+ "G3 I-2.52 Z1.5\n".repeat(13) + "G3 X-2.52 Y0 I-1.26 Z.75\nG90 G0 Z10.\nM99\n";

	@Test
	void thePathOnTheWallOfTheTitlesThreadLacksItsCompensation() {
		assertThat(loud(RING)).isEmpty();
		assertThat(loud(RING.replace("G41 D3 ", ""))).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("comp-missing");
			assertThat(finding.message()).contains("the path of 30 mm is the wall of M30x1.5");
		});
	}

	@Test
	void aHelixThatClimbsUnderATitleIsOfItsThread() {
		assertThat(loud(TITLED)).isEmpty();
		one(TITLED.replace("TURN=11", "TURN=10"), "helix-off-pitch", "advances 2.182 mm a turn, M27x2 needs 2.000");
		one(TITLED.replace("N100 G41", "N100 G42"), "comp-missing", "G42");
		one(TITLED.replace("-40)", "-26)"), "cutter-hits-bottom", "26.5 mm deep");
		// 10 mm climbed by a tool of which nobody says what it is, and no thread in the title: a ramp in a bore
		assertThat(Samples.heard(TITLED.replace("; M27x2 Gewindetiefe 22\n", ""))).isEmpty();
	}

	@Test
	void aThreadMillIsOneByAnyOfItsNames() {
		for (String name : new String[] {"TM SINGLE D13", "GF EINZAHN D13", "WHIRL 13.0", "WIRBELFRAESER D13 EINZAHN",
				"SOLID CARBIDE TM, 3.0 PITCH, 13. DIA", "FRAISE A FILETER MONODENT D13", "GEWFR_D13_EINZAHN"}) {
			String good = RAIL.formatted(name);
			assertThat(loud(good)).as(name).isEmpty();
			one(good.replace("Z3.", "Z2.5"), "helix-off-pitch", "advances 2.500 mm a turn, M24x3 needs 3.000");
			one(good.replace("13", "11"), "helix-off-size", "2 x R5.52 mm + cutter 11 mm cuts 22.04 mm");
		}
	}

	@Test
	void aRowOfTeethIsOneByAnyOfItsNames() {
		for (String teeth : new String[] {"COMB", "MEHRREIHIG", "PEIGNE", "PETTINE", "MULTIFORM"}) {
			String good = FLANGE.formatted("").replace("SINGLE, BREAKS THE EDGE TOO", "P1.5 " + teeth)
					.replaceFirst("(G3 I-2.52 Z1.5\n){13}", "G3 I-2.52 Z1.5\n");
			assertThat(loud(good)).as(teeth).isEmpty();
			one(good.replace("P1.5", "P1.25"), "cutter-pitch-mismatch", "the cutter has a pitch of 1.250, M16x1.5 needs 1.500");
		}
	}

	@Test
	void aRingByTheThreadMillBreaksTheEdgeAndNeedsNoLeadIn() {
		assertThat(loud(FLANGE.formatted("G1 X2.7 F150\nG3 I-2.7\nG1 X-2.7\n"))).isEmpty();
		assertThat(loud(FLANGE.formatted("G3 X2.7 Y0 I1.35 F150\nG3 I-2.7\nG3 X-2.7 Y0 I-1.35\n"))).isEmpty();
		one(FLANGE.formatted("").replace("G3 X2.52 Y0 I1.26 Z.75 F150", "G1 X2.52 F150\nZ.75"), "entry-straight",
				"the cutter plunges straight into the wall");
	}

	@Test
	void aSingleToothCutsOneThreadInATurn() {
		String turn = FLANGE.formatted("").replaceFirst("(G3 I-2.52 Z1.5\n){13}", "G3 I-2.52 Z1.5\n");
		one(turn, "helix-too-short", "the helix ends 16.5 mm below the surface: the first 11 threads are not cut");
	}

	@Test
	void aHelixEvenAtAWrongLeadIsOffPitchAndNotUneven() {
		String halves = IntStream.rangeClosed(1, 34)
				.mapToObj(i -> String.format(Locale.ROOT, "X%s Y0 Z%.4f I%s J0\n", i % 2 == 1 ? "-.172" : ".172", .05 - i / 36.0,
						i % 2 == 1 ? "-.172" : ".172")).collect(Collectors.joining());
		String program =
				"G20 G17 G40 G80 G90\nT2 M6 (BORE HEAD .950)\nG54 G0 X0 Y0 S900 M3\nG43 H2 Z1.\nG85 Z-1.3 R.1 F3.\nG80\n"
				+ "T3 M6 (SGL TOOTH THD MILL .66 DIA)\n(1-20 UNEF-2B)\nG0 X0 Y0 S2400 M3\nG43 H3 Z1.\nG0 Z.0778\n"
				+ "G2 X.172 Y0 Z.05 I.086 J0 F6.\n" + halves + "X0 Y0 Z-.9222 I-.086 J0\nG0 Z1.\nM30\n";
		one(program, "helix-off-pitch", "1-20 UNEF-2B needs 0.05000");
	}

	@Test
	void aTaperBoltGrowsDownwards() {
		String good = taperBolt(1 / 16.0, 18.631, 9);
		assertThat(loud(good)).isEmpty();
		one(taperBolt(0, 18.3, 9), "taper-off", "the radius changes by 0 mm over 16.329 mm of advance");
		one(taperBolt(1 / 16.0, 17.5, 9), "helix-off-size", "1.131 mm too small");
		one(taperBolt(1 / 16.0, 18.631, 3), "helix-too-short",
				"the helix travels 5.44 mm, R 1/2 goes together by hand for 8.2 mm: the joint is not tight");
	}

	/** R 1/2 outside, clockwise down in quarters by R. */
	private static String taperBolt(double taper, double minor, int turns) {
		StringBuilder quarters = new StringBuilder();
		for (int i = 1; i <= 4 * turns; i++) {
			double z = -1.8143 / 4 * i;
			double radius = radius(taper, minor, z);
			double angle = -Math.PI / 2 * i;
			quarters.append(String.format(Locale.ROOT, "G2 X%.3f Y%.3f Z%.3f R%.3f%n", radius * Math.cos(angle), radius * Math.sin(angle),
					z, (radius + radius(taper, minor, z + 1.8143 / 4)) / 2));
		}
		return "G21 G17 G40 G80 G90\nT7 M6 (THREAD MILL D12 SINGLE)\n(R1/2 THREAD OUTSIDE)\nG54 G0 X40. Y0 S2800 M3\nG43 H7 Z30.\nZ0\n"
				+ "G1 X18. F1000\n" + String.format(Locale.ROOT, "G1 X%.3f F80%n", radius(taper, minor, 0)) + quarters
				+ "G1 X40. F1000\nG0 Z30.\nM30\n";
	}

	/** Radius of the path at a level: at the gauge plane, 8.2 below the end, it leaves the minor diameter (ISO 7-1: 18.631). */
	private static double radius(double taper, double minor, double z) {
		return (minor - (8.2 + z) * taper + 12) / 2;
	}

	@Test
	void aCutterGroundLeftHandTurnsUnderM4() {
		String ground = RAIL.formatted("TM SINGLE D13 LEFT HAND CUTTING");
		one(ground, "spindle-wrong-way",
				"M3 turns T12 clockwise, it is said to cut turning counter-clockwise: the backs of its teeth rub and it breaks; M4");
	}
}
