package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** The drill is called again where the tap was meant, with the tap's offset; or the same tool has the same offset twice. */
class OneToolTwoOffsetsTest {

	@ParameterizedTest
	@CsvSource({"T4, H5, 'H5 is not T4''s, which runs with H4 elsewhere: tool or offset is another one''s, and it goes too deep or too "
			+ "high by the difference of the tools'' lengths; T5, or H4'", "T5, H5, "})
	void theTapsOffset(String tool, String offset, String message) {
		assertThat(Samples.findings("G21 G90 G94 G17", "(T4 D=6.8 DRILL)", "(T5 D=8 TAP M8X1.25)", "(DRILL1)", "T4 M6", "S2340 M3",
				"G54 G0 X-40 Y-30", "G43 Z15 H4", "G98 G83 X-40 Y-30 Z-25 R5 Q4 F351", "X40", "G80", "M5", "(TAP1)", tool + " M6",
				"S398 M3", "G54 G0 X-40 Y-30", "G43 Z15 " + offset, "G98 G84 X-40 Y-30 Z-18 R8 F497.5", "X40", "G80", "M30"))
				.filteredOn(f -> f.severity() != Severity.INFORMATION).extracting(Finding::message).isEqualTo(message == null ? List.of()
						: List.of(message));
	}

	/** T2 for T1: the tap comes, and drills. */
	@ParameterizedTest
	@CsvSource({"T2, H1, 'H1 is not T2''s, which runs with H2 elsewhere: tool or offset is another one''s, and it goes too deep or too "
			+ "high by the difference of the tools'' lengths; T1, or H2'", "T1, H1, "})
	void theTapsNumberAtTheDrill(String tool, String offset, String message) {
		assertThat(Samples.findings("G21 G90 G94 G17", tool + " M6 (BOHRER 6.8)", "S2340 M3", "G54 G0 X-40 Y-30", "G43 Z15 " + offset,
				"G98 G83 X-40 Y-30 Z-25 R5 Q4 F351", "X40", "G80", "T2 M6 (GEWINDEBOHRER M8)", "S398 M3", "G54 G0 X-40 Y-30", "G43 Z15 H2",
				"G98 G84 X-40 Y-30 Z-18 R8 F497.5", "X40", "G80", "M30")).filteredOn(f -> f.severity() != Severity.INFORMATION)
				.extracting(Finding::message).isEqualTo(message == null ? List.of() : List.of(message));
	}
}
