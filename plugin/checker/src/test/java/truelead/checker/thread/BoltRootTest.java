package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.callout.CalloutReader;

/** Roots of bolts: d3 of the metric series, d - 1.22687 P (ISO 68-1), and d1 of Whitworth's, d - 1.28066 P (ISO 228-1, BS 84). */
class BoltRootTest {

	@ParameterizedTest
	@CsvSource({"M10X1.5, 8.160", "M6X1, 4.773", "M24X3, 20.319", "G1/2, 18.631", "G1, 30.291"})
	void theUsualRootIsThatOfTheStandard(String callout, double root) {
		ThreadSpec thread = CalloutReader.readExactly(callout).orElseThrow().spec();
		assertThat(BoltRoot.usual(thread)).isCloseTo(root, within(0.0015));
		assertThat(BoltRoot.least(thread)).isLessThan(root);
		assertThat(BoltRoot.most(thread)).isGreaterThan(root);
	}
}
