package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/** Drill and tap named in one comment, their numbers before, behind or within, and lines of a tool list as machines write them. */
class ListsInOneCommentTest {

	private static final String PROGRAM = "%s\nG21 G90 G17\nT11 M6\nS2800 M3\nG0 X10 Y10\nG43 H11 Z20\nG81 Z-22 R2 F300\nG80\nT12 M6\nS400 M3\nG0 X10 Y10\nG43 H12 Z20\nG84 Z-15 R5 F%s\nG80\nM30\n";

	@ParameterizedTest
	@ValueSource(strings = { "(TAP M8X1.25 == T12 ; DRILL 6.8 == T11)", "(DRILL 6.8 T11 / M8 TAP T12)", "(FORET 6.8 : T11 - TARAUD M8 : T12)", "(T11 DRILL 6.8 / T12 M8 TAP)",
			"(6.8 DRILL T11 / M8 TAP T12 TENSION-COMPRESSION HOLDER)", "(SPOT T1, DRILL 6.8 T11, M8 TAP T12)", "(DRILL  T11  DIA 6.8   FOR M8)\n(TAP    T12  M8 X 1.25  SPIRAL POINT)",
			"(TOOL - 11 DIA. OFF. - 41 LEN. - 11 DIA. - 6.8)\n(M8 TAP TOOL - 12 DIA. OFF. - 42 LEN. - 12 DIA. - 8.)\n(T12 M8 TAP)" })
	void drillAndTapAreTold(String list) {
		assertThat(loud(PROGRAM.formatted(list, "500"))).isEmpty();
		assertThat(loud(PROGRAM.formatted(list, "400"))).singleElement().asString().startsWith("feed-off-pitch");
		assertThat(loud(PROGRAM.formatted(list.replace("6.8", "7.4"), "500"))).as("the drill is known").singleElement().asString().startsWith("drill-too-big");
	}

	@ParameterizedTest
	@ValueSource(strings = { "(DRILL TOOL - 11 DIA. OFF. - 41 LEN. - 11 DIA. - 6.8)", "(6.8 DRILL TOOL - 11 DIA. OFF. - 41 LEN. - 11 DIA. - 6.8)", "(TOOL 11 LEN. - 1 DIA. - 6.8 DRILL)" })
	void aDiameterBehindItsNameIsNotTheNumberOfTheOffset(String comment) {
		assertThat(loud(PROGRAM.formatted("", "500").replace("T11 M6", "T11 M6 " + comment).replace("T12 M6", "T12 M6 (M8 TAP)"))).isEmpty();
		assertThat(loud(PROGRAM.formatted("", "500").replace("T11 M6", "T11 M6 " + comment.replace("6.8", "7.4")).replace("T12 M6", "T12 M6 (M8 TAP)"))).singleElement().asString().startsWith("drill-too-big");
	}

	private static List<String> loud(String program) {
		return Samples.findings(program.lines().toArray(String[]::new)).stream().filter(f -> f.severity() != Severity.INFORMATION).map(f -> f.rule() + " " + f.message()).toList();
	}
}
