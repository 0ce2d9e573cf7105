package truelead.checker.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import truelead.checker.machine.ProgramFile;
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
		assertThat(job("TOOL,KIND", ",drill").remarks()).extracting(Remark::message).containsExactly("the row has no tool number in column TOOL");
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
