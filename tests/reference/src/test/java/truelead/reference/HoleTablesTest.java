package truelead.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.LeadForm;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;

/** Holes, drill points and tap leads against published rows. */
class HoleTablesTest {

	static Stream<CSVRecord> percents() {
		return Table.rows("tap-drill-percent.csv");
	}

	/** The handbook cuts some rows off and rounds others; 0-80 with 0.0492 is its own misprint, 66.5 printed as 68. */
	@ParameterizedTest
	@MethodSource("percents")
	void percentOfThreadByDrill(CSVRecord row) {
		ThreadSpec spec = ThreadSpec.unified(number(row, "D_in"), number(row, "tpi"));
		double percent = TapDrill.percentOfThread(spec, number(row, "drill_in") * 25.4);
		boolean misprint = row.get("thread").equals("0-80") && row.get("drill_in").equals("0.0492");

		assertThat(percent).isCloseTo(number(row, "percent_table"), within(misprint ? 1.6 : 0.75));
		assertThat(percent).isCloseTo(number(row, "percent_formula"), within(0.051));
	}

	static Stream<CSVRecord> metricPercents() {
		return Table.rows("tap-drill-metric.csv");
	}

	@ParameterizedTest
	@MethodSource("metricPercents")
	void percentByBothConventions(CSVRecord row) {
		ThreadSpec spec = ThreadSpec.metric(number(row, "D_mm"), number(row, "P_mm"));

		assertThat(TapDrill.percentOfThread(spec, number(row, "drill_mm"))).isCloseTo(number(row, "percent_thread_1.299P"), within(0.051));
		assertThat(TapDrill.percentOfBasicDepth(spec, number(row, "drill_mm"))).isCloseTo(number(row, "percent_thread_H1"), within(0.051));
	}

	static Stream<CSVRecord> formed() {
		return Table.rows("form-tap-hole.csv").filter(row -> !row.get("percent_or_rule").contains("practice"));
	}

	@ParameterizedTest
	@MethodSource("formed")
	void holeForForming(CSVRecord row) {
		ThreadSpec spec = ThreadSpec.metric(number(row, "D_mm"), number(row, "P_mm"));

		assertThat(FormHole.diameter(spec, number(row, "percent_or_rule"))).isCloseTo(number(row, "formula_mm"), within(0.00051));
	}

	static Stream<CSVRecord> practice() {
		return Table.rows("form-tap-hole.csv").filter(row -> row.get("percent_or_rule").contains("practice"));
	}

	@ParameterizedTest
	@MethodSource("practice")
	void drillForFormingIsWithinAStepOfPractice(CSVRecord row) {
		ThreadSpec spec = ThreadSpec.metric(number(row, "D_mm"), number(row, "P_mm"));

		assertThat(FormHole.drill(spec).orElseThrow().diameter()).isCloseTo(number(row, "tabulated"), within(0.051));
	}

	static Stream<CSVRecord> points() {
		return Table.rows("drill-point.csv");
	}

	@ParameterizedTest
	@MethodSource("points")
	void lengthOfDrillPoints(CSVRecord row) {
		assertThat(DrillPoint.length(1, Math.toRadians(number(row, "point_angle_deg"))))
				.isCloseTo(number(row, "factor_L_over_d"), within(0.0000051));
	}

	static Stream<CSVRecord> leads() {
		return Table.rows("tap-lead-forms.csv");
	}

	@ParameterizedTest
	@MethodSource("leads")
	void leadsOfTaps(CSVRecord row) {
		String name = row.get("form").replace("semi/", "").replaceAll(" *\\(.*", "").strip();
		LeadForm form = LeadForm.of(name.toLowerCase(Locale.ROOT), row.get("kind").equals("form")).orElseThrow();

		assertThat(form.least()).isEqualTo(number(row, "threads_min"));
		assertThat(form.most()).isEqualTo(number(row, "threads_max"));
	}

	private static double number(CSVRecord row, String name) {
		return Double.parseDouble(row.get(name));
	}
}
