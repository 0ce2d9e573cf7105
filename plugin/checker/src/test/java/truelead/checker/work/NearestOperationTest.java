package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;

/** From a line of a program to the thread it is about. */
class NearestOperationTest {

	private static final String[] TWO_TAPS = {
			"%", // 1
			"(PLATE)", // 2
			"G21 G90 G17 G94", // 3
			"T1 M6 (DRILL 5.0)", // 4
			"G0 X0 Y0 S2000 M3", // 5
			"G99 G81 Z-20. R2. F200", // 6
			"X10.", // 7
			"G80", // 8
			"T2 M6 (DRILL 6.8)", // 9
			"G0 X50. Y0 S2000 M3", // 10
			"G99 G81 Z-24. R2. F200", // 11
			"G80", // 12
			"(M6X1 TAP)", // 13
			"T3 M6", // 14
			"G0 X0 Y0 S500 M3", // 15
			"G99 G84 Z-12. R5. F500", // 16
			"X10.", // 17
			"G80", // 18
			"M5", // 19
			"(M8X1.25 TAP)", // 20
			"T4 M6", // 21
			"G0 X50. Y0 S400 M3", // 22
			"M98 P200", // 23
			"G80", // 24
			"M30", // 25
			"O200", // 26
			"G99 G84 Z-16. R5. F500", // 27
			"M99"}; // 28

	@ParameterizedTest
	@CsvSource({"16, the cycle", "17, a place of it", "13, the callout", "14, the tool change", "15, the way to it", "18, behind it",
			"19, the tool's last block", "6, its drill", "7, its drill"})
	void theFirstThread(int line, String what) {
		assertThat(thread(NearestOperation.at(Samples.work(TWO_TAPS), line - 1))).as(what).isEqualTo("M6x1");
	}

	@ParameterizedTest
	@CsvSource({"20, the callout", "21, the tool change", "23, the call", "27, the cycle in the subprogram", "11, its drill"})
	void theSecondThread(int line, String what) {
		assertThat(thread(NearestOperation.at(Samples.work(TWO_TAPS), line - 1))).as(what).isEqualTo("M8x1.25");
	}

	@ParameterizedTest
	@CsvSource({"1, M6x1", "3, M6x1", "26, M8x1.25", "28, M8x1.25", "900, M8x1.25"})
	void elsewhereTheNearest(int line, String thread) {
		Work work = Samples.work(TWO_TAPS);
		assertThat(NearestOperation.at(work, line - 1)).isEmpty();
		assertThat(thread(NearestOperation.to(work, line - 1))).isEqualTo(thread);
	}

	@Test
	void everyArcOfAHelixBelongsToIt() {
		Work work = Samples.work("G21 G90 G17 G94", "T5 M6 (THREAD MILL M12X1.75 DIA 8)", "G0 X0 Y0 S3000 M3", "Z-14.", "G1 X2. F200",
				"G3 X2. Y0 Z-12.25 I-2. J0", "G3 X2. Y0 Z-10.5 I-2. J0", "G1 X0", "G0 Z10.", "M30");
		for (int line = 1; line <= 8; line++) {
			assertThat(thread(NearestOperation.at(work, line))).as("line " + (line + 1)).isEqualTo("M12x1.75");
		}
	}

	@Test
	void aProgramWithoutThreadsHasNone() {
		assertThat(NearestOperation.to(Samples.work("G0 X0", "M30"), 0)).isEmpty();
	}

	private static String thread(Optional<ThreadingOperation> operation) {
		return operation.flatMap(one -> one.wanted().thread()).map(fact -> fact.value().designation()).orElse("none");
	}
}
