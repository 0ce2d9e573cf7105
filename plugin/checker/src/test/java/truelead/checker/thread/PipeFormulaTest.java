package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Pipe tables against the formulas of their standards. */
class PipeFormulaTest {

	/** ASME B1.20.1: E0 = D − (0.05 D + 1.1) P, E1 = E0 + 0.0625 L1, L2 = (0.80 D + 6.8) P. */
	@Test
	void nptRowsAgreeWithTheFormulas() {
		assertThat(DataFile.rows(DataFile.class, "npt.csv")).hasSize(24).allSatisfy(row -> {
			double d = DataFile.number(row, "D");
			double p = 1 / DataFile.number(row, "tpi");
			assertThat(DataFile.number(row, "E0")).as(row.get("size")).isCloseTo(d - (0.05 * d + 1.1) * p, within(0.000011));
			assertThat(DataFile.number(row, "E1")).as(row.get("size"))
					.isCloseTo(DataFile.number(row, "E0") + 0.0625 * DataFile.number(row, "L1"), within(0.000012));
			assertThat(DataFile.number(row, "L2")).as(row.get("size")).isCloseTo((0.8 * d + 6.8) * p, within(0.00006));
		});
	}

	/** ISO 228-1: d2 = d − h, d1 = d − 2 h with h = 0.640327 P rounded to 0.001. */
	@Test
	void parallelPipeRowsAgreeWithTheForm() {
		assertThat(DataFile.rows(DataFile.class, "pipe-g.csv")).hasSize(24).allSatisfy(row -> {
			double h = 0.640327 * 25.4 / DataFile.number(row, "tpi");
			assertThat(DataFile.number(row, "d2")).isCloseTo(DataFile.number(row, "d") - h, within(0.0011));
			assertThat(DataFile.number(row, "d1")).isCloseTo(DataFile.number(row, "d") - 2 * h, within(0.0011));
		});
	}

	@Test
	void aTaperThreadChangesBySixteenth() {
		assertThat(ThreadTable.standard().pipeThread(ThreadSystem.NPT, "1/4").orElseThrow().taperOnDiameter()).isEqualTo(0.0625);
		assertThat(ThreadTable.standard().pipeThread(ThreadSystem.G, "1/4").orElseThrow().taperOnDiameter()).isZero();
	}
}
