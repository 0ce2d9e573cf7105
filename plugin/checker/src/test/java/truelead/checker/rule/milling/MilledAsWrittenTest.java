package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** Thread milling by what its comments say: of the tool's pitch, of wire inserts, of another thread; and one slip, one finding. */
class MilledAsWrittenTest {

	private static List<Finding> loud(List<String> blocks) {
		return Samples.findings(blocks.toArray(String[]::new)).stream().filter(f -> f.severity() != Severity.INFORMATION).toList();
	}

	/** A thread from 15 deep to above the surface about X0 Y0, up and counter-clockwise by full circles. */
	private static List<String> milled(double drill, String tool, double radius, double pitch) {
		List<String> blocks = new ArrayList<>(List.of("G21 G90 G17 G94", text("T1 M6 (DRILL %.1f)", drill), "G54 G0 X0 Y0 S900 M3",
				"G43 H1 Z20.", "G81 Z-36. R3. F120", "G80", "T2 M6 (" + tool + ")", "G0 X0 Y0 S2500 M3", "G43 H2 Z20.",
				text("G0 Z%.4f", -15 - pitch / 4), text("G3 X%.4f Y0 Z-15. I%.4f J0 F150", radius, radius / 2)));
		double z = -15;
		while (z < pitch) {
			z += pitch;
			blocks.add(text("G3 X%.4f Y0 Z%.4f I%.4f J0", radius, z, -radius));
		}
		blocks.addAll(List.of(text("G3 X0 Y0 Z%.4f I%.4f J0", z + pitch / 4, -radius / 2), "G0 Z20.", "M30"));
		return blocks;
	}

	private static String text(String format, Object... numbers) {
		return String.format(Locale.ROOT, format, numbers);
	}

	@ParameterizedTest
	@ValueSource(strings = {"M14X1.5 THREAD MILL D10 PITCH 0.5-1.5", "M14X1.5 THREAD MILL D10 PITCH 0.5 - 2.0MM",
			"M14X1.5 GEWINDEFRAESER D=10 P=1-2", "M14X1.5 THREAD MILL D10 MAX PITCH 2.0", "M14X1.5 THREAD MILL D10 1.0 TO 2.0 PITCH",
			"M14X1.5 THREAD MILL D10 32-14 TPI", "M14X1.5 THREAD MILL D10 - 1.5 PITCH", "THREAD MILL DIA. 10 P1.5 - M14X1.5",
			"THREAD MILL D10 P1.5-M14X1.5"})
	void whatACutterCanMakeIsNotItsPitch(String tool) {
		assertThat(loud(milled(12.5, tool, 2, 1.5))).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = {"M14X1.5 THREAD MILL D10 - 1.0 PITCH", "M14X1.5 THREAD MILL D10 P1.0 - 3 FLUTE", "M14X1.5 TM D10 PITCH 1"})
	void onePitchIsThatOfTheCutter(String tool) {
		assertThat(loud(milled(12.5, tool, 2, 1.5))).singleElement()
				.satisfies(f -> assertThat(f.rule()).isEqualTo("cutter-pitch-mismatch"));
	}

	@Test
	void aPitchMayBeSaidInThreadsAnInch() {
		assertThat(loud(milled(12.5, "M14X1.5 TM D10 PITCH 18 TPI", 2, 1.5))).singleElement()
				.satisfies(f -> assertThat(f.message()).contains("the cutter has a pitch of 1.411"));
	}

	/** EG M10: 10 + 1.299 x 1.5 = 11.949 (DIN 8140-2, ASME B18.29.1; from memory). */
	@Test
	void forAWireInsertTheThreadIsLarger() {
		String tool = "THREAD MILL D9 SINGLE FORM STI M10X1.5 WIRE INSERT";

		assertThat(loud(milled(10.4, tool, 1.4745, 1.5))).isEmpty();
		assertThat(loud(milled(10.4, tool, 0.5, 1.5))).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("helix-off-size");
			assertThat(f.message()).startsWith("2 x R0.5 mm + cutter 9 mm cuts 10 mm, M10x1.5 for a wire insert needs at least 11.949 mm: "
					+ "1.949 mm too small; radius 1.474 mm");
		});
	}

	@Test
	void helixAndDrillAgainstTheCalloutAreOneFinding() {
		assertThat(loud(milled(16.5, "THREAD MILL D10 P1.5 M18X1", 4, 1.5))).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("helix-off-pitch");
			assertThat(f.message()).endsWith("step Z 1.000 a turn and another drill, or mend the callout: helix and the drill of 16.5 mm "
					+ "make M18x1.5");
			assertThat(f.fixes()).singleElement().satisfies(fix -> assertThat(fix.edits()).singleElement()
					.satisfies(edit -> assertThat(edit.text()).isEqualTo("M18x1.5")));
		});
	}

	@Test
	void aHelixBesideItsHoleIsNotSaidToBeEnteredWrongly() {
		List<String> blocks = milled(12.5, "THREAD MILL D10 M14X1.5", 2, 1.5);
		blocks.replaceAll(block -> block.replace("G81 Z-36.", "G81 Y0.5 Z-36."));

		assertThat(loud(blocks)).singleElement().satisfies(f -> assertThat(f.rule()).isEqualTo("hole-off-position"));
	}

	/** Quarters turned round sweep three quarters each, a third of the lead a turn. */
	@Test
	void quartersTurnedRoundAreAHandAndNoPitch() {
		List<String> blocks = new ArrayList<>(milled(12.5, "THREAD MILL D10 M14X1.5", 2, 1.5).subList(0, 9));
		blocks.addAll(List.of("G0 Z-15.375", "G2 X2. Y0 Z-15. I1. J0 F150"));
		double z = -15;
		for (int quarter = 0; z < 1.5; quarter++) {
			z += 0.375;
			blocks.add(List.of("G2 X0 Y2. I-2. J0", "G2 X-2. Y0 I0 J-2.", "G2 X0 Y-2. I2. J0", "G2 X2. Y0 I0 J2.").get(quarter % 4)
					+ text(" Z%.3f", z));
		}
		blocks.addAll(List.of("G2 X0 Y0 Z1.875 I-1. J0", "G0 Z20.", "M30"));

		assertThat(loud(blocks)).extracting(Finding::rule).containsExactly("helix-wrong-hand");
		blocks.replaceAll(block -> block.replace("G2", "G3"));
		assertThat(loud(blocks)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"G17, 'X, Z, I and K', G18", "G19, 'X, Y, I and J', G17"})
	void arcsOfAnotherPlaneAreOneFinding(String inForce, String words, String right) {
		List<String> blocks = new ArrayList<>(List.of("G21 G90 " + inForce + " G94", "T2 M6 (THREAD MILL D10 M16X1.5)",
				"G54 G0 X0 Y0 Z0 S2500 M3"));
		boolean side = right.equals("G18");
		for (int turn = 1; turn < 6; turn++) {
			blocks.add(side ? text("G3 X0 Z0 Y%.1f I-3. K1. F150", -15 + 1.5 * turn)
					: text("G3 X0 Y0 Z%.1f I-3. J1. F150", -15 + 1.5 * turn));
		}
		blocks.addAll(List.of("G0 Z20.", "M30"));

		assertThat(loud(blocks)).extracting(Finding::rule).containsOnlyOnce("plane-wrong").doesNotContain("arc-not-closed");
		assertThat(loud(blocks)).filteredOn(f -> f.rule().equals("plane-wrong"))
				.allSatisfy(f -> assertThat(f.message()).startsWith(inForce + " is in force, the arc is written for " + words)
						.endsWith(right + " before the tool goes in"));
	}

	/** About the point over against the hole's centre, seen from where the circle begins; the hole 9 mm off, and 4 mm. */
	@ParameterizedTest
	@CsvSource({"5, 4.5", "10, 2"})
	void aCentreOnTheWrongSideIsNoBolt(double cutter, double radius) {
		List<String> blocks = new ArrayList<>(milled(12.5, text("THREAD MILL D%.0f M14X1.5", cutter), radius, 1.5));
		blocks.add(5, "X40.");
		int first = blocks.indexOf("G43 H2 Z20.") + 1;
		List<String> other = new ArrayList<>(blocks.subList(first, blocks.size() - 1));
		other.replaceAll(block -> block.replace(text("X%.4f", radius), text("X%.4f", radius + 40)).replace("X0 ", "X40. "));
		other.add(0, "X40.");
		blocks.addAll(blocks.size() - 1, other);
		assertThat(loud(blocks)).isEmpty();

		int slip = first + 5;
		blocks.set(slip, blocks.get(slip).replace(text("I-%.4f", radius), text("I%.4f", radius)));
		assertThat(loud(blocks)).singleElement().satisfies(f -> {
			assertThat(f.rule()).isEqualTo("arc-not-closed");
			assertThat(f.message()).contains("lies on the other side of its start");
			assertThat(f.at().line()).isEqualTo(slip);
		});
	}

	@Test
	void theLeadInBeforeAMissingSubprogramIsNoThread() {
		List<String> blocks = new ArrayList<>(milled(12.5, "THREAD MILL D10 M14X1.5", 2, 1.5).subList(0, 11));
		blocks.addAll(List.of("M98 P4711 L11", "G91 G3 X-2. Y0 Z0.375 I-1. J0", "G90 G0 Z20.", "M30"));

		assertThat(loud(blocks)).extracting(Finding::rule).containsExactly("not-followed");
	}
}
