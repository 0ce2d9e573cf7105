package truelead.checker.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.program.ProgramFile;
import truelead.grammar.ProgramText;

/** A tool list shown as it was understood. */
class ToolListSheetTest {

	private static ToolListSheet sheet(String csv) {
		return ToolListSheet.of(new ProgramFile("tools.csv", ProgramText.of(csv)));
	}

	@Test
	void everyToolIsShownInMillimetresByItsNumber() {
		ToolListSheet sheet = sheet("TOOL,KIND,UNIT,DIAMETER,THREAD,HOLDER\n12,FORM TAP,mm,,M6X1,synchro\n3,DRILL,inch,0.25,,\n");
		assertThat(sheet.rows()).extracting(ToolListSheet.Row::tool).containsExactly(3, 12);
		assertThat(sheet.rows().get(0)).satisfies(drill -> {
			assertThat(drill.line()).isEqualTo(2);
			assertThat(drill.read(ToolColumn.KIND)).isEqualTo("drill");
			assertThat(drill.read(ToolColumn.DIAMETER)).isEqualTo("6.35 mm");
			assertThat(drill.read(ToolColumn.THREAD)).isEmpty();
		});
		assertThat(sheet.rows().get(1)).satisfies(tap -> {
			assertThat(tap.read(ToolColumn.KIND)).isEqualTo("form tap");
			assertThat(tap.read(ToolColumn.THREAD)).isEqualTo("M6x1");
			assertThat(tap.read(ToolColumn.PITCH)).isEqualTo("1 mm");
			assertThat(tap.read(ToolColumn.HOLDER)).isEqualTo("synchro");
		});
		assertThat(sheet.remarks()).isEmpty();
	}

	@Test
	void aCellThatIsNotUnderstoodIsNamedWithItsLine() {
		ToolListSheet sheet = sheet("TOOL,DIAMETER\n1,thick\n2,5.0\n");
		assertThat(sheet.remarks()).singleElement().satisfies(remark -> {
			assertThat(remark.at().line()).isEqualTo(1);
			assertThat(remark.message()).contains("\"thick\" in column DIAMETER is not understood");
		});
		assertThat(sheet.rows()).hasSize(2);
	}
}
