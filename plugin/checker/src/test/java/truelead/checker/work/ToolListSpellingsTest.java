package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.rule.Finding;
import truelead.checker.tool.ToolUse;

/** Tool lists as heads of programs have them: several tools in a comment, tables, numbers without a letter. */
class ToolListSpellingsTest {

	private static final List<String> BLOCKS = List.of("G21 G90", "T4 M6", "S1100 M3", "G0 X0 Y0", "G83 Z-35 R3 Q5 F165", "G80", "T5 M6",
			"S300 M3", "G0 X0 Y0", "G84 Z-25 R6 F450", "G80", "M30");

	private static Work work(String head) {
		List<String> blocks = new ArrayList<>(List.of(head.split("~")));
		blocks.addAll(BLOCKS);
		return Samples.work(blocks.toArray(String[]::new));
	}

	private static List<Integer> kinds(Work work) {
		return work.tools().stream().filter(tool -> tool.number() > 0 && tool.facts().kind().isPresent()).map(ToolUse::number).toList();
	}

	@ParameterizedTest
	@ValueSource(strings = {
			"(T4 DRILL 8.5, T5 M10 TAP)",
			"(T4 8.5 DRILL T5 M10 TAP)",
			"(T4=8.5 DRILL; T5=TAP M10)",
			"(T4: DRILL 8.5 / T5: M10 TAP)",
			"(TOOL 4 DRILL 8.5, TOOL 5 TAP M10)",
			"(T4-8.5 DRILL)~(T5-M10 TAP)",
			"(TOOL T4 = 8.5 DRILL)~(TOOL T5 = TAP M10)",
			"(TOOL T4 8.5 DRILL, TOOL T5 TAP M10)",
			"(TOOLS: T4 DRILL 8.5, T5 M10 TAP)",
			"(T4 DRILL D8.5 | T5 TAP M10 | T6 SPOT DRILL)",
			"(WERKZEUG 4 BOHRER 8.5 - WERKZEUG 5 GEWINDEBOHRER M10)",
			"(| T4 | DRILL | D8.5 | L110 |)~(| T5 | TAP M10 | D10 | L90 |)",
			"(*** T4 DRILL 8.5 ***)~(*** T5 TAP M10 ***)",
			"(4: BOHRER 8.5MM)~(5: GEWINDEBOHRER M10)",
			"(4) (DRILL 8.5)~(5) (M10 TAP)",
			"(T4)(DRILL 8.5)~(T5)(M10 TAP)",
			"(4 DRILL 8.5)~(5 M10 TAP)",
			"(GROUP 4: DRILL 8.5)~(GROUP 5: M10 TAP)",
			"(TOOL LIFE GROUP 4 = DRILL 8.5 T11 T12)~(TOOL LIFE GROUP 5 = M10 TAP T21 T22)",
			"(4 = DRILL 8.5)~(5 = TAP M10)~(6 = SPOT DRILL)",
			"; 4) DRILL 8.5~; 5) TAP M10",
			"; 4 - DRILL 8.5~; 5 - M10 TAP",
			"(UT4 = PUNTA D.8,5)~(UT5 = MASCHIO M10)",
			"(KNIV 4 : DRILL 8.5)~(KNIV 5 : TAP M10)",
			"(T4 BORER 8.5)~(T5 TAP M10)",
			"(TL 4 - 8.5 DRILL)~(TL 5 - M10 TAP)",
			"(T4 BOHRER 8.5 / T5 M10 GEWINDE)",
			"( TOOL / OFFSET / DESCRIPTION )~( 4 / 4 / 8.5 DRILL )~( 5 / 5 / M10 TAP )",
			"( 4 / 8.5 DRILL )~( 5 / M10 TAP )",
			"(NO   DESCRIPTION     DIA    H)~( 4   DRILL           8.5    4)~( 5   TAP M10X1.5     10.0   5)",
			"(NO  DIA    DESCRIPTION)~( 4  8.5    DRILL)~( 5  10.0   TAP M10)"})
	void aListAtTheHead(String head) {
		Work work = work(head);
		assertThat(work.tappings()).singleElement().satisfies(tapping -> {
			assertThat(tapping.wanted().statedThread().orElseThrow().value().designation()).isEqualTo("M10x1.5");
			assertThat(tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).flatMap(Cut::diameter).map(Fact::value))
					.contains(8.5);
		});
	}

	@ParameterizedTest
	@ValueSource(strings = {
			"(1: SPOT DRILL)~(2: DRILL 8.5)~(3: TAP M10)",
			"(4: TAP M10)~(5: DRILL 8.5)~(6: SPOT DRILL)",
			"(8  DRILL)~(10  TAP)",
			"(STAGE 8 = DRILL 8.5)~(STAGE 9 = TAP M10)",
			"(4: DRILL 8.5)~(4: TAP M10)"})
	void numbersThatAreNoToolsOfTheProgram(String head) {
		assertThat(kinds(work(head))).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = {
			"(T5 TAP M10 AFTER T4)",
			"(T5 TAP M10, THEN CHANGE T4)",
			"(T5 M10 TAP, FOR T4)"})
	void anotherToolNamedInPassing(String head) {
		assertThat(kinds(work(head))).containsExactly(5);
	}

	@ParameterizedTest
	@ValueSource(strings = {"T4 M6 (D8.5)", "T4 M6 (Ø 8,5)", "T4~M6 ; D8.5", "T=\"SPB_8.5\"~M6", "T=\"SPX_8.5_LANG\" M6"})
	void aSizeWithDecimalsIsAllThatIsSaidOfADrillWhereItIsChangedTo(String change) {
		Work work =
				Samples.work(("G21 G90~" + change
						+ "~S1100 M3~G0 X0 Y0~G83 Z-35 R3 Q5 F165~G80~T5 M6 (M10 TAP)~S300 M3~G0 X0 Y0~G84 Z-25 R6 F450~G80~M30")
						.split("~"));
		assertThat(work.tappings()).singleElement()
				.satisfies(tapping -> assertThat(tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).flatMap(Cut::diameter)
						.map(Fact::value)).contains(8.5));
	}

	@ParameterizedTest
	@ValueSource(strings = {"T4 M6 (D8)", "T4 M6 (OVERHANG 8.5)", "T=\"DRILL_85\" M6", "T4 M6 (8.5 9.5)"})
	void aNumberThatMayBeAnythingIsNoSize(String change) {
		Work work =
				Samples.work(("G21 G90~" + change
						+ "~S1100 M3~G0 X0 Y0~G83 Z-35 R3 Q5 F165~G80~T5 M6 (M10 TAP)~S300 M3~G0 X0 Y0~G84 Z-25 R6 F450~G80~M30")
						.split("~"));
		assertThat(work.tappings()).singleElement()
				.satisfies(tapping -> assertThat(tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).flatMap(Cut::diameter))
						.isEmpty());
	}

	@Test
	void aDashBehindTheNumberIsNoPartOfAnInchSize() {
		assertThat(Samples.tapping("G20 G90", "N25(T13-3/8-16 TAP)", "T13 M6", "S400 M3", "G84 Z-.5 R.2 F25.", "G80").wanted()
				.statedThread().map(Fact::value).orElseThrow().designation()).isEqualTo("3/8-16 UNC");
	}

	@Test
	void whatIsShownAtTheMachineIsReadAsAComment() {
		assertThat(Samples.tapping("G71 G90", "T5 M6", "MSG(\"TAP M10\")", "S300 M3", "G84 Z-25 R6 F450", "G80").wanted().statedThread()
				.orElseThrow().value().designation()).isEqualTo("M10x1.5");
	}

	@Test
	void theReasonOfANoteIsNoList() {
		String note = "(ALLOW: feed-off-pitch, T4 DRILL 8.5 AND T5 TAP M10 ARE TRIED)";
		List<String> blocks = new ArrayList<>(List.of(note));
		blocks.addAll(BLOCKS);
		assertThat(Samples.findings(blocks.toArray(String[]::new))).extracting(Finding::rule).doesNotContain("note-not-understood");
	}

	@Test
	void aTapOfANumberedListThatDrillsIsASlipAndTwoToolsAtOddsNumberSteps() {
		assertThat(Samples.findings("(1: DRILL 5.0)", "(2: M6 TAP)", "G21 G90", "T1 M6", "S2500 M3", "G0 X0 Y0", "G81 Z-18 R2 F300", "G80",
				"T2 M6", "S500 M3", "G0 X0 Y0", "G81 Z-12 R5 F500", "G80", "M30")).extracting(Finding::rule)
				.contains("tap-in-drilling-cycle");
		assertThat(Samples.findings("(1: DRILL 5.0)", "(2: M6 TAP)", "G21 G90", "T2 M6", "S2500 M3", "G0 X0 Y0", "G81 Z-18 R2 F300", "G80",
				"T1 M6", "S500 M3", "G0 X0 Y0", "G84 Z-12 R5 F500", "G80", "M30")).extracting(Finding::rule)
				.doesNotContain("tap-in-drilling-cycle", "drill-in-tapping-cycle");
	}

	@Test
	void aGroupIsCalledByItsNumberAboveARoundOne() {
		List<String> blocks = new ArrayList<>(List.of("(GRP 4 DRILL 8.5)", "(GRP 5 M10 TAP)"));
		BLOCKS.forEach(block -> blocks.add(block.replace("T4", "T104").replace("T5", "T105")));
		assertThat(kinds(Samples.work(blocks.toArray(String[]::new)))).containsExactly(104, 105);
	}

	@Test
	void countsOfHolesAreNoNumbersOfTools() {
		List<String> blocks = new ArrayList<>(List.of("(5 M6 TAP)", "(4 M10 TAP)"));
		blocks.addAll(BLOCKS);
		assertThat(kinds(Samples.work(blocks.toArray(String[]::new)))).as("they do not rise").isEmpty();
	}
}
