package truelead.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published row of Unified internal threads, to the last digit, but for three misprints. */
class UnifiedTablesTest {

	/**
	 * Misprints of one reprint, each against a second published row or the sum of its own columns: #3-48 2B repeats the smallest pitch
	 * diameter as the largest; 1/2-13 2B has 0.470 for 0.417, which would be over the largest; 9/16-12 2B has 0.5125 for 0.5152, digits
	 * changed about.
	 */
	private static boolean misprint(CSVRecord row) {
		return row.get("note").startsWith("source typo");
	}

	static Stream<CSVRecord> rows() {
		return Table.rows("unified-internal.csv").filter(row -> !misprint(row));
	}

	@ParameterizedTest
	@MethodSource("rows")
	void limitsOfSize(CSVRecord row) {
		JsonObject thread = Bench.thread(row.get("size") + "-" + row.get("tpi") + "-" + row.get("class"));

		assertThat(Bench.number(thread, "minorMin")).as("D1 min").isEqualByComparingTo(row.get("D1_min_in"));
		assertThat(Bench.number(thread, "minorMax")).as("D1 max").isEqualByComparingTo(row.get("D1_max_in"));
		assertThat(Bench.number(thread, "pitchMin")).as("D2 min").isEqualByComparingTo(row.get("D2_min_in"));
		assertThat(Bench.number(thread, "pitchMax")).as("D2 max").isEqualByComparingTo(row.get("D2_max_in"));
		assertThat(thread.get("unit").getAsString()).isEqualTo("in");
	}

	@Test
	void theMisprintsAreThreeAndAllElseIsRightInThem() {
		assertThat(Table.rows("unified-internal.csv").filter(UnifiedTablesTest::misprint)).hasSize(3).allSatisfy(row -> {
			JsonObject thread = Bench.thread(row.get("size") + "-" + row.get("tpi") + "-" + row.get("class"));
			long right = Stream.of("minorMin:D1_min_in", "minorMax:D1_max_in", "pitchMin:D2_min_in", "pitchMax:D2_max_in")
					.map(p -> p.split(":")).filter(p -> Bench.number(thread, p[0]).compareTo(new BigDecimal(row.get(p[1]))) == 0).count();
			assertThat(right).as(row.get("size")).isEqualTo(3);
		});
	}

	static Stream<CSVRecord> drills() {
		return Table.rows("tap-drill-inch.csv");
	}

	@ParameterizedTest
	@MethodSource("drills")
	void drillForCutting(CSVRecord row) {
		JsonObject thread = Bench.thread(row.get("size") + "-" + row.get("tpi"));

		assertThat(Bench.number(thread, "tapDrill")).isEqualByComparingTo(row.get("drill_in"));
	}

	@Test
	void workedExampleOutsideTheSeries() {
		JsonObject thread = Bench.thread("19/64-36-2B");

		assertThat(thread.get("designation").getAsString()).isEqualTo("19/64-36 UNS-2B");
		assertThat(thread.get("source").getAsString()).contains("computed").contains("9 pitches").contains("UNS");
		assertThat(Bench.number(thread, "nominal").doubleValue()).isCloseTo(0.2969, within(0.00005));
		assertThat(Bench.number(thread, "minorMin")).isEqualByComparingTo("0.267");
		assertThat(Bench.number(thread, "minorMax")).isEqualByComparingTo("0.273");
	}

	@Test
	void workedExampleOfUnef() {
		assertThat(Bench.number(Bench.thread("1/2-28 UNEF-2B"), "minorMin")).isEqualByComparingTo("0.461");
	}
}
