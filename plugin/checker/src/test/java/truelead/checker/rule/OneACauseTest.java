package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A helix put out the same wrong way at hole after hole is said once, with every block. */
class OneACauseTest {

	private static final String HEAD = """
			G21 G90 G94 G17
			T1 M6 (DRILL 18.5)
			G54 G0 X0 Y0 S700 M3
			G43 H1 Z10
			G81 Z-16 R3 F120
			X50
			X100
			G80
			T2 M6 (THREAD MILL D12 M20X1.5)
			G0 X0 Y0 S2600 M3
			G43 H2 Z10
			""";

	/** One hole, counter-clockwise and down: left-handed. */
	private static String hole(int x, double pitch) {
		return "G0 X" + x + " Y0\nG0 Z0.375\nG3 X" + (x + 4) + " Y0 Z0 I2 J0 F120\nG3 I-4 J0 Z-" + pitch + "\nG3 I-4 J0 Z-" + 2 * pitch
				+ "\nG3 I-4 J0 Z-" + 3 * pitch + "\nG3 X" + x + " Y0 Z-4.875 I-2 J0\nG0 Z10\n";
	}

	private static List<Finding> wrongHand(String program) {
		return SampleCheck.of(program).stream().filter(f -> f.rule().equals("helix-wrong-hand")).toList();
	}

	@Test
	void theSameAtThreeHolesIsOneFinding() {
		assertThat(wrongHand(HEAD + hole(0, 1.5) + hole(50, 1.5) + hole(100, 1.5) + "M30\n")).singleElement().satisfies(finding -> {
			assertThat(finding.message()).endsWith("or turn the arcs round, G2; the same at 2 more blocks of this tool");
			assertThat(finding.related()).filteredOn(r -> r.what().equals("the same again")).extracting(r -> r.at().line())
					.containsExactly(22, 30);
		});
	}

	@Test
	void anotherToolSpeaksForItself() {
		assertThat(wrongHand(HEAD + hole(0, 1.5) + "T3 M6 (THREAD MILL D12 M20X1.5)\nG0 X50 Y0 S2600 M3\nG43 H3 Z10\n" + hole(50, 1.5)
				+ "M30\n")).hasSize(2);
	}

	@Test
	void oneDrillTooShallowForTwoTaps() {
		List<Finding> found = SampleCheck.loud("""
				G21 G90 G94 G17
				T1 M6 (DRILL 14.0)
				G54 G0 X25 Y0 S900 M3
				G43 H1 Z30
				G99 G83 Z-33 R3 Q7 F180
				X-25
				G80
				T2 M6 (M16X2 RH TAP)
				G0 X25 Y0 S200 M3
				G43 H2 Z30
				G99 G84 Z-32 R8 F400
				G80
				T3 M6 (M16X2 LH TAP)
				G0 X-25 Y0 S200 M4
				G43 H3 Z30
				G99 G74 Z-32 R8 F400
				G80
				M30
				""");

		assertThat(found).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("drill-too-shallow");
			assertThat(finding.message()).endsWith("; drill to 40.3 mm, or tap to 24.7 mm at most; the same at 1 more block");
		});
	}

	@Test
	void otherNumbersAreAnotherFinding() {
		List<Finding> all = SampleCheck.of(HEAD + hole(0, 1.2) + hole(50, 1.3) + hole(100, 1.3) + "M30\n").stream()
				.filter(f -> f.rule().equals("helix-off-pitch")).toList();

		assertThat(all).hasSize(2);
		assertThat(all.get(1).message()).endsWith("the same at 1 more block of this tool");
	}
}
