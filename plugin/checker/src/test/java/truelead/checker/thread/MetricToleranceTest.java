package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * The tolerance tables against the formulas of ISO 965-1, from which a published cell is never further than one and a half steps of R40.
 */
class MetricToleranceTest {
	private static final Percentage NEAR = Percentage.withPercentage(7.5);
	private static final Map<String, Double> GRADES = Map.of("4", 0.63, "5", 0.8, "6", 1.0, "7", 1.25, "8", 1.6);

	@Test
	void minorDiameterTolerances() {
		assertThat(DataFile.rows(DataFile.class, "metric-minor-tolerance.csv")).isNotEmpty().allSatisfy(row -> {
			double p = DataFile.number(row, "P");
			double grade6 = p >= 1 ? 230 * Math.pow(p, 0.7) : 433 * p - 190 * Math.pow(p, 1.22);
			assertThat(DataFile.number(row, "um")).isCloseTo(grade6 * GRADES.get(row.get("grade")), NEAR);
		});
	}

	@Test
	void pitchDiameterTolerances() {
		assertThat(DataFile.rows(DataFile.class, "metric-pitch-tolerance.csv")).isNotEmpty().allSatisfy(row -> {
			double middle = Math.sqrt(DataFile.number(row, "over") * DataFile.number(row, "upto"));
			double grade6 = 1.32 * 90 * Math.pow(DataFile.number(row, "P"), 0.4) * Math.pow(middle, 0.1);
			assertThat(DataFile.number(row, "um")).isCloseTo(grade6 * GRADES.get(row.get("grade")), NEAR);
		});
	}

	@Test
	void deviationOfPositionG() {
		assertThat(DataFile.rows(DataFile.class, "metric-deviation-G.csv")).isNotEmpty()
				.allSatisfy(row -> assertThat(DataFile.number(row, "um")).isCloseTo(15 + 11 * DataFile.number(row, "P"), NEAR));
	}

	@Test
	void tolerancesGrowWithTheGrade() {
		for (String file : List.of("metric-minor-tolerance.csv", "metric-pitch-tolerance.csv")) {
			List<DataRow> rows = DataFile.rows(DataFile.class, file);
			for (int i = 1; i < rows.size(); i++) {
				boolean samePitch = rows.get(i).get("P").equals(rows.get(i - 1).get("P"));
				boolean nextGrade = Integer.parseInt(rows.get(i).get("grade")) > Integer.parseInt(rows.get(i - 1).get("grade"));
				if (samePitch && nextGrade) {
					assertThat(DataFile.number(rows.get(i), "um")).isGreaterThan(DataFile.number(rows.get(i - 1), "um"));
				}
			}
		}
	}

	@Test
	void publishedLimitsAreBasicSizeAndTolerance() {
		assertThat(DataFile.rows(DataFile.class, "metric-published.csv")).isNotEmpty().allSatisfy(row -> {
			ThreadSpec spec = ThreadSpec.metric(DataFile.number(row, "D"), DataFile.number(row, "P"));
			assertThat(row.get("pitchMin")).isEqualTo(MetricTable.basicPitch(spec).toPlainString());
			assertThat(row.get("minorMin")).isEqualTo(MetricTable.basicMinor(spec).toPlainString());
			assertThat(ThreadTable.standard().limits(ThreadSpec.mj(spec.diameter(), spec.pitch()), row.get("class")).orElseThrow()
					.pitchMax()).contains(new java.math.BigDecimal(row.get("pitchMax")));
		});
	}

	@Test
	void everyThreadOfTheSeriesHasLimitsOfItsDefaultClass() {
		assertThat(ThreadTable.standard().threads(ThreadSystem.METRIC)).filteredOn(t -> t.diameter() >= 1.6 && t.pitch() > 0.3)
				.allSatisfy(t -> assertThat(ThreadTable.standard().limits(t)).as(t.designation()).isPresent());
	}
}
