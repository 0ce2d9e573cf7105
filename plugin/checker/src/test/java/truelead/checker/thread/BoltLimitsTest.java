package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.callout.CalloutReader;

/** Limits of external threads. */
class BoltLimitsTest {

	private static ThreadSpec thread(String callout) {
		return CalloutReader.readExactly(callout).orElseThrow().spec();
	}

	private static BoltLimits limits(String callout) {
		return ThreadTable.standard().boltLimits(thread(callout)).orElseThrow();
	}

	/** Values of the tables of ISO 965-2 and ASME B1.1 Table 2, and of ISO 228-1, from memory. */
	@ParameterizedTest
	@CsvSource({"M1.6, 6g, 1.496, 1.581, 1.291, 1.354", "M3, 6g, 2.874, 2.980, 2.580, 2.655", "M5, 6g, 4.826, 4.976, 4.361, 4.456",
			"M6, 6g, 5.794, 5.974, 5.212, 5.324",
			"M8, 6g, 7.760, 7.972, 7.042, 7.160", "M10-6g, 6g, 9.732, 9.968, 8.862, 8.994", "M12, 6g, 11.701, 11.966, 10.679, 10.829",
			"M16, 6g, 15.682, 15.962, 14.503, 14.663",
			"M20, 6g, 19.623, 19.958, 18.164, 18.334", "M20X1.5-6G, 6g, 19.732, 19.968, 18.854, 18.994",
			"M24, 6g, 23.577, 23.952, 21.803, 22.003", "M36, 6g, 35.465, 35.940, 33.118, 33.342",
			"M8-6h, 6h, 7.788, 8.000, 7.070, 7.188", "1/4-20 UNC, 2A, 0.2408, 0.2489, 0.2127, 0.2164",
			"1/4-20 UNC-3A, 3A, 0.2419, 0.2500, 0.2147, 0.2175",
			"1/2-13 UNC-2A, 2A, 0.4876, 0.4985, 0.4435, 0.4485", "1/2-28 UNEF-2A, 2A, 0.4924, 0.4989, 0.4720, 0.4757",
			"G 1/2, A, 20.671, 20.955, 19.651, 19.793", "G 1/8, A, 9.514, 9.728, 9.040, 9.147"})
	void asTheStandardsPrintThem(String callout, String name, String majorMin, String majorMax, String pitchMin, String pitchMax) {
		BoltLimits limits = limits(callout);
		assertThat(List.of(limits.threadClass(), limits.majorMin().toPlainString(), limits.majorMax().toPlainString(),
				limits.pitchMin().toPlainString(), limits.pitchMax().toPlainString()))
				.containsExactly(name, majorMin, majorMax, pitchMin, pitchMax);
	}

	/** 1/2-28 UNEF-2A: 0.003668 and 0.006508, Machinery's Handbook 31, pages 624 and 625. */
	@Test
	void tolerancesOfTheWorkedExample() {
		UnifiedFormula formula = new UnifiedFormula(0.5, 28, UnifiedFormula.Engagement.NINE_PITCHES);
		assertThat(formula.boltPitchTolerance("2A")).isEqualByComparingTo("0.0037");
		assertThat(formula.boltMajorTolerance("2A")).isEqualByComparingTo("0.0065");
	}

	@Test
	void theFormulaOfTheMajorDiameterAgreesWithTheTableToAStepOfR40() {
		List<DataRow> rows = DataFile.rows(DataFile.class, "metric-major-tolerance.csv");
		List<Double> off = rows.stream().map(r -> MetricFormula.majorTolerance(DataFile.number(r, "P"), Integer.parseInt(r.get("grade")))
				/ DataFile.number(r, "um")).toList();
		assertThat(off).hasSize(65).allSatisfy(ratio -> assertThat(ratio).isBetween(0.925, 1.08));
		assertThat(off.stream().filter(ratio -> ratio == 1)).hasSize(57);
	}

	@Test
	void saysWhatIsFromMemory() {
		assertThat(limits("M20x1.5").source()).contains("ISO 965-1", "from memory");
		assertThat(limits("M20x1.5").origin()).isEqualTo(Origin.FROM_MEMORY);
		assertThat(limits("1/2-13 UNC").source()).contains("ASME B1.1");
	}

	@ParameterizedTest
	@CsvSource({"M20x1.5-4H5H", "M20x1.5-5g", "1/4-20 UNC-2B", "1/2-14 NPT", "R 1/2", "Tr20x4", "1/2-10 ACME", "1/2 BSW"})
	void inventsNone(String callout) {
		assertThat(ThreadTable.standard().boltLimits(thread(callout))).isEmpty();
	}
}
