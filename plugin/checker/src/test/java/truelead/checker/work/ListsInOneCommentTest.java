package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.callout.ToolListParts;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** Drill and tap named in one comment, their numbers before, behind or within, and lines of a tool list as machines write them. */
class ListsInOneCommentTest {

	private static final String PROGRAM = """
			%s
			G21 G90 G17
			T11 M6
			S2800 M3
			G0 X10 Y10
			G43 H11 Z20
			G81 Z-22 R2 F300
			G80
			T12 M6
			S400 M3
			G0 X10 Y10
			G43 H12 Z20
			G84 Z-15 R5 F%s
			G80
			M30
			""";

	@ParameterizedTest
	@ValueSource(strings = { "(TAP M8X1.25 == T12 ; DRILL 6.8 == T11)", "(DRILL 6.8 T11 / M8 TAP T12)",
			"(FORET 6.8 : T11 - TARAUD M8 : T12)", "(T11 DRILL 6.8 / T12 M8 TAP)",
			"(6.8 DRILL T11 / M8 TAP T12 TENSION-COMPRESSION HOLDER)", "(T11 6.8 DR/T12 M8 TAP)", "(6.8 = T11, GEW M8 = T12)",
			"(6.8 DRILL = T11 / M8 = T12)", "(SPOT T1, DRILL 6.8 T11, M8 TAP T12)",
			"(DRILL  T11  DIA 6.8   FOR M8)\n(TAP    T12  M8 X 1.25  SPIRAL POINT)",
			"(TOOL - 11 DIA. OFF. - 41 LEN. - 11 DIA. - 6.8)\n(M8 TAP TOOL - 12 DIA. OFF. - 42 LEN. - 12 DIA. - 8.)\n(T12 M8 TAP)" })
	void drillAndTapAreTold(String list) {
		assertThat(loud(PROGRAM.formatted(list, "500"))).isEmpty();
		assertThat(loud(PROGRAM.formatted(list, "400"))).singleElement().asString().startsWith("feed-off-pitch");
		assertThat(loud(PROGRAM.formatted(list.replace("6.8", "7.4"), "500"))).as("the drill is known").singleElement().asString()
				.startsWith("drill-too-big");
	}

	@ParameterizedTest
	@ValueSource(strings = { "(DRILL TOOL - 11 DIA. OFF. - 41 LEN. - 11 DIA. - 6.8)",
			"(6.8 DRILL TOOL - 11 DIA. OFF. - 41 LEN. - 11 DIA. - 6.8)", "(TOOL 11 LEN. - 1 DIA. - 6.8 DRILL)" })
	void aDiameterBehindItsNameIsNotTheNumberOfTheOffset(String comment) {
		assertThat(loud(PROGRAM.formatted("", "500").replace("T11 M6", "T11 M6 " + comment).replace("T12 M6", "T12 M6 (M8 TAP)")))
				.isEmpty();
		assertThat(loud(PROGRAM.formatted("", "500").replace("T11 M6", "T11 M6 " + comment.replace("6.8", "7.4"))
				.replace("T12 M6", "T12 M6 (M8 TAP)"))).singleElement().asString().startsWith("drill-too-big");
	}

	private static List<String> loud(String program) {
		return Samples.findings(program.lines().toArray(String[]::new)).stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> f.rule() + " " + f.message()).toList();
	}

	@ParameterizedTest
	@ValueSource(strings =
			{ "(TOOL NUMBER: 11  TOOL DIAMETER: 6.8  DESC: STUB DRILL 6.8MM)\n(TOOL NUMBER: 12  TOOL DIAMETER: 8.0  DESC: TAP M8X1.25)",
					"(N1 T11 6.8 DRILL M8 PORTS)\n(N3 T12 M8 TAP)", "(OP 10 - T11 - DRILL 6.8)\n(OP 20 - T12 - M8X1.25 TAP)",
					"(#11  6.8 DRILL FOR M8)\n(#12  M8 TAP)",
					";  1    11    BOHRER_HM_6.8_3xD        6.8\n;  2    12    TAP_M8_SPF_6H            8" })
	void listsOfTablesAreRead(String list) {
		assertThat(loud(PROGRAM.formatted(list, "500"))).isEmpty();
		assertThat(loud(PROGRAM.formatted(list, "400"))).singleElement().asString().startsWith("feed-off-pitch");
		assertThat(loud(PROGRAM.formatted(list.replace("6.8", "7.4"), "500"))).as("the drill is known").singleElement().asString()
				.startsWith("drill-too-big");
	}

	@Test
	void aCountBehindHolesIsNoSizeOfTheDrill() {
		assertThat(loud(PROGRAM.formatted("", "500").replace("T11 M6", "T11 M6\n(DRILL HOLES 4X)").replace("T12 M6", "T12 M6 (M8 TAP)")))
				.isEmpty();
	}

	@Test
	void aTapHoleOfTheCoresSizeIsDrilled() {
		assertThat(loud(PROGRAM.formatted("", "500").replace("T11 M6", "T11 M6 (D6.8 BIT - M8 TAP HOLE)")
				.replace("T12 M6", "T12 M6 (M8X1.25 TAP)"))).isEmpty();
		assertThat(loud(PROGRAM.formatted("", "400").replace("T12 M6", "T12 M6 (M8 TAP HOLES)"))).as("without a size the tap")
				.singleElement().asString().startsWith("feed-off-pitch");
	}

	@Test
	void theLetterOfADrillMayHaveItsSizeBehindIt() {
		String program = PROGRAM.formatted("", "22.2222").replace("G21", "G20").replace("X10 Y10", "X1 Y1")
				.replace("Z-22 R2 F300", "Z-.9 R.1 F12").replace("Z-15 R5", "Z-.6 R.2").replace("Z20", "Z1")
				.replace("T12 M6", "T12 M6 (5/16-18 TAP)");
		assertThat(loud(program.replace("T11 M6", "T11 M6 (DRILL F .257)"))).isEmpty();
		assertThat(loud(program.replace("T11 M6", "T11 M6 (DRILL B .238)"))).singleElement().asString().startsWith("drill-too-small");
	}

	@ParameterizedTest
	@ValueSource(strings = { "(T1 DREHEN T3 NABE T5 ZAPFEN T7 GEWINDE M24X1.5 T9 ABSTECHEN)", "(T0101 AUSSEN T0707 GEWINDE M24X1.5)",
			"(T1 = KOPIEREN - T7 GEWINDE M24X1.5 - T9 ABSTECHEN)" })
	void aTurretsToolsNeedNotAllBeKnown(String list) {
		String program = """
				%s
				G21 G99
				T0101
				G96 S180 M3
				G0 X28. Z2.
				X23.85
				G1 Z-30. F.2
				X40.
				G0 X100. Z100.
				T0707
				G97 S600 M3
				G0 X28. Z6.
				G76 P010060 Q60 R.03
				G76 X22.16 Z-26. P920 Q250 F%s
				G0 X100. Z100.
				M30
				""";
		assertThat(Samples.heard(MachineProfile.named("turning"), program.formatted(list, "1.5"))).isEmpty();
		assertThat(Samples.heard(MachineProfile.named("turning"), program.formatted(list, "2."))).singleElement().asString()
				.startsWith("feed-off-pitch");
	}

	@ParameterizedTest
	@ValueSource(strings = { "(T1 M8 TAP FOR T2 AND T3)", "(T12 ROUGH AS T11 LIKE T12)" })
	void toolsSpokenOfAreNoList(String comment) {
		assertThat(ToolListParts.of(comment.substring(1, comment.length() - 1))).hasSize(1);
	}

	@Test
	void whatIsCalledACountersinkAndGoesTwentyFiveDeepIsNone() {
		assertThat(loud(PROGRAM.formatted("(WASH THE COUNTERSINK D12)", "500").replace("Z-22", "Z-25")
				.replace("T12 M6", "T12 M6 (M8 TAP)"))).isEmpty();
	}
}
