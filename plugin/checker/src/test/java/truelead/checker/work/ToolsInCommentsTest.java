package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.Holder;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Wanted;

/** How people number the tools of a list, and what they say of holders in passing. */
class ToolsInCommentsTest {

	@ParameterizedTest
	@ValueSource(strings = {"8.5 DRILL - M10 TAP", "DRILL D8.5 LH TAP M10X1.5 NEXT", "DRILL 8.5 (TAP M10 IS T5)", "FORET 8.5 TARAUD M10",
			"M10 TAP AFTER THE 8.5 DRILL"})
	void aDrillWhoseCommentNamesTheTapTooIsADrillWhereItDrills(String drill) {
		Work work = Samples.work("G21 G90", "T4 M6 (" + drill + ")", "S1100 M3", "G0 X0 Y0", "G83 Z-35 R3 Q5 F165", "G80",
				"T5 M6 (M10 FORM TAP, DRILL 8.5)", "S300 M3", "G0 X0 Y0", "G84 Z-25 R6 F450", "G80", "M30");
		assertThat(work.tappings()).singleElement().satisfies(tapping -> {
			assertThat(tapping.tool().facts().kind().orElseThrow().value()).isEqualTo(ToolKind.FORM_TAP);
			assertThat(tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).orElseThrow().diameter().orElseThrow().value())
					.isEqualTo(8.5);
		});
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			(Werkzeug 4: Bohrer 8.5) | (Werkzeug 5: Gewindebohrer M10)
			(OUTIL 4 FORET D8.5)     | (OUTIL 5 TARAUD M10)
			(TOOL 04 DRILL 8.50)     | (TOOL 05 TAP M10)
			(TOOL NO. 4 - 8.5 DRILL) | (TOOL NO. 5 - M10 TAP)
			(ИНСТРУМЕНТ 4 СВЕРЛО 8.5) | (ИНСТРУМЕНТ 5 МЕТЧИК М10)
			""")
	void aListInTheWordsOfManyLanguages(String drill, String tap) {
		Work work = Samples.work(drill, tap, "G21 G90", "T4 M6", "S1100 M3", "G0 X0 Y0", "G83 Z-35 R3 Q5 F165", "G80", "T5 M6", "S300 M3",
				"G0 X0 Y0", "G84 Z-25 R6 F450", "G80", "M30");
		assertThat(work.tappings()).singleElement().satisfies(tapping -> {
			assertThat(tapping.wanted().statedThread().orElseThrow().value().designation()).isEqualTo("M10x1.5");
			assertThat(tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).orElseThrow().diameter().orElseThrow().value())
					.isEqualTo(8.5);
		});
	}

	/** Some number the tools by their offsets, or by the places of the magazine. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			(H4 = DRILL 8.5)   | (H5 = M10 TAP)
			(H04 DRILL 8.5)    | (H05 M10 TAP)
			(POT 4 - 8.5 DRILL) | (POT 5 - M10 TAP)
			""")
	void aListByOffsetsOrPlaces(String drill, String tap) {
		assertThat(Samples.work(drill, tap, "G21 G90", "T4 M6", "S1100 M3", "G0 X0 Y0", "G43 H4 Z50", "G83 Z-35 R3 Q5 F165", "G80", "T5 M6",
				"S300 M3", "G0 X0 Y0", "G43 H5 Z50", "G84 Z-25 R6 F450", "G80", "M30").tappings()).singleElement()
				.satisfies(tapping -> assertThat(tapping.wanted().statedThread().orElseThrow().value().designation()).isEqualTo("M10x1.5"));
	}

	/** What is to be done before another tool comes is said at this one. */
	@ParameterizedTest
	@ValueSource(strings = {"BLOW OUT HOLES BEFORE TAPPING", "CHIPS OUT BEFORE TAP", "TAPPING OIL ON", "SPAENE WEG VOR GEWINDEBOHREN",
			"NETTOYER AVANT TARAUDAGE", "PULIRE PRIMA DI MASCHIARE"})
	void aDrillIsNoTapThatComesLater(String comment) {
		assertThat(Samples.findings("G21 G90", "T4 M6", "(" + comment + ")", "S1100 M3", "G0 X0 Y0", "G43 H4 Z50", "G83 Z-35 R3 Q5 F165",
				"G80", "M30")).noneSatisfy(f -> assertThat(f.rule()).isEqualTo("tap-in-drilling-cycle"));
	}

	private static double drilled(String... beforeTheTap) {
		List<String> blocks = new ArrayList<>(List.of(beforeTheTap));
		blocks.addAll(List.of("G0 Z3", "X80 Z80", "T0505 (M10 GEW.BOHRER)", "G97 S300 M3", "G0 X0 Z6", "G84 Z-25 F1.5", "G80", "M30"));
		Tapping tapping = Samples.work(MachineProfile.named("turning"), Job.EMPTY, blocks.toArray(String[]::new)).tappings().get(0);
		assertThat(tapping.method()).isEqualTo(Tapping.Method.CYCLE);
		return tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).flatMap(Cut::diameter).map(Fact::value).orElse(Double.NaN);
	}

	/** The section's title stands above the way home, as many posts write it. */
	@ParameterizedTest
	@ValueSource(strings = {"G91 G28 Z0", "G0 Z100 M9", "G53 Z0"})
	void theTitleBeforeTheWayHomeIsTheNextTools(String home) {
		Work work = Samples.work("G21 G90", "N1 (DRILL 8.5)", "G91 G28 Z0", "G90 T4 M6", "S1100 M3", "G0 X0 Y0", "G83 Z-35 R3 Q5 F165",
				"G80", "M9", "N2 (TAP M10)", home, "G90 T5 M6", "S300 M3", "G0 X0 Y0", "G84 Z-25 R6 F450", "G80", "G53 Z0", "M30");

		assertThat(work.tappings()).singleElement().satisfies(tapping -> {
			assertThat(tapping.method()).isEqualTo(Tapping.Method.CYCLE);
			assertThat(tapping.wanted().statedThread().orElseThrow().value().designation()).isEqualTo("M10x1.5");
			assertThat(tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).orElseThrow().diameter().orElseThrow().value())
					.isEqualTo(8.5);
		});
	}

	/** What the job is for stands above its first tool, which spots. */
	@ParameterizedTest
	@ValueSource(strings = {"(TAP M8)", "(M8 TAP)", "(M8 TAPPED HOLES)", "(ROUGH TAP AND FINISH TAP M8)"})
	void aTitleThatSpeaksOfTapsIsNotTheSpotDrills(String title) {
		Work work = Samples.work(title, "T1 M6", "G21 G90 G54 G0 X0 Y0 S2000 M3", "G81 Z-4.2 R2. F100.", "X50.", "G80", "T2 M6",
				"G0 X0 Y0 S1900 M3", "G83 Z-26. R2. Q3. F200.", "X50.", "G80", "T3 M6", "G0 X0 Y0 S500 M3", "G84 Z-18. R5. F625.", "X50.",
				"G80", "M30");

		assertThat(work.tappings()).singleElement().satisfies(tapping -> {
			assertThat(tapping.tool().number()).isEqualTo(3);
			assertThat(tapping.wanted().statedThread().orElseThrow().value().designation()).isEqualTo("M8x1.25");
		});
	}

	@Test
	void aFirstToolCalledATapThatDrillsIsOneWhereNothingElseTaps() {
		Work work = Samples.work("(M8 TAP)", "T1 M6", "G21 G90 G54 G0 X0 Y0 S500 M3", "G81 Z-18. R5. F625.", "G80", "T2 M6 (DEBURR)",
				"G0 X0 Y0 S1900 M3", "G82 Z-4. R2. F200.", "G80", "M30");

		assertThat(work.tappings()).singleElement().satisfies(tapping -> assertThat(tapping.method())
				.isEqualTo(Tapping.Method.DRILLING_CYCLE));
	}

	@Test
	void howTheHoleIsMadeBehindAListedTapIsNoSecondTool() {
		Work work = Samples.work("(T3 ROLL TAP M5X0.8-6HX - PREDRILL 4.65)", "G21 G90", "T3 M6", "S700 M3", "G0 X0 Y0", "G84 Z-10 R5 F560",
				"G80", "M30");

		assertThat(work.tappings()).singleElement()
				.satisfies(tapping -> assertThat(tapping.tool().facts().kind().orElseThrow().value()).isEqualTo(ToolKind.FORM_TAP));
	}

	/** Before a plain way up too: it is the first block of the next tool's part. */
	@Test
	void theTitleBeforeTheWayUpIsTheNextTools() {
		Work work = Samples.work("G21 G90", "N1 (DRILL 8.5)", "T4 M6", "S1100 M3", "G0 X0 Y0 Z5", "G83 Z-35 R3 Q5 F165", "G80",
				"N2 (TAP M10)", "G0 Z100", "T5 M6", "S300 M3", "G0 X0 Y0 Z5", "G84 Z-25 R6 F450", "G80", "N3 (CHAMFER MILL 8MM)", "G0 Z100",
				"T6 M6", "S5000 M3", "G0 X0 Y-10 Z5", "G1 Z-1 F400", "X60", "M30");

		assertThat(work.tappings()).singleElement().satisfies(tapping -> {
			assertThat(tapping.method()).isEqualTo(Tapping.Method.CYCLE);
			assertThat(tapping.strokes().get(0).hole().sizedBefore(tapping.firstOrder()).orElseThrow().diameter().orElseThrow().value())
					.isEqualTo(8.5);
		});
	}

	/** Blocks that stop spindle and coolant stand between the title and the change. */
	@Test
	void aDrillNamedAboveItsChangeIsNoTap() {
		Work work = Samples.work("G21 G90", "(SPOT DRILL)", "T3 M6", "S2000 M3", "G0 X0 Y0 Z5", "G81 Z-3 R3 F150", "G80", "G0 Z15",
				"(M8 DRILL THRU)", "M5", "M9", "G53 G0 Z0", "T12 M6", "S2400 M3", "G0 X0 Y0 Z5", "G84 Z-17 R3 F300", "G80", "M30");

		assertThat(work.tappings()).singleElement().satisfies(tapping -> assertThat(tapping.method()).isEqualTo(Tapping.Method.WRONG_TOOL));
	}

	@Test
	void aNameOfABlockBesideTheToolIsNoCode() {
		assertThat(drilled("G50 S2000", "G97 S900 M3 T0404", "NAT02 (8.5 DRILL)", "G97 S900 M3 T0202", "G0 X0 Z3", "G1 Z-35 F.1"))
				.isEqualTo(8.5);
	}

	@Test
	void aTurretCalledWithoutItsOffsetBeforeIsTheSameTool() {
		assertThat(drilled("T200", "G50 S2000", "T0202 (8.5 DRILL)", "G97 S900 M3", "G0 X0 Z3", "G1 Z-35 F.1")).isEqualTo(8.5);
	}

	@Test
	void theTitleIsNoToolWhereTheToolHasItsOwnComment() {
		assertThat(drilled("O1 (TAP M10)", "G99", "T0202 (KB 8.5)", "G97 S900 M3", "G0 X0 Z3", "G1 Z-35 F.1"))
				.as("the drill is no tap").isNaN();
	}

	@Test
	void aToolNumberIsNoWholePartOfAFraction() {
		assertThat(Samples.tapping("G20 G90", "(TOOL 2 1/4-20 TAP)", "T2 M6", "S400 M3", "G84 Z-.5 R.2 F20.", "G80").wanted().statedThread()
				.map(Fact::value).orElseThrow().designation()).isEqualTo("1/4-20 UNC");
	}

	@Test
	void aHolderInACommentOfItsOwn() {
		assertThat(Samples.tapping("T3 M6 (M8 TAP)", "(FLOATING HOLDER)", "S400 M3", "G84 Z-12 R5 F490", "G80").wanted().holder().value())
				.isEqualTo(Holder.usual(HolderKind.FLOATING));
	}

	@Test
	void flutesAndFeedAToothOfAThreadMill() {
		ToolUse mill = Samples.work("T2 M6 (THREAD MILL D12 M20X1.5, 3 FLUTE, FZ 0.05)", "S2600 M3", "G0 X0 Y0 Z-5",
				"G3 X4 Y0 Z-4.5 I2 J0 F390", "M30").tools().stream().filter(tool -> tool.number() == 2).findFirst().orElseThrow();
		assertThat(mill.facts().teeth().orElseThrow().value()).isEqualTo(3);
		assertThat(mill.facts().toothFeed().orElseThrow().value()).isEqualTo(0.05);
	}

	@Test
	void aTapCalledByItsNameSaysItsThread() {
		assertThat(Samples.findings("G17 G90 G94", "T=\"DRILL_68\" M6", "S2000 M3", "G0 X10 Y10", "Z2", "G1 Z-22 F300", "G0 Z50",
				"T=\"TAP_M8\" M6", "S500 M3", "G0 X10 Y10", "Z5", "G331 Z-16 K1.0 S500", "G332 Z5 K1.0", "M30"))
				.anySatisfy(f -> assertThat(f.rule()).isEqualTo("feed-off-pitch"))
				.noneSatisfy(f -> assertThat(f.rule()).startsWith("drill-"));
	}

	@Test
	void theFourDigitsOfATurret() {
		assertThat(Samples.findings("(T0505 BOHRER 8.5)", "(T0707 GEWINDEBOHRER M10)", "G21 G99", "T0505", "G97 S1200 M3", "G0 X0 Z5",
				"G1 Z-32 F.15", "G0 Z5", "G28 U0 W0", "T0707", "G97 S250 M3", "G0 X0 Z8", "G84 Z-22 F1.25", "G80", "M30"))
				.anySatisfy(f -> assertThat(f.rule()).isEqualTo("feed-off-pitch"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			3/8-24 TAP IN FLOATING HOLDER       | FLOATING
			3/8-24 TAP, TENSION-COMPRESSION     | FLOATING
			GEWINDEBOHRER M8 AUSGLEICHSFUTTER   | FLOATING
			MACHO M8 PORTAMACHOS COMPENSADO     | FLOATING
			M8 TAP, SYNCHRO TAP HOLDER          | SYNCHRO
			M8 TAP SELF REVERSING HEAD          | SELF_REVERSING
			M8 TAP                              | RIGID
			CUTTER COMPENSATED PATH, M8 THREAD  | RIGID
			""")
	void theHolderSaidInPassing(String comment, HolderKind kind) {
		assertThat(Samples.tapping("T3 M6 (" + comment + ")", "S400 M3", "G84 Z-12 R5 F500", "G80").wanted().holder().value())
				.isEqualTo(kind == HolderKind.RIGID ? Holder.RIGID : Holder.usual(kind));
	}

	@Test
	void aWordBehindAPitchIsNoUnitOfADepth() {
		assertThat(Samples.tapping("(TAP M16x2 in a bored plate)", "T3 M6", "S100 M3", "G84 Z-20 R8 F200", "G80").wanted()
				.depth()).isEmpty();
	}

	@Test
	void aHoleNoteAtTheHeadIsForTheWholeProgram() {
		assertThat(Samples.findings("(HOLE: THROUGH 12)", "T1 M6 (6.8 DRILL)", "S1500 M3", "G43 H1 Z30", "G81 Z-16 R2 F180", "G80",
				"T2 M6 (M8 SPIRAL POINT TAP)", "S450 M3", "G43 H2 Z30", "G84 Z-13 R5 F562.5", "G80"))
				.anySatisfy(f -> assertThat(f.rule()).isEqualTo("not-through"));
	}

	@Test
	void twoNotesOfAHoleAreReadTogether() {
		Wanted wanted = Samples.tapping("G21 G90", "T1 M6 (M8 TAP)", "(HOLE: THROUGH 20)", "(HOLE: DIA 6.8)", "G0 X0 Y0 Z5 S500 M3",
				"G84 Z-25 R5 F625", "G80", "M30").wanted();
		assertThat(wanted.through().orElseThrow().value()).isTrue();
		assertThat(wanted.wall().orElseThrow().value()).isEqualTo(20);
	}

	@Test
	void aDrillIsOneByItsNumberHoweverFarAboveTheListStands() {
		Tapping tapping = Samples.tapping("(T1 - DRILL 6.8)", "(T2 - M8 TAP)", "G21 G90", "T1", "M6", "G0 X0 Y0 Z5 S500 M3",
				"G84 Z-25 R5 F100", "G80", "M30");
		assertThat(tapping.method()).isEqualTo(Tapping.Method.WRONG_TOOL);
	}
}
