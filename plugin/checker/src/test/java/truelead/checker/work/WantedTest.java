package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static truelead.checker.Samples.tapping;
import static truelead.checker.Samples.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;
import truelead.checker.wanted.Wanted;
import truelead.grammar.ProgramText;

class WantedTest {

	private static String thread(Tapping tapping) {
		return tapping.wanted().thread().map(Fact::value).map(ThreadSpec::designation).orElse("none");
	}

	private static String[] tapped(List<String> comments, String s, String f) {
		List<String> blocks = new ArrayList<>(List.of("G21 G17 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.",
				"G81 Z-20. R2. F200.", "G80", "G0 Z100."));
		blocks.addAll(comments);
		blocks.addAll(List.of("T2 M6", "G54 G0 X10. Y10. S" + s + " M3", "G43 H2 Z50.", "G84 Z-12. R3. F" + f, "G80", "M30"));
		return blocks.toArray(String[]::new);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			(N111(7/16-20 TAP)      | 100 | 127    | 7/16-20 UNF
			(M8X1.25)               | 400 | 500    | M8x1.25
			(M8 X 1 RH TAP)         | 400 | 400    | M8x1
			(M14-1.5)               | 200 | 300    | M14x1.5
			(M16 X 1.5 TAP)         | 109 | 163.5  | M16x1.5
			(M5 X 0.8 ROLL TAP)     | 500 | 400    | M5x0.8
			(M12)                   | 100 | 175    | M12x1.75
			(3/8-16UNC-2B)          | 100 | 158.75 | 3/8-16 UNC-2B
			(TAP 10-32 HOLES)       | 500 | 396.9  | #10-32 UNF
			(1/4-27 NPT)            | 100 | 94.07  | 1/4-27 NPT
			""")
	void theThreadIsNamedAboveTheToolChange(String comment, String s, String f, String expected) {
		assertThat(thread(tapping(tapped(List.of(comment.strip()), s, f)))).isEqualTo(expected);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			(DATE 19-02-22)
			(M51)
			(G0X11.9Y355.4)
			(INSERT CCGT 3-1-AF)
			""")
	void whatLooksLikeACalloutAndIsNone(String comment) {
		assertThat(tapping(tapped(List.of(comment.strip()), "520", "520")).wanted().named()).isEmpty();
	}

	private static String[] twoPrograms(String firstTitle, String firstTool, String secondTitle, String secondTool) {
		return new String[] {"%", firstTitle, firstTool, "G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G0 X0 Y0", "G81 Z-20 R3 F200", "G80",
				"T2 M6", "S500 M3", "G0 X0 Y0", "G84 Z-12 R5 F500", "G80", "M30", secondTitle, secondTool, "G21 G90", "T1 M6 (DRILL 6.8)",
				"S2000 M3", "G0 X0 Y0", "G81 Z-20 R3 F200", "G80", "T2 M6", "S500 M3", "G0 X0 Y0", "G84 Z-12 R5 F625", "G80", "M30", "%"};
	}

	private static List<String> threads(String... blocks) {
		return work(blocks).tappings().stream().map(t -> t.wanted().statedThread().map(s -> s.value().designation())
				.orElse("none")).toList();
	}

	@Test
	void eachProgramOfAFileHasItsOwnTitleAndItsOwnToolList() {
		assertThat(threads(twoPrograms("O1 (COVER, M6)", "(A)", "O2 (PLATE, M8)", "(B)"))).containsExactly("M6x1", "M8x1.25");
		assertThat(threads(twoPrograms("O1 (COVER)", "(T2 = M6 TAP)", "O2 (PLATE)", "(T2 = M8 TAP)"))).containsExactly("M6x1", "M8x1.25");
		assertThat(threads(twoPrograms("O1 (COVER, 4X M6)", "(A)", "O2 (PLATE)", "(B)"))).containsExactly("M6x1", "none");
	}

	@Test
	void theListOfTheFirstProgramServesOneWithoutAList() {
		assertThat(threads(twoPrograms("O1 (COVER)", "(T2 = M6 TAP)", "O2 (COVER, OTHER SIDE)", "(B)"))).containsExactly("M6x1", "M6x1");
	}

	@Test
	void notesAtTheHeadHoldInTheirOwnProgram() {
		Work work = work(twoPrograms("O1 (COVER, M6)", "(SURFACE: Z1)", "O2 (PLATE, M8)", "(SURFACE: Z2)"));
		assertThat(work.tappings()).extracting(t -> t.wanted().surface().value()).containsExactly(1.0, 2.0);
	}

	@Test
	void commentsOfProgramsBeforeSayNothingOfTheToolThatAnotherBeginsWith() {
		List<String> blocks = new ArrayList<>();
		for (int i = 1; i <= 30; i++) {
			blocks.addAll(List.of("O" + i + " (PART M" + i + ")", "G0 X" + i, "T1 M6 (M6 TAP)", "G84 Z-12 R5 F500", "G80", "M30"));
		}
		assertThat(work(blocks.toArray(String[]::new)).tools()).allSatisfy(tool -> assertThat(tool.comments()).hasSizeLessThan(4));
	}

	@Test
	void aToolsNameThatRepeatsTheThreadLeavesDepthAndCountOfTheCallout() {
		Tapping tapping = tapping("G21 G90", "(2X M6X1 DEPTH 11 THRU)", "T2 M6 (TAP M6X1)", "S500 M3", "G0 X0 Y0", "G84 Z-14 R5 F500",
				"X20", "G80", "M30");
		assertThat(tapping.wanted().depth().orElseThrow().value()).isEqualTo(11);
		assertThat(tapping.wanted().count().orElseThrow().value()).isEqualTo(2);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			(FLANGE, 12X M6 AND 4X M10) | M6x1 | the hole of 5.0 suits one of them
			(COVER M10)                 | none | the hole of 5.0 is for no M10
			(M6 X 1 OR M6 X 0.8)        | none | both would suit
			(T7 - M6 TAP)               | none | another tool's
			""")
	void theTitleNamesTheThreadOfTheHoleThatSuitsItAlone(String title, String expected, String why) {
		List<String> blocks = new ArrayList<>(List.of(title.strip()));
		blocks.addAll(List.of(tapped(List.of(), "500", "480")));
		Tapping tapping = tapping(blocks.toArray(String[]::new));
		assertThat(tapping.wanted().statedThread().map(t -> t.value().designation()).orElse("none")).as(why).isEqualTo(expected);
		assertThat(tapping.wanted().count().map(Fact::source)).as("counts of the title speak of the part")
				.isIn(Optional.empty(), Optional.of(FactSource.TITLE));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			(COVER, M6 11 DEEP)             | 11.0 | said once
			(COVER, M6 11 DEEP, M6 8 DEEP)  | none | two kinds of holes
			(COVER, M8 11 DEEP)             | none | another thread's
			""")
	void theTitleSaysHowDeepWhereTheToolNamesTheThreadAlone(String title, String depth, String why) {
		Tapping tapping = tapping(title, "G21 G90", "T1 M6 (DRILL 5)", "S900 M3", "G81 X0 Y0 Z-20 R2 F90", "G80", "T2 M6 (TAP M6X1)",
				"S500 M3", "G0 X0 Y0", "G84 Z-14 R5 F500", "G80", "M30");
		assertThat(tapping.wanted().depth().map(said -> said.value().toString()).orElse("none")).as(why).isEqualTo(depth);
	}

	@Test
	void aToolThatIsCalledNothingAndFedThePitchInADrillingCycleIsATap() {
		Tapping tapping = tapping("G21 G90", "T1 M6 (DRILL 3.3)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.", "G81 Z-20. R2. F200.", "G80",
				"T2 M6 (M4)", "G0 X10. Y10. S800 M3", "G43 H2 Z50.", "G81 Z-9. R4. F560.", "G80", "M30");
		assertThat(tapping.method()).isEqualTo(Tapping.Method.DRILLING_CYCLE);
	}

	@Test
	void aBareSizeIsTheThreadWhereTheHoleSuitsItThoughTheFeedDoesNot() {
		assertThat(thread(tapping(tapped(List.of("(M6)"), "500", "5000")))).isEqualTo("M6x1");
	}

	@Test
	void whatADrillIsForIsNotWhatTheTapMakes() {
		Tapping tapping = tapping("G21 G90", "T1 M6 (DRILL 6.8 FOR M8 TAP)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.",
				"G81 Z-20. R2. F200.", "G80", "T2 M6", "G0 X10. Y10. S520 M3", "G43 H2 Z50.", "G84 Z-12. R3. F650.", "G80", "M30");
		assertThat(tapping.wanted().named()).isEmpty();
		assertThat(tapping.strokes().get(0).hole().cuts().get(0).tool().facts().kind().orElseThrow().value()).isEqualTo(ToolKind.DRILL);
		assertThat(tapping.strokes().get(0).hole().cuts().get(0).diameter().orElseThrow().value()).isEqualTo(6.8);
	}

	@Test
	void aCommentOfTheToolBeforeDoesNotLeak() {
		Work work = work("G21 G90", "(M6X1 TAP)", "T1 M6", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.", "G84 Z-12. R2. F520.", "G80", "T2 M6",
				"G0 X20. Y10. S520 M3", "G43 H2 Z50.", "G84 Z-12. R3. F650.", "G80", "M30");
		assertThat(thread(work.tappings().get(0))).isEqualTo("M6x1");
		assertThat(work.tappings().get(1).wanted().named()).isEmpty();
	}

	@Test
	void oneToolTwoCallouts() {
		Work work = work("G21 G90", "T1 M6 (TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.", "(M6X1)", "G84 Z-12. R2. F520.", "G80",
				"(M6X0.75)", "G0 X50.", "G84 Z-12. R2. F390.", "G80", "M30");
		assertThat(thread(work.tappings().get(0))).isEqualTo("M6x1");
		assertThat(thread(work.tappings().get(1))).isEqualTo("M6x0.75");
		assertThat(work.group(work.tappings().get(0))).hasSize(1);
	}

	@Test
	void severalCyclesUnderOneCalloutAreOneGroup() {
		Work work = work("G21 G90", "(2X M6 TAP)", "T1 M6", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.", "G84 Z-12. R2. F520.", "G80",
				"G0 X50.", "G84 Z-12. R2. F520.", "G80", "M30");
		assertThat(work.operations()).hasSize(2);
		assertThat(work.group(work.tappings().get(1))).hasSize(2);
		assertThat(work.tappings().get(1).wanted().count().orElseThrow().value()).isEqualTo(2);
	}

	@Test
	void theNearestSourceWinsAndTheOthersAreKept() {
		Tapping tapping = tapping("(T1 M8X1 TAP)", "G21 G90", "T1 M6", "(M8X1.25 TAP)", "G54 G0 X10. Y10. S400 M3", "G43 H1 Z50.",
				"G84 Z-12. R2. F500.", "G80", "M30");
		assertThat(tapping.wanted().named()).extracting(n -> n.value().designation()).containsExactly("M8x1.25", "M8x1");
		assertThat(tapping.wanted().named()).extracting(Fact::source).containsExactly(FactSource.CALLOUT, FactSource.CALLOUT);
	}

	@Test
	void aNoteBeatsACallout() {
		Tapping tapping = tapping(tapped(List.of("(M8X1 TAP)", "(THREAD: M8X1.25-6H, DEPTH 10, BLIND)", "(STOCK: STEEL, 28 HRC)",
				"(SURFACE: Z1.)", "(HOLE: BOTTOM 18, WALL 25)"), "400", "500"));
		Wanted wanted = tapping.wanted();
		assertThat(thread(tapping)).isEqualTo("M8x1.25-6H");
		assertThat(wanted.thread().orElseThrow().source()).isEqualTo(FactSource.NOTE);
		assertThat(wanted.depth().orElseThrow().value()).isEqualTo(10);
		assertThat(wanted.through().orElseThrow().value()).isFalse();
		assertThat(wanted.surface().value()).isEqualTo(1);
		assertThat(wanted.holeBottom().orElseThrow().value()).isEqualTo(18);
		assertThat(wanted.wall().orElseThrow().value()).isEqualTo(25);
		assertThat(wanted.stock().orElseThrow().value().hardness()).hasValue(28);
	}

	@Test
	void depthCountAndThroughOfACallout() {
		Wanted wanted = tapping(tapped(List.of("(4X M6X1 TAP THRU)"), "520", "520")).wanted();
		assertThat(wanted.count().orElseThrow().value()).isEqualTo(4);
		assertThat(wanted.through().orElseThrow().value()).isTrue();
		Wanted deep = tapping(tapped(List.of("(M6X1 TAP 12 DEEP)"), "520", "520")).wanted();
		assertThat(deep.depth().orElseThrow().value()).isCloseTo(12, within(1e-9));
	}

	@Test
	void theCalloutStandsInTheSubprogram() {
		Tapping tapping = tapping("G21 G90", "T1 M6", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.", "M98 P100", "M30", "O100", "(M6X1 TAP)",
				"G84 Z-12. R2. F520.", "X20.", "G80", "M99");
		assertThat(thread(tapping)).isEqualTo("M6x1");
		assertThat(tapping.strokes()).hasSize(2);
	}

	@Test
	void aSubprogramCalledTwiceUnderOneToolIsOneOperation() {
		Work work = work("G21 G90", "T1 M6 (M6 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.", "M98 P100", "G0 X50. Y50.", "M98 P100",
				"M30", "O100", "G84 Z-12. R2. F520.", "G91 X10.", "G90 G80", "M99");
		assertThat(work.operations()).hasSize(1);
		assertThat(work.tappings().get(0).strokes()).hasSize(4);
	}

	@Test
	void toolListAtTheHead() {
		Tapping tapping = tapping("O100 (BRACKET)", "(T1 DRILL 6.8)", "(T2 M8X1.25 FORM TAP)", "G21 G90", "T1 M6",
				"G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.", "G81 Z-20. R2. F200.", "G80", "T2 M6", "G0 X10. Y10. S400 M3", "G43 H2 Z50.",
				"G84 Z-12. R3. F500.", "G80", "M30");
		assertThat(thread(tapping)).isEqualTo("M8x1.25");
		assertThat(tapping.wanted().thread().orElseThrow().source()).isEqualTo(FactSource.TOOL_LIST);
		assertThat(tapping.tool().facts().kind().orElseThrow().value()).isEqualTo(ToolKind.FORM_TAP);
		assertThat(tapping.strokes().get(0).hole().cuts().get(0).diameter().orElseThrow().value()).isEqualTo(6.8);
	}

	@Test
	void toolListFile() {
		Job job = Job.EMPTY.withToolList(new ProgramFile("tools.csv", ProgramText.of("TOOL,KIND,THREAD,HOLDER\n2,tap,M8x1.25,floating\n")));
		Work work = Samples.work(truelead.checker.profile.MachineProfile.generic(), job, tapped(List.of(), "400", "500"));
		assertThat(work.tappings().get(0).wanted().thread().orElseThrow().source()).isEqualTo(FactSource.TOOL_FILE);
		assertThat(work.tappings().get(0).wanted().holder().value().kind()).isEqualTo(HolderKind.FLOATING);
	}

	@Test
	void aPreselectedToolsCommentIsItsOwn() {
		Work work = work("G21 G90", "T1 M6 (DRILL 6.8)", "T2 (M8X1.25 TAP)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.",
				"G81 Z-20. R2. F200.", "G80", "M6", "G0 X10. Y10. S400 M3", "G43 H2 Z50.", "G84 Z-12. R3. F500.", "G80", "M30");
		assertThat(work.operations()).hasSize(1);
		assertThat(thread(work.tappings().get(0))).isEqualTo("M8x1.25");
		assertThat(work.tools().get(1).facts().kind().orElseThrow().value()).isEqualTo(ToolKind.DRILL);
	}

	@Test
	void anAllowanceBelongsToItsOperation() {
		Work work = work("G21 G90", "T1 M6 (M6 TAP)", "(ALLOW: feed-off-pitch, FLOATING HOLDER)", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.",
				"G84 Z-12. R2. F515.", "G80", "T2 M6 (M8 TAP)", "G0 X50. S400 M3", "G43 H2 Z50.", "G84 Z-12. R2. F500.", "G80", "M30");
		assertThat(work.tappings().get(0).wanted().allowances()).hasSize(1);
		assertThat(work.tappings().get(1).wanted().allowances()).isEmpty();
	}

	@Test
	void belowAStepTheRPlaneIsAllThatIsKnownOfTheSurface() {
		Tapping tapping = tapping("G21 G90", "T1 M6 (M6 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.", "G84 Z-32. R-18. F520.",
				"G80", "M30");
		assertThat(tapping.wanted().surface().value()).isEqualTo(-18);
		assertThat(tapping.wanted().surface().source()).isEqualTo(FactSource.IMPLIED);
	}

	@Test
	void aTitleOfTheWholeJobNamesNoTool() {
		Tapping tapping = tapping("O100", "(DRILL AND TAP M6)", "G21 G90", "T1 M6", "G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.",
				"G84 Z-12. R2. F520.", "G80", "M30");
		assertThat(tapping.method()).isEqualTo(Tapping.Method.CYCLE);
		assertThat(thread(tapping)).isEqualTo("M6x1");
		assertThat(tapping.tool().facts().kind()).isEmpty();
	}

	@Test
	void aTitleFarAboveDoesNotMakeADrillOfATap() {
		Tapping tapping = tapping("O100 (DRILLING)", "G21 G90", "G17", "G40", "G49", "G28 G91 Z0", "G90", "T1 M6",
				"G54 G0 X10. Y10. S520 M3", "G43 H1 Z50.", "G84 Z-12. R2. F520.", "G80", "M30");
		assertThat(tapping.method()).isEqualTo(Tapping.Method.CYCLE);
	}

	@ParameterizedTest
	@CsvSource({"32, -15, -15", "24, -15, 0", "32, -36, 0"})
	void theFloorOfAWiderBoreIsTheTopOfTheThread(String wide, String floor, double top) {
		Tapping tapping = Samples.work(MachineProfile.named("turning"), Job.EMPTY, "G21 G99", "T0202 (DRILL 22)", "G97 S1200 M3",
				"G0 X0 Z3", "G1 Z-60 F.1", "G0 Z100", "T0303 (BORING BAR)", "G96 S140 M3", "G0 X" + wide + " Z2", "G1 Z" + floor + " F.15",
				"X20", "G0 Z100", "T0404 (M24X2 TAP)", "G97 S120 M3", "G0 X0 Z6", "G84 Z-38 F2", "G80", "M30").tappings().get(0);
		assertThat(tapping.wanted().surface().value()).as("wide enough for any thread below, and most of the thread below it")
				.isEqualTo(top);
	}
}
