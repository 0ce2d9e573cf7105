package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/** The largest cutter: 0.7 D of a coarse thread, 0.8 D of a fine one; common practice, no source. */
class CutterTooBigTest {

	@ParameterizedTest
	@CsvSource({ "M20X2.5, 2.5, 14", "M20X1.5, 1.5, 16" })
	void theLimitIsAPartOfTheDiameter(String thread, double pitch, double largest) {
		assertThat(found(thread, pitch, largest)).isFalse();
		assertThat(found(thread, pitch, largest + 0.1)).isTrue();
	}

	private static boolean found(String thread, double pitch, double cutter) {
		String radius = String.format(Locale.ROOT, "%.3f", (20 - cutter) / 2);
		return Samples.findings(MachineProfile.generic(), "G21 G90 G94 G17", "T1 M6 (THREAD MILL D" + cutter + " " + thread + ")",
				"G54 G0 X0 Y0 S2600 M3", "G43 H1 Z10", "G0 Z" + -3 * pitch, "G1 X" + radius + " F120", "G3 I-" + radius + " J0 Z"
				+ -2 * pitch, "G3 I-" + radius + " J0 Z" + -pitch, "G3 I-" + radius + " J0 Z0", "G1 X0", "G0 Z10", "M30").stream()
				.anyMatch(f -> f.rule().equals("cutter-too-big"));
	}
}
