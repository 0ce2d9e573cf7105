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
			"5-1/2-16 UN, 5.432, 5.446, 5.4594, 5.4674"})
	void limitsByFormula(String callout, String minorMin, String minorMax, String pitchMin, String pitchMax) {
		Limits limits = ThreadTable.standard().limits(thread(callout)).orElseThrow();
		assertThat(limits.minorMin().orElseThrow()).isEqualByComparingTo(minorMin);
		assertThat(limits.minorMax().orElseThrow()).isEqualByComparingTo(minorMax);
		assertThat(limits.pitchMin().orElseThrow()).isEqualByComparingTo(pitchMin);
		assertThat(limits.pitchMax().orElseThrow()).isEqualByComparingTo(pitchMax);
		assertThat(limits.origin()).isNotEqualTo(Origin.TABLE);
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
