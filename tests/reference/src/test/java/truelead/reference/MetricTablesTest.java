package truelead.reference;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published row of metric internal threads, to the last digit. */
class MetricTablesTest {

	static Stream<CSVRecord> publishedRows() {
		return Stream.concat(Table.rows("metric-internal-6H.csv"), Table.rows("metric-internal-classes.csv"));
	}

	@ParameterizedTest
	@MethodSource("publishedRows")
	void limitsOfSize(CSVRecord row) {
		JsonObject thread = Bench.thread("M" + row.get("D_mm") + "x" + row.get("P_mm") + "-" + row.get("class"));

		assertThat(Bench.number(thread, "pitchMin")).as("D2 min").isEqualByComparingTo(row.get("D2_min_mm"));
		assertThat(Bench.number(thread, "pitchMax")).as("D2 max").isEqualByComparingTo(row.get("D2_max_mm"));
		assertThat(Bench.number(thread, "minorMin")).as("D1 min").isEqualByComparingTo(row.get("D1_min_mm"));
		assertThat(Bench.number(thread, "minorMax")).as("D1 max").isEqualByComparingTo(row.get("D1_max_mm"));
		assertThat(thread.get("unit").getAsString()).isEqualTo("mm");
	}

	static Stream<CSVRecord> deviations() {
		return Table.rows("metric-deviation-G.csv");
	}

	@ParameterizedTest
	@MethodSource("deviations")
	void positionGLiesAboveHByItsDeviation(CSVRecord row) {
		BigDecimal deviation = new BigDecimal(row.get("EI_G_um")).movePointLeft(3);
		String size = sizeWithPitch(Double.parseDouble(row.get("P_mm")));
		String grade = Double.parseDouble(row.get("P_mm")) < 0.25 ? "4" : "5";

		assertThat(Bench.number(Bench.thread(size + "-" + grade + "G"), "pitchMin")
				.subtract(Bench.number(Bench.thread(size + "-" + grade + "H"), "pitchMin"))).isEqualByComparingTo(deviation);
	}

	private static String sizeWithPitch(double pitch) {
		double diameter = pitch <= 0.3 ? 1.4 : pitch < 0.5 ? 2.5 : pitch < 0.75 ? 4 : pitch <= 0.8 ? 5 : pitch <= 1.25 ? 10 : pitch <= 2.5
				? 20 : pitch <= 4.5 ? 36 : pitch <= 6 ? 64 : 125;
		return "M" + (pitch == 0.35 ? 1.6 : pitch == 0.25 ? 1.2 : diameter) + "x" + pitch;
	}

	static Stream<CSVRecord> drills() {
		return Table.rows("tap-drill-metric.csv");
	}

	@ParameterizedTest
	@MethodSource("drills")
	void drillForCutting(CSVRecord row) {
		JsonObject thread = Bench.thread("M" + row.get("D_mm") + "x" + row.get("P_mm"));

		assertThat(Bench.number(thread, "tapDrill")).isEqualByComparingTo(row.get("drill_mm"));
	}
}
