package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadSystemTest {

	/** ISO 68-1, ISO 228-1, ISO 7-1, ASME B1.20.1, ISO 2901: h or H1 over P. */
	@ParameterizedTest
	@CsvSource({ "METRIC, 0.5413", "UNIFIED, 0.5413", "G, 0.6403", "RC, 0.6403", "NPT, 0.8", "TR, 0.5" })
	void theDepthOfTheProfile(ThreadSystem system, double depth) {
		assertThat(system.profileOverPitch()).isCloseTo(depth, within(5e-5));
	}
}
