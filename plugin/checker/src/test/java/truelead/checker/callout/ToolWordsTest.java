package truelead.checker.callout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ToolKind;

class ToolWordsTest {

	private static ToolDescription tool(String comment) {
		return CalloutReader.readComment(comment).tool().orElseThrow();
	}

	@ParameterizedTest
	@CsvSource({"M8 TAP, TAP", "M5 X 0.8 ROLL TAP, FORM_TAP", "M6 SPIRAL FLUTE TAP, CUTTING_TAP", "DRILL AND TAP M6, DRILL",
			"CENTER DRILL, CENTRE_DRILL", "FORET D4.2 CENTRE, DRILL", "DRILL 8.5 CENTER, DRILL",
			"SELF OPENING DIE HEAD 1/2-13, DIE_HEAD", "M10 THREAD ROLLING HEAD, DIE_HEAD", "STREHLKOPF G3/8, DIE_HEAD",
			"AXIALROLLKOPF M10X1.5, DIE_HEAD",
			"SPOT DRILL FOR 10-32 HOLES, SPOT_DRILL", "CHAMFER MILL, COUNTERSINK", "THREAD MILL M30X2, THREAD_MILL",
			"FLAT END MILL, END_MILL", "T-SLOT MILL 20, GROOVE_CUTTER", "UNDERCUT CUTTER D20, GROOVE_CUTTER",
			"NUTENFRAESER D20 FREISTICH, GROOVE_CUTTER", "SLOT MILL 8, END_MILL",
			"1/2 REAMER, REAMER", "BORING BAR, BORING", "TAP DRILL M8, DRILL", "GEWINDEBOHRER M8, TAP",
			"GEWINDEBOHRER M6 DIN 376 FORM C, TAP", "M6 FORM C TAP, TAP", "M6 FORM TAP, FORM_TAP", "M6 TAP FORM D, TAP",
			"GEWINDEFORMER M6, FORM_TAP",
			"GEWINDEFRÄSER M20X1.5, THREAD_MILL", "M8 GEW.BOHRER, TAP", "GEWINDE-BOHRER M8, TAP", "KERNLOCH M8, DRILL",
			"NC-ANBOHRER 90 GRAD, SPOT_DRILL", "TARAUD A REFOULER M6, FORM_TAP",
			"FRAISE A FILETER M20, THREAD_MILL", "FORET A CENTRER, CENTRE_DRILL", "MACHO DE LAMINACION M6, FORM_TAP",
			"BROCA 6.8 PARA M8, DRILL",
			"MASCHIO M8X1, TAP", "PUNTA 6.8, DRILL", "MACHO M10, TAP", "BROCA DE CENTRO, CENTRE_DRILL", "GWINTOWNIK M8, TAP",
			"WYGNIATAK M6, FORM_TAP",
			"WIERTLO 6.8 POD GWINT M8, DRILL", "МЕТЧИК М8, TAP", "СВЕРЛО 6.8, DRILL", "РАСКАТНИК М6, FORM_TAP",
			"РЕЗЬБОФРЕЗА М20, THREAD_MILL",
			"GÄNGTAPP M8, TAP", "GAENGTAPP M8, TAP", "GAENGFRAES M20, THREAD_MILL",
			"BORR 6.8, DRILL", "GÄNGFRÄS M20, THREAD_MILL", "DRAADTAP M8, TAP", "BOOR 6.8 VOOR M8, DRILL",
			"ZÁVITNÍK M8, TAP", "VRTÁK 6.8, DRILL",
			"NAVRTÁVÁK, CENTRE_DRILL", "GEVINDTAP M8, TAP", "KIERRETAPPI M8, TAP", "MENETFÚRÓ M8, TAP", "KILAVUZ M8, TAP",
			"МІТЧИК М8, TAP", "M8丝锥, TAP",
			"钻头6.8, DRILL", "VOLLHARTMETALLBOHRER D7.4, DRILL", "HM-GEWINDEBOHRER M8, TAP", "FORMTAP M6, FORM_TAP", "STUBDRILL 5.0, DRILL",
			"KUGELKOPFFRÄSER D8, END_MILL", "GUNTAP M8, TAP", "M8 タップ, TAP", "TM D16, THREAD_MILL", "M27X2 TM D18 SINGLE, THREAD_MILL",
			"TMILL .370 20TPI, THREAD_MILL", "T-MILL 10MM PITCH 1.5, THREAD_MILL", "T-MILL 10MM, END_MILL",
			"THR MILL 1/4-20, THREAD_MILL", "THREADING CUTTER D20, THREAD_MILL", "FRESA ROSCADORA M12X1.75, THREAD_MILL",
			"GWF M12, THREAD_MILL", "M12 BGF, THREAD_MILL", "GEWINDEWIRBLER D10, THREAD_MILL",
			"TM SINGLE D13, THREAD_MILL", "TM NPT SGL PT DIA .37, THREAD_MILL", "'SOLID CARBIDE TM, 1.25 PITCH', THREAD_MILL",
			"WHIRL 10.5, THREAD_MILL", "GF EINZAHN D15, THREAD_MILL", "GEWFR_D11_EINZAHN, THREAD_MILL", "WIRBELFRÄSER D10, THREAD_MILL",
			"PUNTA-SMUSSO-FRESA FILETTARE D6.3, THREAD_MILL", "DRILL/CHAMFER/THREAD MILL M8, THREAD_MILL",
			"T-NUTENFRAESER D20 B5, GROOVE_CUTTER", "BO_8.5, DRILL", "*** T5 - BO 5.0 ***, DRILL", "T7 BO 3.3 VHM /, DRILL",
			"ANZENTRIEREN, CENTRE_DRILL", "NC-ANB 90 D10, SPOT_DRILL", "WPB D25, DRILL", "FASENFRAESER D16, COUNTERSINK",
			"COMB CUTTER M36X1.5, THREAD_MILL", "T.MILL 10MM PITCH 1.5, THREAD_MILL",
			"BOHRGEWINDEFRAESER M8, THREAD_MILL", "GF M12X1.75 D9.9, THREAD_MILL", "M12 GF, FORM_TAP", "SCHROEFDRAADFREES D12, THREAD_MILL",
			"ドリル 6.8, DRILL", "下穴 6.8, DRILL"})
	void kindOfTool(String comment, ToolKind kind) {
		assertThat(tool(comment).kind()).isEqualTo(kind);
	}

	@ParameterizedTest
	@CsvSource({"DRILL 5.0, 5.0", "DRILL #1 8.5, 8.5", "#1 8.5 DRILL, 8.5", "DRILL #1 .228, 0.228", "1. DRILL 5.0, 5", "5. DRILL, 5",
			"T2 | DRILL 6.8MM | H2 | D2, 6.8", "13/64 DRILL, 0.203125", "#7 DRILL, 0.201", "LETTER F, 0.257", "END MILL 10 DIA, 10",
			"T1 D=10. CR=0. - FLAT END MILL, 10", "T/MILL M24X3 DC=16, 16", "DIA .201 DRILL, 0.201", "DRILL Ø8.5, 8.5", "OP 10 DRILL 8, 8",
			"Tool: 1 - 1/8inch flat end mill, 0.125", "H5 D5 1/2 EM, 0.5", "8H7 REAMER, 8", "WIERTLO FI 5, 5", "1-1/8 DRILL, 1.125",
			"2 FLUTE 12MM ENDMILL, 12", "PUNTA D.10.25, 10.25", "'PUNTA HSS D.6,8', 6.8", "'DRILL .25,3 HOLES', 0.25",
			"12MM 3FL ENDMILL, 12", "STEP DRILL 5.0/6.6 FOR M6, 5", "STUFENBOHRER 9.0/6.8, 6.8", "F DRILL, 0.257", "U DRILL, 0.368",
			"U DRILL 20, 20", "F DRILL .257, 0.257", "NO.30 DRILL, 0.1285", "9/64 JOBBER, 0.140625", "VOLLPROFIL GEWINDEFRAESER P2 D16, 16",
			"THREAD MILL .180 20 UNC, 0.18", ".370 THREAD MILL 20 TPI, 0.37", "5/8 THREAD MILL SINGLE POINT, 0.625", "12MM THREAD MILL, 12",
			"3/8 1-FLUTE THREAD MILL, 0.375", "THREAD MILL 1/2 DIA 13 TPI, 0.5", "T=\"DRILL 8.5\", 8.5"})
	void diameterAsWritten(String comment, double diameter) {
		assertThat(tool(comment).diameter().orElseThrow().value()).isEqualTo(diameter);
	}

	@ParameterizedTest
	@CsvSource({"BORER 6.8, 6.8", "6.8 ZZZ, 6.8", "PORAA HSS 6.8, 6.8"})
	void sizeBesideAWordThatNobodyKnows(String comment, double size) {
		assertThat(CalloutReader.bareSize(comment)).isEmpty();
		assertThat(CalloutReader.sizeOfUnknown(comment).orElseThrow().value()).isEqualTo(size);
		assertThat(CalloutReader.sizeOfUnknown(comment + " OLD")).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"THREAD MILL 20 TPI", "THREAD MILL 1.5 PITCH", "1.5 PITCH THREAD MILL", "THREAD MILL PITCH 1.5"})
	void aPitchIsNoDiameter(String comment) {
		assertThat(tool(comment).diameter()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"DRILL 3 PORTS", "DRILL 4 CORNERS", "DRILL 2 BORES", "DRILL 6 LUGS", "SPOT DRILL 4 ROWS"})
	void aCountOfThingsIsNoDiameter(String comment) {
		assertThat(tool(comment).diameter()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"DRILL 3 STAINLESS, 3", "DRILL 3.3 PORTS, 3.3", "DRILL 5 INCHES, 5", "DRILL 8 CARBIDE, 8"})
	void aSizeBeforeAnotherWordIsADiameter(String comment, double diameter) {
		assertThat(tool(comment).diameter().orElseThrow().value()).isEqualTo(diameter);
	}

	@ParameterizedTest
	@CsvSource({"3.3 HSS, 3.3", "3.3, 3.3", "#30, 0.1285", "1/8, 0.125", "DIA 3.3, 3.3", "D3.3, 3.3", "3.3MM STUB, 3.3",
			"T4 VHM 10.2, 10.2"})
	void sizeIsAllThatIsSaid(String comment, double size) {
		assertThat(CalloutReader.bareSize(comment).orElseThrow().value()).isEqualTo(size);
	}

	@ParameterizedTest
	@CsvSource({"REV 2.1", "0.5 STEP", "3.5 DEEP", "X20.5", "2 X 3.3", "M8", "END", "1/4-20"})
	void whatIsNoBareSize(String comment) {
		assertThat(CalloutReader.bareSize(comment)).isEmpty();
	}

	/** A tap of which the thread is not said, but its size; the number of a screw is no drill's gauge (ASME B1.1). */
	@ParameterizedTest
	@CsvSource({"6. TAP RH, 6, ", "TAP 6.0, 6, ", "6MM TAP, 6, MM", "8MM TAP 1.25, 8, MM", "1/4 TAP, 0.25, INCH", ".25 TAP, 0.25, ",
			"#10 TAP, 0.19, INCH", "TAP NO. 8, 0.164, INCH", "TAP D6, 6, "})
	void theSizeOfATap(String comment, double size, LengthUnit unit) {
		assertThat(tool(comment).diameter()).hasValue(new Dimension(size, java.util.Optional.ofNullable(unit)));
	}

	@ParameterizedTest
	@CsvSource({"TAP RH 6", "TAP .5 DEEP", "M8X1.25 TAP", "TAP 5"})
	void noSizeOfATap(String comment) {
		assertThat(tool(comment).diameter()).isEmpty();
	}

	/** Programs that a machine wrote number their operations so, tapping too. */
	@ParameterizedTest
	@CsvSource({"Drill2", "DRILL12", "Bohren3", "Perçage1"})
	void theNumberOfAnOperationIsNoTool(String title) {
		assertThat(CalloutReader.readComment(title).tools()).isEmpty();
		assertThat(CalloutReader.bareSize(title)).isEmpty();
	}

	@Test
	void aSizeRightBehindTheWordIsASizeWhereItHasAPoint() {
		assertThat(tool("DRILL8.5").diameter().orElseThrow().value()).isEqualTo(8.5);
		assertThat(tool("DRILL5.").diameter().orElseThrow().value()).isEqualTo(5);
	}

	@Test
	void aSizeThatWouldBeAbsurdIsInTheOtherUnit() {
		assertThat(tool("6.8 DRILL").diameter().orElseThrow().toolMm(LengthUnit.INCH)).isEqualTo(6.8);
		assertThat(tool(".1285 DRILL").diameter().orElseThrow().toolMm(LengthUnit.MM)).isEqualTo(0.1285 * 25.4);
		assertThat(tool("0.85 DRILL").diameter().orElseThrow().toolMm(LengthUnit.MM)).isEqualTo(0.85);
		assertThat(tool("2. DRILL").diameter().orElseThrow().toolMm(LengthUnit.INCH)).isEqualTo(50.8);
	}

	@ParameterizedTest
	@ValueSource(strings = {"M16X2-6H THREAD MILL, THROUGH 20", "DRILL, DEPTH 30", "DRILL BLIND 25"})
	void whatIsSaidOfTheHoleIsNoSizeOfTheTool(String comment) {
		assertThat(tool(comment).diameter()).isEmpty();
	}

	@Test
	void aDrillWithInsertsLeavesAFlatFloor() {
		assertThat(tool("T3 INSERT DRILL 22").pointAngle()).hasValue(Math.PI);
		assertThat(tool("T3 DRILL 22").pointAngle()).isEmpty();
	}

	@Test
	void pointAngleInRadians() {
		assertThat(tool("T3 D=6.8 CR=0. TAPER=118DEG - DRILL").pointAngle()).hasValue(Math.toRadians(118));
	}

	@Test
	void leadsAndHandOfTaps() {
		assertThat(tool("M8 PLUG TAP").styles()).containsExactly(TapStyle.PLUG_LEAD);
		assertThat(tool("1/4-20 SPIRAL POINT TAP").styles()).containsExactly(TapStyle.SPIRAL_POINT);
		assertThat(tool("M6 LH TAP").hand()).contains(Hand.LEFT);
	}

	@Test
	void severalToolsOfOneComment() {
		assertThat(CalloutReader.readComment("SPOT, DRILL AND TAP M6").tools()).extracting(ToolDescription::kind)
				.containsExactly(ToolKind.SPOT_DRILL, ToolKind.DRILL, ToolKind.TAP);
	}

	@ParameterizedTest
	@CsvSource({"ROUGH POCKET", "TOOL CHANGE", "FIND CENTER OF PART", "TAPER", "LEFT SIDE", "FINISH WALL", "SET UP SHEET"})
	void ordinaryCommentsNameNoTool(String comment) {
		assertThat(CalloutReader.readComment(comment)).isEqualTo(CommentReading.NOTHING);
	}
}
