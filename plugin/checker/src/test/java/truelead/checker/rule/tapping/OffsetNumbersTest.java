package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;

/** Shops whose length offsets are not numbered as their tools are. */
class OffsetNumbersTest {

	@ParameterizedTest
	@CsvSource({"21, 22, 23, ", "21, 22, 22, H22 is not T3's; and the other tools take their own number and 20 more; H23", "21, 22, 3, ",
			"7, 15, 4, ", "1, 2, 2, H2 is not T3's; and the other tools take their own number:; H3"})
	void theNumbersOfTheOtherToolsTell(int spot, int drill, int tap, String said) {
		List<String> found = Samples.findings("G21 G90 G17 G40 G80", "T1 M6 (SPOT)", "G0 X6. Y6. S3000 M3", "G43 H" + spot + " Z20.",
				"G98 G81 Z-2.2 R2. F150.", "G80", "T2 M6 (DRILL 3.3)", "G0 X6. Y6. S3000 M3", "G43 H" + drill + " Z20.",
				"G98 G83 Z-13. R2. Q2. F200.", "G80", "T3 M6 (TAP M4)", "G0 X6. Y6. S800 M3", "G43 H" + tap + " Z20.",
				"G98 G84 Z-9. R4. F560.", "G80", "M30").stream().filter(f -> f.rule().equals("length-offset-missing"))
				.map(f -> f.message()).toList();
		if (said == null) {
			assertThat(found).isEmpty();
		} else {
			assertThat(found).singleElement().asString().contains(said.split("; "));
		}
	}
}
