package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/** Behind a stop the same X and Y may be another hole: one evidence for threading it again and for drilling it again. */
class AnotherPartTest {

	private static final List<String> DRILLED = List.of("T1 M6 (DRILL 8.5)", "G0 X0 Y0 S1000 M3", "G43 H1 Z50",
			"G83 X0 Y0 Z-30 R2 Q3 F100", "G80");
	private static final List<String> BY_ANOTHER_DRILL = List.of("T3 M6 (DRILL 8.5)", "G0 X0 Y0 S1000 M3", "G43 H3 Z50",
			"G83 X0 Y0 Z-30 R2 Q3 F100", "G80");
	private static final List<String> TAPPED = List.of("T2 M6 (M10 TAP)", "G0 X0 Y0 S200 M3", "G43 H2 Z50",
			"G84 X0 Y0 Z-20 R5 F300", "G80");
	private static final List<String> TAPPED_AGAIN = List.of("G0 X0 Y0 S200 M3", "G84 X0 Y0 Z-20 R5 F300", "G80");

	@ParameterizedTest
	@CsvSource({"M0 (TURN PART OVER), tap, ", "(FLIP);M00, drill and tap, ", "M1;(OP 2), drill and tap, ", "M0, drill and tap, ",
			"M0, tap, threaded-twice", "M0 (CHECK THREAD), tap, threaded-twice", "M0 (CHECK THREAD), drill, drilled-after-threading",
			"M0, another drill, drilled-after-threading", "M1, drill, drilled-after-threading", "M0 (UMSPANNEN), another drill, "})
	void theStopTells(String stop, String then, String rule) {
		List<String> blocks = new ArrayList<>(List.of("O1 (PLATE)", "G21 G17 G90 G54"));
		blocks.addAll(DRILLED);
		blocks.addAll(TAPPED);
		blocks.add("G0 Z100 M5");
		blocks.addAll(Arrays.asList(stop.split(";")));
		switch (then) {
			case "tap" -> blocks.addAll(TAPPED_AGAIN);
			case "drill" -> blocks.addAll(DRILLED);
			case "another drill" -> blocks.addAll(BY_ANOTHER_DRILL);
			default -> {
				blocks.addAll(DRILLED);
				blocks.addAll(TAPPED);
			}
		}
		blocks.add("M30");
		assertThat(Samples.findings(blocks.toArray(String[]::new))).filteredOn(f -> f.severity() != Severity.INFORMATION)
				.extracting(f -> f.rule()).isEqualTo(rule == null ? List.of() : List.of(rule));
	}
}
