package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.callout.CalloutReader;

/** Limits by the formulas of standards whose tables are not held, against numbers that were worked out by hand or are well known. */
class LimitsByFormulaTest {

	private static ThreadSpec thread(String callout) {
		return CalloutReader.readExactly(callout).orElseThrow().spec();
	}

	@ParameterizedTest
	@CsvSource({
			"1/4-20 BSW, 0.1860, 0.2030, 0.2180, 0.2219",
			"1/2-12 BSW, 0.3933, 0.4169, 0.4466, 0.4518",
			"1/4-26 BSF, 0.2007, 0.2124, 0.2254, 0.2291",
			"5/16-22 BSF, 0.2543, 0.2684, 0.2834, 0.2875",
			"0 BA, 4.800, 5.175, 5.400, 5.550",
			"2 BA, 3.728, 4.032, 4.214, 4.341",
			"Rp 1/4, 11.341, 11.549, 12.197, 12.405",
			"Rp 1/2, 18.489, 18.773, 19.651, 19.935",
			"Rp 3, 84.710, 85.142, 86.189, 86.621",
			"4-1/2-8 UN, 4.365, 4.390, 4.4188, 4.4310",
			"5-1/2-16 UN, 5.432, 5.446, 5.4594, 5.4674",
			"1/4-28 UNJF, 0.2152, 0.2229, 0.2268, 0.2300",
			"3/8-24 UNJF, 0.3344, 0.3417, 0.3479, 0.3516",
			"1/2-20 UNJF, 0.4513, 0.4591, 0.4675, 0.4717",
			"2-6 BUTT, 1.8000, 1.8096, 1.9000, 1.9096",
			"1-8 BUTT, 0.8500, 0.8581, 0.9250, 0.9331"})
	void limitsByFormula(String callout, String minorMin, String minorMax, String pitchMin, String pitchMax) {
		Limits limits = ThreadTable.standard().limits(thread(callout)).orElseThrow();
		assertThat(limits.minorMin().orElseThrow()).isEqualByComparingTo(minorMin);
		assertThat(limits.minorMax().orElseThrow()).isEqualByComparingTo(minorMax);
		assertThat(limits.pitchMin().orElseThrow()).isEqualByComparingTo(pitchMin);
		assertThat(limits.pitchMax().orElseThrow()).isEqualByComparingTo(pitchMax);
		assertThat(limits.origin()).isNotEqualTo(Origin.TABLE);
	}

	/** The pitch diameter's tolerance is not held. */
	@ParameterizedTest
	@CsvSource({"S36x6, 27.000, 27.500", "S20x4, 14.000, 14.375", "PG 7, 11.294, 11.444", "PG 11, 17.259, 17.409", "PG 21, 26.792, 27.042",
			"Tr 200x16, 184.000, 185.000"})
	void theSmallestAndTheLargestBore(String callout, String minorMin, String minorMax) {
		Limits limits = ThreadTable.standard().limits(thread(callout)).orElseThrow();
		assertThat(limits.minorMin().orElseThrow()).isEqualByComparingTo(minorMin);
		assertThat(limits.minorMax().orElseThrow()).isEqualByComparingTo(minorMax);
		assertThat(limits.pitchMax()).isEmpty();
		assertThat(limits.origin()).isEqualTo(Origin.FROM_MEMORY);
	}

	@ParameterizedTest
	@CsvSource({"M5 STI, 5.173, 5.333, 6.039", "M6 STI, 6.217, 6.407, 7.299", "M10 STI, 10.325, 10.561, 11.949"})
	void aThreadForAnInsertIsLargerThanItsInsert(String callout, String minorMin, String minorMax, String majorMin) {
		Limits limits = InsertThread.limits(thread(callout)).orElseThrow();
		assertThat(limits.minorMin().orElseThrow()).isEqualByComparingTo(minorMin);
		assertThat(limits.minorMax().orElseThrow()).isEqualByComparingTo(minorMax);
		assertThat(limits.majorMin().orElseThrow()).isEqualByComparingTo(majorMin);
		assertThat(limits.pitchMax()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({"Rp 1/4, 11.5", "3/8 BSW, 5/16", "1/2-24 UNS, 11.6", "2 BA, 3.9"})
	void theDrillLiesInTheLimits(String callout, String drill) {
		ThreadSpec thread = thread(callout);
		Limits limits = ThreadTable.standard().limits(thread).orElseThrow();
		assertThat(TapDrill.cutting(thread).orElseThrow()).satisfies(made -> {
			assertThat(made.name()).isEqualTo(drill);
			assertThat(made.diameter()).isBetween(limits.minorMinMm().orElseThrow(), limits.minorMaxMm().orElseThrow());
		});
	}
}
