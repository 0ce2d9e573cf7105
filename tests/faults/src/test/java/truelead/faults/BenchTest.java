package truelead.faults;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A small part of the bench, through the command: a hundred and sixty good programs and as many with one fault each. */
class BenchTest {
	private static final Checker CHECKER = new Checker();
	private static Tally tally;

	@BeforeAll
	static void run() {
		tally = Bench.run(CHECKER, 500_001, 160);
	}

	@Test
	void goodProgramsAreSilentAboveInformation() {
		assertThat(tally.alarmed()).as(tally.offenders(2)).isZero();
	}

	@Test
	void faultsAreNamedByTheRightRuleAtTheRightBlock() {
		assertThat(tally.share(CHECKER.rules)).as(tally.offenders(1)).isGreaterThanOrEqualTo(0.95);
	}
}
