package truelead.checker.summary;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.thread.ThreadSpec;

class ThreadSummaryTest {

	@Test
	void aMetricThreadTellsItsLimitsAndItsDrill() {
		assertThat(ThreadSummary.of(ThreadSpec.metric(6, 1).withClass("6H")))
				.anySatisfy(line -> assertThat(line).contains("M6x1", "pitch 1.000 mm"))
				.anySatisfy(line -> assertThat(line).startsWith("minor diameter 4.917 to 5.153 for 6H"))
				.anySatisfy(line -> assertThat(line).startsWith("drill for a cut thread 5"));
	}

	@Test
	void aClassOfScrewsTellsTheirLimitsAndNoDrill() {
		assertThat(ThreadSummary.of(ThreadSpec.metric(20, 1.5).withClass("6g"))).hasSize(3)
				.anySatisfy(line -> assertThat(line).startsWith("major diameter 19.732 to 19.968 for 6g outside (").contains("ISO 965-1"))
				.anySatisfy(line -> assertThat(line).startsWith("pitch diameter 18.854 to 18.994 for 6g outside ("));
	}

	@Test
	void aThreadInNoTableStillTellsItsPitch() {
		assertThat(ThreadSummary.of(ThreadSpec.metric(61.3, 2.7)).get(0)).contains("pitch 2.700 mm");
	}
}
