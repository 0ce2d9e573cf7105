package truelead.checker.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ToolKind;
import truelead.grammar.ProgramText;

class ToolListTest {

	private static Job job(String... rows) {
		return Job.EMPTY.withToolList(new ProgramFile("tools.csv", ProgramText.of(String.join("\n", rows) + "\n")));
	}

	@Test
	void drillAndTap() {
		Job job = job("Tool,Kind,Diameter,Thread,Lead,Holder,Travel", "1,drill,6.8,,,,", "T2,form tap,,M8x1.25,2,floating,3");
		assertThat(job.remarks()).isEmpty();
		assertThat(job.tool(1).kind().orElseThrow().value()).isEqualTo(ToolKind.DRILL);
		assertThat(job.tool(1).diameter().orElseThrow().value()).isEqualTo(6.8);
		assertThat(job.tool(2).thread().orElseThrow().value().designation()).isEqualTo("M8x1.25");
		assertThat(job.tool(2).leadTurns().orElseThrow().value()).isEqualTo(2);
		assertThat(job.tool(2).holder().orElseThrow().value()).isEqualTo(new Holder(HolderKind.FLOATING, 3));
	}

	@Test
	void symbolsOfTheStandardAsHeadersAndInches() {
		Job job = job("T;TYPE;UNIT;DC;SIG;LU", "7;drill;inch;0.201;135;1.5");
		assertThat(job.tool(7).diameter().orElseThrow().value()).isCloseTo(5.1054, within(1e-9));
		assertThat(job.tool(7).pointAngle().orElseThrow().value()).isCloseTo(Math.toRadians(135), within(1e-9));
		assertThat(job.tool(7).reach().orElseThrow().value()).isCloseTo(38.1, within(1e-9));
	}

	@ParameterizedTest
	@ValueSource(strings = { "C", "c", "FORM C", "form C", "Form-C", "FORM: C", "C FORM", "type c", "DIN 2197 C", "FORM C (2-3)", "C 2-3",
			"C/2-3", "2-3", "2 - 3", "2\u20133", "2 to 3", "2-3 threads", "2-3 THDS", "2,5", "2.5", "2.5P", "2.5 x P", "2-3 Gang",
			"Anschnitt C", "C, 2-3 threads", "2.5 turns" })
	void aLeadOfTwoToThreeThreadsAsShopsWriteIt(String lead) {
		Job job = job("TOOL;KIND;THREAD;LEAD", "3;TAP;M8X1.25;" + lead);
		assertThat(job.remarks()).isEmpty();
		assertThat(job.tool(3).leadTurns().orElseThrow().value()).isEqualTo(2.5);
	}

	@ParameterizedTest
	@CsvSource({ "bottoming,1.5", "BOTTOM,1.5", "btm,1.5", "BOTTOMING TAP,1.5", "plug,4", "Plug chamfer,4", "taper,8.5",
			"modified bottoming,2.25", "MOD BOTTOMING,2.25", "semi-bottoming,2.25", "plug (3-5),4", "FORM B,4.5", "E 1.5-2,1.75",
			"form d,4.25", "FORM A 6-8,7" })
	void theNamesOfLeads(String lead, double threads) {
		Job job = job("TOOL;KIND;THREAD;LEAD", "3;TAP;1/4-20 UNC;" + lead);
		assertThat(job.remarks()).isEmpty();
		assertThat(job.tool(3).leadTurns().orElseThrow().value()).isEqualTo(threads);
	}

	@Test
	void aFormingTapHasTheLeadsOfFormingTaps() {
		Job job = job("TOOL;KIND;LEAD", "3;FORM TAP;FORM D", "4;FORM TAP;plug");
		assertThat(job.tool(3).leadTurns().orElseThrow().value()).isEqualTo(4.5);
		assertThat(job.tool(4).leadTurns().orElseThrow().value()).isEqualTo(4);
	}

	@ParameterizedTest
	@CsvSource({ "2.5 mm,2", "0.1 in,2.032", "2-3mm,2", "'2,5 mm',2" })
	void aLeadWithAUnitIsALength(String lead, double threads) {
		Job job = job("TOOL;THREAD;LEAD", "3;M8X1.25;" + lead);
		assertThat(job.remarks()).isEmpty();
		assertThat(job.tool(3).leadTurns().orElseThrow().value()).isCloseTo(threads, within(1e-9));
	}

	@ParameterizedTest
	@ValueSource(strings = { "FORM X", "long", "0", "500", "2-3 4-5", "FORM", "bottoming plug", "-", "C D" })
	void whatIsNoLeadIsSaid(String lead) {
		Job job = job("TOOL;LEAD", "3;" + lead);
		assertThat(job.remarks()).extracting(Remark::message)
				.containsExactly("\"" + lead
						+ "\" in column LEAD is not understood; threads such as 2.5 or 2-3, a length with its unit, or a form such as C or "
						+ "BOTTOMING is expected");
		assertThat(job.tool(3).leadTurns()).isEmpty();
	}

	@Test
	void aBadCellIsARemarkOnItsRow() {
		Job job = job("TOOL,KIND,DIAMETER", "1,drill,six", "2,drill,6.8");
		assertThat(job.remarks()).singleElement().satisfies(remark -> {
			assertThat(remark.message()).isEqualTo("\"six\" in column DIAMETER is not understood; a positive number is expected");
			assertThat(remark.at().line()).isEqualTo(1);
		});
		assertThat(job.tool(2).diameter()).isPresent();
	}

	@Test
	void aRowWithoutANumberAndAListWithoutAHeader() {
		assertThat(job("TOOL,KIND", ",drill").remarks()).extracting(Remark::message)
				.containsExactly("the row has no tool number in column TOOL");
		assertThat(job("1,drill").remarks()).hasSize(1);
		assertThat(job("TOOL,KIND", "1,\"drill").remarks()).hasSize(1);
	}

	@Test
	void stockOfTheProject() {
		assertThat(Job.EMPTY.withStock("CAST IRON, 200 HB").stock().orElseThrow().value().group()).isEqualTo(StockGroup.CAST_IRON);
		assertThat(Job.EMPTY.withStock("X").remarks()).hasSize(1);
	}

	@Test
	void castAluminiumAndCastSteelAreNoCastIron() {
		assertThat(Job.EMPTY.withStock("CAST ALUMINIUM").stock().orElseThrow().value().group()).isEqualTo(StockGroup.ALUMINIUM);
		assertThat(Job.EMPTY.withStock("CAST STEEL").stock().orElseThrow().value().group()).isEqualTo(StockGroup.STEEL);
		var stock = Job.EMPTY.withStock("ALUMINIUM, CAST, 90 HB").stock().orElseThrow().value();
		assertThat(stock.group()).isEqualTo(StockGroup.ALUMINIUM);
		assertThat(stock.name()).isEqualTo("ALUMINIUM, CAST");
	}
}
