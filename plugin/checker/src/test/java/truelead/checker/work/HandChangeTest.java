package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/** A tool that is put into the spindle by hand at M0: what is said there speaks of it, and no more of the drill before. */
class HandChangeTest {

	@ParameterizedTest
	@CsvSource({"T1 M6 (DRILL 5.0), M0 (LOAD M6 TAP), G84, 500, ", "(DRILL 5.0 IN SPINDLE), M0 (M6 TAP), G84, 500, ",
			"T1 M6 (DRILL 5.0), (INSERT M6 TAP);M0, G84, 500, ", "M0 (LOAD DRILL 4.2), M0 (LOAD M6 TAP), G84, 500, drill-too-small",
			"T1 M6 (DRILL 5.0), M0 (LOAD M6 TAP), G81, 500, tap-in-drilling-cycle",
			"T1 M6 (DRILL 5.0), M0 (GEWINDEBOHRER M6 EINSETZEN), G84, 400, feed-off-pitch",
			"T1 M6 (DRILL 5.0), M0 (BLOW OUT M6 TAP HOLES), G84, 500, drill-in-tapping-cycle"})
	void theToolOfTheStop(String first, String stop, String cycle, String feed, String rule) {
		List<String> blocks = new ArrayList<>(List.of("O1 (BRACKET)", "G21 G90 G17 G94", first, "S2000 M3", "G0 X0 Y0", "G43 Z50 H1",
				"G81 X0 Y0 Z-20 R2 F200", "X20", "G80", "G0 Z100 M5"));
		blocks.addAll(List.of(stop.split(";")));
		blocks.addAll(List.of("S500 M3", "G0 X0 Y0", "G43 Z50 H2", cycle + " X0 Y0 Z-12 R5 F" + feed, "X20", "G80", "M30"));
		assertThat(Samples.findings(blocks.toArray(String[]::new))).filteredOn(f -> f.severity() != Severity.INFORMATION)
				.extracting(f -> f.rule()).isEqualTo(rule == null ? List.of() : List.of(rule));
	}
}
