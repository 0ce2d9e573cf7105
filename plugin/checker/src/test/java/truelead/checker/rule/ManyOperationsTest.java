package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;

/** What rules gather once of the whole program says of each operation just what looking at all of it again would. */
class ManyOperationsTest {

	@Test
	void aWordThatFeedsTwoThreadsIsNotChangedForOneOfThem() {
		List<Finding> two = found("feed-off-pitch", "T3 M6 (TAP)", "S500 M3", "G43 H3 Z25.", "F510.", "(M6X1)", "G84 X0 Y0 Z-12. R4.",
				"G80", "(M8X1.25)", "G84 X40. Y0 Z-12. R4.", "G80");
		assertThat(two).hasSize(1).allSatisfy(finding -> assertThat(finding.fixes()).isEmpty());
		List<Finding> one = found("feed-off-pitch", "T3 M6 (M6X1 TAP)", "S500 M3", "G43 H3 Z25.", "F510.", "G84 X0 Y0 Z-12. R4.", "G80",
				"G84 X40. Y0 Z-12. R4.", "G80");
		assertThat(one.get(0).fixes()).isNotEmpty();
	}

	@Test
	void aThreadCutAgainByALaterCycleOfTheToolIsNamedWithTheLastTime() {
		List<Finding> twice = found("threaded-twice", "T3 M6 (M6X1 TAP)", "S500 M3", "G43 H3 Z25.", "G84 X0 Y0 Z-12. R4. F500.", "G80",
				"G84 X40. Y0 Z-12. R4. F500.", "G80", "G84 X0 Y0 Z-12. R4. F500.", "G80", "G84 X0 Y0 Z-12. R4. F500.", "G80");
		assertThat(twice).extracting(finding -> finding.at().line()).containsExactly(8, 10);
		assertThat(twice.get(1).message()).contains("cut before in line 9");
	}

	@Test
	void aPlaneIsWrongOnlyWhereAllHolesBeforeLieInOneOther() {
		String[] drilled = {"T2 M6 (DRILL 5.0)", "S2000 M3", "G43 H2 Z25.", "G81 X0 Y0 Z-18. R2. F400.", "G80"};
		String[] acrossX = {"G19", "G81 X-18. Y5. Z5. R2. F400.", "G80"};
		String[] tapped = {"T3 M6 (M6X1 TAP)", "S500 M3", "G18", "G84 X0 Y-12. Z9. R4. F500.", "G80"};
		assertThat(found("plane-wrong", with(drilled, tapped))).hasSize(1);
		assertThat(found("plane-wrong", with(drilled, acrossX, tapped))).isEmpty();
		assertThat(found("plane-wrong", with(tapped, drilled))).isEmpty();
	}

	@Test
	void aHoleIsSkippedOnlyByTheOperationsThatThreadItsPattern() {
		String[] drilled = {"T2 M6 (DRILL 5.0)", "S2000 M3", "G43 H2 Z25.", "G81 X0 Y0 Z-18. R2. F400.", "X20.", "X40.", "X60.", "G80",
				"G81 X0 Y50. Z-9. R2. F400.", "X20.", "G80"};
		String[] tapped = {"T3 M6 (M6X1 TAP)", "S500 M3", "G43 H3 Z25.", "G84 X0 Y0 Z-12. R4. F500.", "X20.", "X60.", "G80"};
		assertThat(found("hole-skipped", with(drilled, tapped))).singleElement()
				.satisfies(finding -> assertThat(finding.message()).contains("at X40 Y0").doesNotContain("more"));
	}

	private static String[] with(String[]... parts) {
		List<String> blocks = new ArrayList<>();
		for (String[] part : parts) {
			blocks.addAll(List.of(part));
		}
		return blocks.toArray(String[]::new);
	}

	private static List<Finding> found(String rule, String... blocks) {
		return Samples.findings(with(new String[] {"G21 G17 G90 G54"}, blocks, new String[] {"M30"})).stream()
				.filter(f -> f.rule().equals(rule)).toList();
	}
}
