package truelead.checker.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ToolKind;
import truelead.grammar.Span;

class NotesTest {

	private static Optional<NoteReading> read(String text) {
		return NoteReader.read(new ProgramComment(new Location(Samples.program("(" + text + ")"), 0, new Span(1, 1 + text.length())), text),
				LengthUnit.MM);
	}

	private static Note note(String text) {
		NoteReading reading = read(text).orElseThrow();
		assertThat(reading.remarks()).isEmpty();
		return reading.note().orElseThrow();
	}

	private static List<String> remarks(String text) {
		return read(text).orElseThrow().remarks().stream().map(Remark::message).toList();
	}

	@Test
	void threadWithDepthAndBlind() {
		Note.OfThread thread = (Note.OfThread) note("THREAD: M6X1-6H, DEPTH 12, BLIND");
		assertThat(thread.thread().orElseThrow().value().designation()).isEqualTo("M6x1-6H");
		assertThat(thread.depth().orElseThrow().value()).isEqualTo(12);
		assertThat(thread.through().orElseThrow().value()).isFalse();
	}

	@Test
	void anyOrderAnyCaseAnyUnit() {
		Note.OfThread thread = (Note.OfThread) note("thread: .5 in deep; through, 1/4-20 UNC-2B, 4 holes");
		assertThat(thread.thread().orElseThrow().value().designation()).isEqualTo("1/4-20 UNC-2B");
		assertThat(thread.depth().orElseThrow().value()).isCloseTo(12.7, within(1e-9));
		assertThat(thread.through().orElseThrow().value()).isTrue();
		assertThat(thread.count().orElseThrow().value()).isEqualTo(4);
	}

	@Test
	void holeByTheDrawing() {
		Note.OfHole hole = (Note.OfHole) note("HOLE: BOTTOM 18, THROUGH 20");
		assertThat(hole.bottom().orElseThrow().value()).isEqualTo(18);
		assertThat(hole.wall().orElseThrow().value()).isEqualTo(20);
		assertThat(hole.through().orElseThrow().value()).isTrue();
	}

	@Test
	void toolInThePocket() {
		Note.OfTool tool = (Note.OfTool) note("TOOL: T5, FORM TAP, M6X1, LEAD 2.5, REACH 30, FLOATING HOLDER 3");
		assertThat(tool.number()).contains(5);
		assertThat(tool.facts().kind().orElseThrow().value()).isEqualTo(ToolKind.FORM_TAP);
		assertThat(tool.facts().thread().orElseThrow().value().designation()).isEqualTo("M6x1");
		assertThat(tool.facts().leadTurns().orElseThrow().value()).isEqualTo(2.5);
		assertThat(tool.facts().reach().orElseThrow().value()).isEqualTo(30);
		assertThat(tool.facts().holder().orElseThrow().value()).isEqualTo(new Holder(HolderKind.FLOATING, 3));
	}

	@Test
	void aLeadInMillimetresIsTurnedIntoThreads() {
		Note.OfTool tool = (Note.OfTool) note("TOOL: M8X1.25, LEAD 2.5MM");
		assertThat(tool.facts().leadTurns().orElseThrow().value()).isEqualTo(2);
	}

	@ParameterizedTest
	@ValueSource(strings = { "LEAD FORM C", "LEAD C", "LEAD=FORM C", "LEAD 2-3 THREADS", "LEAD 2 TO 3", "LEAD FORM C 2-3", "LEAD C FORM" })
	void aLeadInTheWordsOfTheTrade(String lead) {
		Note.OfTool tool = (Note.OfTool) note("TOOL: T5, M8X1.25 TAP, " + lead);
		assertThat(tool.facts().leadTurns().orElseThrow().value()).isEqualTo(2.5);
	}

	@Test
	void stockAndHardness() {
		Stock stock = ((Note.OfStock) note("STOCK: STEEL, 28 HRC")).stock().value();
		assertThat(stock.group()).isEqualTo(StockGroup.STEEL);
		assertThat(stock.hardness()).hasValue(28);
	}

	@Test
	void brinellBecomesRockwell() {
		Stock stock = ((Note.OfStock) note("STOCK: 286 HB, 42CRMO4")).stock().value();
		assertThat(stock.hardness().orElseThrow()).isCloseTo(30, within(0.01));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			STOCK: STEEL 28 HRC       | STEEL | 28
			STOCK: STEEL, 28-32 HRC   | STEEL | 32
			STOCK: 28 RC              |       | 28
			STOCK: 17-4 PH, HRC 38    | 17-4 PH | 38
			""")
	void hardnessWhereverItStands(String text, String name, double hardness) {
		Stock stock = ((Note.OfStock) note(text)).stock().value();
		assertThat(stock.hardness()).hasValue(hardness);
		assertThat(stock.words()).isEqualTo(name == null ? "" : name);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			MATERIAL: 4140 28HRC          | STEEL     | 28
			MATL - D2 58-60 HRC           | STEEL     | 60
			WERKSTOFF: 1.4301 INOX        | STAINLESS |
			MATERIAL = CAST IRON          | CAST_IRON |
			""")
	void aRemarkOnTheMaterial(String text, StockGroup group, Double hardness) {
		Stock stock = ((Note.OfStock) note(text)).stock().value();
		assertThat(stock.group()).isEqualTo(group);
		assertThat(stock.hardness().orElse(-1)).isEqualTo(hardness == null ? -1 : hardness);
	}

	@ParameterizedTest
	@ValueSource(strings = {"MATERIAL: 100 X 50 X 20, SAW CUT", "MATERIAL THICKNESS .5", "MATERIAL: SEE DRAWING, REV B", "MATERIAL",
			"MATERIAL:", "MATERIAL: , ,"})
	void aRemarkOnTheMaterialThatSaysNothingKnownIsNoNote(String text) {
		assertThat(read(text)).isEmpty();
	}

	@Test
	void aHardnessWithASlipIsNotUnderstood() {
		assertThat(remarks("STOCK: STEEL, 28 XRC")).singleElement().asString().contains("28 XRC");
		assertThat(remarks("STOCK: STEEL 28 XRC")).hasSize(1);
		assertThat(remarks("STOCK: STEEL, 280 HRC")).as("280 HB").singleElement().asString().contains("280 HRC");
		assertThat(((Note.OfStock) note("STOCK: STEEL, 280 HB")).stock().value().hardness().orElseThrow()).isBetween(28.0, 30.0);
		assertThat(((Note.OfStock) note("STOCK: BRASS, 80 HRB")).stock().value().hardness()).isEmpty();
	}

	@Test
	void surfaceLevel() {
		assertThat(((Note.OfSurface) note("SURFACE: Z-5.")).level().value()).isEqualTo(-5);
	}

	@Test
	void allowanceWithItsReason() {
		Allowance allowance = ((Note.OfAllowance) note("ALLOW: feed-off-pitch, FLOATING HOLDER 3, SEE SHEET 7")).allowances().get(0);
		assertThat(allowance.rule()).isEqualTo("feed-off-pitch");
		assertThat(allowance.reason()).isEqualTo("FLOATING HOLDER 3, SEE SHEET 7");
	}

	@Test
	void anAllowanceWithoutReasonHasNone() {
		assertThat(((Note.OfAllowance) note("ALLOW: feed-off-pitch")).allowances().get(0).reason()).isEmpty();
	}

	@Test
	void aThreadThatIsNoneIsPointedAt() {
		Remark remark = read("THREAD: M6Y1, DEPTH 12").orElseThrow().remarks().get(0);
		assertThat(remark.message()).isEqualTo("\"M6Y1\" is not understood in a THREAD note; a thread such as M6X1-6H or 1/4-20 UNC-2B, "
				+ "DEPTH, BLIND, " + "THROUGH or COUNT is expected");
		assertThat(remark.at().span()).isEqualTo(new Span(9, 13));
	}

	@Test
	void aMissingItemIsSaid() {
		assertThat(remarks("THREAD: M6, , BLIND")).singleElement().asString().contains("must stand before \",\"");
		assertThat(remarks("SURFACE:")).singleElement().asString().isEqualTo("a level such as Z0 must stand before the end of the note");
	}

	@Test
	void anOrdinaryCommentWithAColonIsNoNote() {
		assertThat(read("TOOL: ROUGHER")).isEmpty();
		assertThat(read("STOCK: 100 X 50 X 20")).isEmpty();
		assertThat(read("PART: M6 BRACKET")).isEmpty();
	}
}
