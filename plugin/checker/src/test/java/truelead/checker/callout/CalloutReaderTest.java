package truelead.checker.callout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

class CalloutReaderTest {

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = {"7/16-20 TAP; 7/16-20 UNF", "M8X1.25; M8x1.25", "M8 X 1 RH TAP; M8x1", "M14-1.5; M14x1.5",
			"M12; M12x1.75", "3/8-16UNC-2B; 3/8-16 UNC-2B", "\".375-16 UNC 2b THRU\"; 3/8-16 UNC-2B", "TAP 10-32 HOLES; #10-32 UNF",
			"1/4-20 TAPRH|H5; 1/4-20 UNC", "M20x4P2; M20x4P2", "M20X1.5-6H LH; M20x1.5-6H-LH",
			"M18x2.5-6H/6g; M18x2.5-6H", "M20x2-6H/5g6g-LH; M20x2-6H-LH", "1/4-20 UNC-2B/2A; 1/4-20 UNC-2B", "NO.10-32; #10-32 UNF",
			"1 1/8-7; 1-1/8-7 UNC", "1/8-28 BSPP; G 1/8", "M2-6G; M2x0.4-6G", "МЕТЧИК М8; M8x1.25", "TARAUD M10; M10x1.5"})
	void readsWhatPeopleWrite(String comment, String thread) {
		assertThat(CalloutReader.read(comment)).singleElement().extracting(c -> c.spec().designation()).isEqualTo(thread);
	}

	@ParameterizedTest
	@ValueSource(strings = {"19-02-22", "CCGT 3-1-AF", "TAPER", "M3 S200", "T5 M6", "DRILL FOR M8 TAP", "SPOT DRILL FOR 10-32 HOLES",
			"1/2-13 WELD PIN", "M51", "10-24-22", "USE M12 BOLTS", "USE M10 T-NUTS", "RACCORD G1/4 EN FACE", "TORQUE M8 TO 25 NM",
			"PART 123-456-789", "M98 P1000"})
	void isSilentAboutWhatOnlyLooksLikeAThread(String comment) {
		assertThat(CalloutReader.read(comment)).isEmpty();
	}

	@Test
	void aDrillForATapIsADrill() {
		ToolDescription tool = CalloutReader.readComment("M8 TAP DRILL 6.8").tool().orElseThrow();

		assertThat(tool.kind()).isEqualTo(ToolKind.DRILL);
		assertThat(tool.diameter()).contains(new Dimension(6.8, Optional.empty()));
		assertThat(tool.forThread()).contains(ThreadSpec.metric(8, 1.25));
	}

	@Test
	void numberAndLetterDrillsHaveTheirInches() {
		assertThat(CalloutReader.readComment("#7 DRILL").tool().orElseThrow().diameter()).contains(Dimension.of(0.201, LengthUnit.INCH));
		assertThat(CalloutReader.readComment("LETTER F").tool().orElseThrow().diameter()).contains(Dimension.of(0.257, LengthUnit.INCH));
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = {"THREAD MILL D0.35 1/4-18 NPT; 0.35; 1/4-18 NPT",
			"THREAD MILL DIA 0.6 7/8-14 UNF THRU; 0.6; 7/8-14 UNF", "THREAD MILL DIA. 0.65 - 1-8 UNC-2B; 0.65; 1-8 UNC-2B",
			"THREAD MILL DIA. 0.55 - 3/4-16 UNF; 0.55; 3/4-16 UNF", "thread mill d=11 - 3/8 npt; 11; 3/8-18 NPT"})
	void aDiameterBeforeAThreadIsNoPartOfIt(String comment, double diameter, String thread) {
		assertThat(CalloutReader.readComment(comment).tool().orElseThrow().diameter().orElseThrow().value()).isEqualTo(diameter);
		assertThat(CalloutReader.read(comment)).singleElement().satisfies(c -> assertThat(c.spec().designation()).isEqualTo(thread));
	}

	/** ISO 6410-1 writes a threaded hole as M12 × 16/Ø10,2 × 20. */
	@ParameterizedTest
	@ValueSource(strings = {"M12X16/10.2X20", "M12 × 16/Ø10,2 × 20", "M12x1.75x16/DIA 10.2x20", "M12 DJUP 16", "M12 PROF. 16",
			"M12 HLOUBKA 16", "M12 DIEP: 16"})
	void readsHowDeep(String comment) {
		assertThat(CalloutReader.read(comment)).singleElement().satisfies(callout -> {
			assertThat(callout.spec()).isEqualTo(ThreadSpec.metric(12, 1.75));
			assertThat(callout.depth()).map(Dimension::value).contains(16.0);
		});
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = {"TAP 4 1/4-20 HOLES; 1/4-20 UNC", "TAP 1/8-27; 1/8-27 NPT", "1/8 PIPE TAP; 1/8-27 NPT",
			"TAP 8X1.25; M8x1.25", "M8 1.0 TAP; M8x1", "L.H. TAP M8; M8x1.25-LH", "TOOL 5 - 1/2-13 TAP; 1/2-13 UNC", "M6 X 12 DEEP; M6x1",
			"5/16-18NC TAP; 5/16-18 UNC", "M8X1.25X20; M8x1.25"})
	void readsSlovenlyCallouts(String comment, String thread) {
		assertThat(CalloutReader.read(comment)).singleElement().extracting(c -> c.spec().designation()).isEqualTo(thread);
	}

	@ParameterizedTest
	@ValueSource(strings = {"M10 FINE TAP", "8X1.25", "3/4-14", "1/8 PIPE", "R1/4 RADIUS", "G1 MOVE", "N50 T4 M6 (#7 DRILL)"})
	void doesNotGuessWhereTheEvidenceIsThin(String comment) {
		assertThat(CalloutReader.read(comment)).isEmpty();
	}

	@Test
	void countDepthAndEndOfTheHole() {
		Callout callout = CalloutReader.read("TAP 4X M6 12MM DEEP BLIND").get(0);

		assertThat(callout.count()).hasValue(4);
		assertThat(callout.depth()).contains(Dimension.of(12, LengthUnit.MM));
		assertThat(callout.holeEnd()).contains(HoleEnd.BLIND);
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = {"BRACKET - 4 PL 1/4-20 THRU, 2 PL 10-32 X .50 DP; true null 4, null 0.5 2",
			"4X M6 12 DEEP 2X M8 THRU; null 12.0 4, true null 2",
			"M6 THRU & M8 LH X 15 DEEP; true null null, null 15.0 null LH", "M6 BLIND 10 DEEP, M8 THRU; false 10.0 null, true null null",
			"M6 12 DEEP 4 HOLES, M8 15 DEEP 2 HOLES; null 12.0 4, null 15.0 2", "LH TAPS M6, M8; null null null LH, null null null LH",
			"TAP M6 AND M8 THRU; true null null, true null null", "STI M6, M8; null null null STI, null null null"})
	void eachOfSeveralThreadsHasItsOwnWords(String comment, String each) {
		assertThat(CalloutReader.read(comment).stream().map(c -> c.holeEnd().map(e -> e == HoleEnd.THROUGH).orElse(null) + " "
				+ c.depth().map(Dimension::value).orElse(null) + " " + (c.count().isPresent() ? c.count().getAsInt() : null)
				+ (c.spec().hand() == Hand.LEFT ? " LH" : "") + (c.wireInsert() ? " STI" : "")).collect(Collectors.joining(", ")))
				.isEqualTo(each);
	}

	@Test
	void aNumberBehindDeepMayCount() {
		Callout callout = CalloutReader.read("1/4-20 UNC X .75 DEEP 6 PLCS").get(0);

		assertThat(callout.count()).hasValue(6);
		assertThat(callout.depth().orElseThrow().value()).isEqualTo(0.75);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			M6X1 THRU 10 PLATE           | 10
			10-24 TAP / .375 PLATE THRU  | 0.375
			4X M6 DURCHGANG, PLATTE 10MM | 10
			1-8 TAP THRU 2.0             | 2
			""")
	void aPlateThatIsDrilledThroughIsAWall(String comment, double wall) {
		assertThat(CalloutReader.read(comment).get(0).wall().orElseThrow().value()).isEqualTo(wall);
	}

	@Test
	void theDrillOfADrawingsCalloutIsNoTool() {
		assertThat(CalloutReader.read("8X M8X1.25-6H, THREAD DEPTH 16 MIN, DRILL 24 DEEP")).singleElement().satisfies(callout -> {
			assertThat(callout.count()).hasValue(8);
			assertThat(callout.depth().orElseThrow().value()).isEqualTo(16);
		});
		assertThat(CalloutReader.read("4X M8 TAP DRILL 6.8")).as("a drill's own comment").isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			M5X0.8 8 HOLES 12 DEEP DRILLED 4.2 X 17 | 12
			M8 X 20 DEEP DRILL 6.8 X 26             | 20
			M5-6H THREAD DEPTH 12 DRILL DEPTH 17    | 12
			1/4-20 .5 DEEP DRILL #7 .75 DEEP        | 0.5
			""")
	void theHoleHasItsOwnNumbersBehindTheThread(String comment, double depth) {
		assertThat(CalloutReader.read(comment)).singleElement().satisfies(callout ->
				assertThat(callout.depth().orElseThrow().value()).isEqualTo(depth));
	}

	@ParameterizedTest
	@ValueSource(strings = {"M8 20 DEEP DRILL", "M5 TAP DRILL 4.2 17 DEEP", "M8 20 DEEP DRILL 10.5"})
	void aDrillBehindAThreadWithoutNumbersOfItsOwnPreparesForIt(String comment) {
		assertThat(CalloutReader.read(comment)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			DRILL 6.8 THRU               | true
			M8 DRILL THRU 12MM PLATE     | true
			6.8 DRILL                    | false
			6.8 DRILL, COOLANT THRU      | false
			6.8 THRU SPINDLE COOLANT DRILL | false
			DRILL 6.8 / TAP M8 THRU      | false
			DRILL 6.8 BLIND, 8.0 THRU    | false
			""")
	void aDrillThatGoesThrough(String comment, boolean through) {
		assertThat(CalloutReader.readComment(comment).drillsThrough()).isEqualTo(through);
	}

	@Test
	void aNumberBeforeADashIsNoCount() {
		assertThat(CalloutReader.read("TOOL 5 - 1/2-13 TAP").get(0).count()).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = {"M6", "COOLANT M8", "DATE 10-24", "REV 1-8", "DATE 1/4-20", "TAP HOLES 1-12"})
	void whatCouldBeSomethingElseIsUncertain(String comment) {
		assertThat(CalloutReader.read(comment)).singleElement().extracting(Callout::certain).isEqualTo(false);
	}

	@Test
	void oneLongCommentIsNotReadToTheEnd() {
		assertThat(CalloutReader.read("1-1/".repeat(100_000))).isEmpty();
		assertThat(CalloutReader.read("M8X1.25 TAP ".repeat(10_000))).hasSizeBetween(1, 400);
	}
}
