package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The formulas of ISO 965-1 against its tables, a cell at a time: what they would say had the table not been at hand. */
class MetricFormulaTest {

	private static long agree(List<DataRow> rows, ToDoubleFunction<DataRow> formula, double within) {
		return rows.stream().filter(r -> Math.abs(formula.applyAsDouble(r) / DataFile.number(r, "um") - 1) <= within).count();
	}

	private static double pitch(DataRow r) {
		return MetricFormula.pitchTolerance(DataFile.number(r, "upto"), DataFile.number(r, "P"), Integer.parseInt(r.get("grade")));
	}

	private static double minor(DataRow r) {
		return MetricFormula.minorTolerance(DataFile.number(r, "P"), Integer.parseInt(r.get("grade")));
	}

	@Test
	void pitchDiameterTolerances() {
		List<DataRow> rows = DataFile.rows(DataFile.class, "metric-pitch-tolerance.csv");

		assertThat(rows).hasSize(205);
		assertThat(agree(rows, MetricFormulaTest::pitch, 0.0001)).isEqualTo(190);
		assertThat(agree(rows, MetricFormulaTest::pitch, 0.08)).isEqualTo(205);
	}

	@Test
	void minorDiameterTolerances() {
		List<DataRow> rows = DataFile.rows(DataFile.class, "metric-minor-tolerance.csv");

		assertThat(rows).hasSize(106);
		assertThat(agree(rows, MetricFormulaTest::minor, 0.0001)).isEqualTo(97);
		assertThat(agree(rows, MetricFormulaTest::minor, 0.08)).isEqualTo(106);
	}

	@Test
	void sizesBeyondTheTablesAreComputedAndSayIt() {
		ThreadTable table = ThreadTable.standard();
		Limits large = table.limits(ThreadSpec.metric(400, 6), "6H").orElseThrow();
		Limits fine = table.limits(ThreadSpec.metric(8, 0.5), "6H").orElseThrow();

		assertThat(large.minorMin()).hasToString("Optional[393.505]");
		assertThat(large.pitchMin()).hasToString("Optional[396.103]");
		assertThat(large.minorMax()).hasToString("Optional[394.305]");
		assertThat(large.pitchMax()).hasToString("Optional[396.553]");
		assertThat(fine.pitchMax()).hasToString("Optional[7.787]");
		assertThat(List.of(large, fine)).allSatisfy(limits -> {
			assertThat(limits.source()).contains("computed by the formula of ISO 965-1");
			assertThat(limits.origin()).isEqualTo(Origin.COMPUTED);
		});
	}

	@Test
	void aGradeThatTheTableLeavesOutIsNotMade() {
		assertThat(ThreadTable.standard().limits(ThreadSpec.metric(1.2, 0.25), "6H")).isEmpty();
	}
}
