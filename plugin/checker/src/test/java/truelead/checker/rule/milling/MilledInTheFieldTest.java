package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Thread milling as shops write it: bolts from outside, two tools, several starts, one cutter for several threads, ways out, feeds. */
class MilledInTheFieldTest {

	private static final String HOLES = """
			G21 G90 G17 G40
			T1 M6 (DRILL 14.5)
			G54 G0 X0 Y0 S1100 M3
			G43 H1 Z20.
			G81 Z-32. R3. F150
			X40.
			G80
			""";
	private static final String MILL = "T2 M6 (THREAD MILL D10 SINGLE)\n(M16X1.5-6H 15 DEEP)\nG0 X0 Y0 S2600 M3\nG43 H2 Z20.\n";

	@Test
	void aBoltIsHeldToItsRoot() {
		assertThat(heard(bolt(36.773))).isEmpty();
		assertThat(heard(bolt(36.))).containsExactly("helix-off-size 2 x R36 mm - cutter 16 mm leaves a root of 56 mm, M60x2-6g has at "
				+ "least 56.964 mm: 0.964 mm too small; radius 36.773 mm");
		assertThat(heard(bolt(40.))).singleElement().asString().contains("leaves a root of 64 mm").endsWith("radius 36.773 mm");
	}

	@Test
	void whatAnotherToolFinishesIsRoughed() {
		String rough = MILL.replace("SINGLE", "SINGLE ROUGH") + helix(0, 2.8) + "G0 Z100.\n";
		String finish = MILL.replace("T2", "T3").replace("H2", "H3").replace("SINGLE", "SINGLE FINISH");
		assertThat(heard(oneHole() + rough + finish + helix(0, 3) + "M30\n")).isEmpty();
		assertThat(heard(oneHole() + rough + finish + helix(0, 2.7) + "M30\n")).singleElement().asString()
				.startsWith("helix-off-size 2 x R2.7 mm");
		assertThat(heard(oneHole().replace("14.5", "13.5") + rough + finish + helix(0, 3) + "M30\n")).singleElement().asString()
				.startsWith("drill-too-small").endsWith("the same at 1 more block");
	}

	@Test
	void oneWrongCutterIsOneFinding() {
		String two = HOLES + MILL + helix(0, 3) + "(M18X1.5-6H)\n" + helix(40, 4);
		assertThat(heard(two.replace("X40.\n", "G80\nT5 M6 (DRILL 16.5)\nX40. S900 M3\nG43 H5 Z20.\nG81 Z-32. R3. F120\n") + "M30\n"))
				.isEmpty();
		assertThat(heard(two.replace("X40.\n", "G80\nT5 M6 (DRILL 16.5)\nX40. S900 M3\nG43 H5 Z20.\nG81 Z-32. R3. F120\n").replace("D10",
				"D8") + "M30\n")).singleElement().asString().endsWith("or the cutter is another: 10 mm suits all 2 threads of this tool");
	}

	@Test
	void aZeroTooManyInTheRadiusIsOneFinding() {
		assertThat(heard(oneHole() + MILL + helix(0, 3).replace("I-3.", "I-30.") + "M30\n")).singleElement().asString()
				.startsWith("helix-off-size 2 x R30 mm").endsWith("radius 3 mm");
	}

	@Test
	void compensationEndsBeforeTheNextHole() {
		String first = """
				G0 X0 Y0
				G0 Z-16.
				G1 G41 D2 X3. Y-5. F300
				G3 X8. Y0 Z-15.625 R5. F150
				G3 I-8. Z-14.125
				G3 X3. Y5. Z-13.75 R5.
				G1 G40 X0 Y0
				G0 Z3.
				""";
		String second = first.replace("X0", "X40.").replace("X3.", "X43.").replace("X8.", "X48.");
		String comb = HOLES + MILL.replace("SINGLE", "COMB P1.5").replace("15 DEEP", "12 DEEP");
		assertThat(heard(comb + first + second + "M30\n")).isEmpty();
		assertThat(heard(comb + first.replace("G1 G40", "G1") + second + "M30\n")).singleElement().asString()
				.startsWith("comp-left-on G41 is still on when the cutter goes up and over to the next hole");
	}

	@Test
	void twoStartsAreTwoGrooves() {
		String head = oneHole().replace("14.5", "22.5")
				+ "T2 M6 (THREAD MILL D14 SINGLE)\n(M24X3 (P1.5) 12 DEEP)\nG0 X0 Y0 S2000 M3\nG43 H2 Z20.\n";
		assertThat(heard(head + start(-14) + start(-12.5) + "M30\n")).isEmpty();
		assertThat(heard(head + start(-14) + start(-11) + "M30\n")).singleElement().asString()
				.startsWith("helix-uneven all passes run in one groove, M24x3P1.5 has 2 starts");
	}

	@Test
	void aWrongRIsOneFindingAtTheR() {
		String halves = "G0 X0 Y0\nG0 Z-16.875\nG3 X3. Z-16.5 R1.5 F160\n";
		StringBuilder path = new StringBuilder(halves);
		for (double z = -16.5; z < 0; z += 1.5) {
			path.append("G3 X-3. Z").append(z + 0.75).append(" R3.\nG3 X3. Z").append(z + 1.5).append(" R3.\n");
		}
		String good = oneHole() + MILL + path + "G3 X0 Z0.375 R1.5\nG0 Z3.\nM30\n";
		assertThat(heard(good)).isEmpty();
		assertThat(heard(good.replace("G3 X-3. Z-9.75 R3.", "G3 X-3. Z-9.75 R1.5"))).singleElement().asString().startsWith("arc-not-closed")
				.endsWith("; R3");
	}

	@Test
	void aMillIsFedByItsOwnFPerMinute() {
		assertThat(heard(oneHole() + MILL + helix(0, 3).replace(" F160", "") + "M30\n")).singleElement().asString()
				.startsWith("feed-missing F150 was last written before the change to T2");
		assertThat(heard(oneHole() + MILL + "G95\n" + helix(0, 3) + "G94\nM30\n")).singleElement().asString()
				.startsWith("feed-in-wrong-mode F160 is read per revolution, G95: 160 mm a turn");
	}

	@Test
	void aTaperThreadIsMeasuredAtTheFace() {
		StringBuilder path =
				new StringBuilder("G21 G90 G17 G40\nT1 M6 (DRILL 18.0)\nG54 G0 X0 Y0 S700 M3\nG43 H1 Z20.\nG81 Z-32. R3. F100\nG80\n"
						+ "T2 M6 (THREAD MILL D12 SINGLE)\n(RC1/2)\nG0 X0 Y0 S2400 M3\nG43 H2 Z20.\nG0 Z-18.4535\n"
						+ "G3 X3.9775 Z-18. R1.9888 F150\n");
		for (int turn = 1; turn <= 10; turn++) {
			path.append(String.format(Locale.ROOT, "G3 X%.4f I-%.4f J0 Z%.4f\n", 3.9775 + turn * 1.8143 / 32,
					3.9775 + (turn - 1) * 1.8143 / 32, -18 + turn * 1.8143));
		}
		String program = path + "G3 X0 R2.2722 Z0.5966\nG0 Z20.\nM30\n";
		assertThat(heard(program)).isEmpty();
		assertThat(heard(program.replace("D12", "D10"))).singleElement().asString()
				.startsWith("helix-off-size helix and cutter of 10 mm cut").contains("too small");
	}

	private static String oneHole() {
		return HOLES.replace("X40.\n", "");
	}

	private static String helix(int x, double radius) {
		StringBuilder path = new StringBuilder("G0 X" + x + ". Y0\nG0 Z-16.875\nG3 X" + (x + radius) + " Y0 Z-16.5 R"
				+ radius / 2 + " F160\n");
		for (double z = -15; z <= 0; z += 1.5) {
			path.append("G3 I-").append(radius == 3 ? "3." : String.valueOf(radius)).append(" J0 Z").append(z).append("\n");
		}
		return path + "G3 X" + x + ". Y0 Z0.375 R" + radius / 2 + "\nG0 Z3.\n";
	}

	private static String start(double level) {
		StringBuilder path = new StringBuilder("G0 Z" + (level - 0.75) + "\nG3 X5. Y0 Z" + level + " R2.5 F160\n");
		for (int turn = 1; turn <= 5; turn++) {
			path.append("G3 I-5. J0 Z").append(level + 3 * turn).append("\n");
		}
		return path + "G3 X0 Y0 Z" + (level + 15.75) + " R2.5\nG0 Z5.\n";
	}

	private static String bolt(double radius) {
		StringBuilder path =
				new StringBuilder("G21 G90 G17 G40\nT2 M6 (THREAD MILL D16 SINGLE EXTERNAL)\n(M60X2-6g 20 DEEP)\nG54 G0 X60. Y0 S2400 M3\n"
						+ "G43 H2 Z20.\nG0 Z1.\nG1 X" + radius + " F500\n");
		for (int level = -1; level >= -23; level -= 2) {
			path.append("G2 I-").append(radius).append(" J0 Z").append(level).append(".\n");
		}
		return path + "G1 X60. F800\nG0 Z20.\nM30\n";
	}
}
