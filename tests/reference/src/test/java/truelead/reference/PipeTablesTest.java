package truelead.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonObject;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published row of pipe threads. */
class PipeTablesTest {

	static Stream<CSVRecord> npt() {
		return Table.rows("npt-basic.csv");
	}

	/** 2-1/2: the reprint cuts E1 0.762156 off at 0.76215, the standard rounds; all else is exact. */
	@ParameterizedTest
	@MethodSource("npt")
	void nptBasicSizes(CSVRecord row) {
		JsonObject thread = Bench.thread(row.get("size") + " NPT");

		assertThat(Bench.number(thread, "nominal")).isEqualByComparingTo(row.get("D_in"));
		assertThat(Bench.number(thread, "tpi")).isEqualByComparingTo(row.get("tpi"));
		assertThat(Bench.number(thread, "e0")).isEqualByComparingTo(row.get("E0_in"));
		assertThat(Bench.number(thread, "pitchMin").doubleValue()).isCloseTo(Double.parseDouble(row.get("E1_in")), within(0.0000101));
		assertThat(Bench.number(thread, "l1")).isEqualByComparingTo(row.get("L1_in"));
		assertThat(Bench.number(thread, "l2")).isEqualByComparingTo(row.get("L2_in"));
	}

	static Stream<CSVRecord> parallel() {
		return Table.rows("pipe-G-R.csv");
	}

	/**
	 * The minor diameter of the standard is d less twice the rounded thread depth (1: 33.249 − 2 × 1.479 = 30.291); the reprint has it by
	 * the unrounded depth, up to 0.001 more.
	 */
	@ParameterizedTest
	@MethodSource("parallel")
	void parallelPipeThreads(CSVRecord row) {
		JsonObject thread = Bench.thread("G " + row.get("size"));

		assertThat(Bench.number(thread, "nominal")).isEqualByComparingTo(row.get("d_mm"));
		assertThat(Bench.number(thread, "pitch")).isEqualByComparingTo(row.get("P_mm"));
		assertThat(Bench.number(thread, "pitchMin").doubleValue()).isCloseTo(Double.parseDouble(row.get("d2_mm_derived")), within(0.00101));
		assertThat(Bench.number(thread, "minorMin").doubleValue()).isCloseTo(Double.parseDouble(row.get("d1_mm")), within(0.00101));
	}

	static Stream<CSVRecord> sealing() {
		return parallel().filter(row -> !row.get("gauge_length_a_mm").isEmpty());
	}

	@ParameterizedTest
	@MethodSource("sealing")
	void taperPipeThreads(CSVRecord row) {
		JsonObject thread = Bench.thread("R " + row.get("size"));

		assertThat(Bench.number(thread, "gaugeLength")).isEqualByComparingTo(row.get("gauge_length_a_mm"));
		assertThat(Bench.number(thread, "usefulLength")).isEqualByComparingTo(row.get("useful_length_mm"));
	}
}
