package truelead.checker.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.CheckResult;
import truelead.checker.Samples;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;

/** The lesson of a thread turned in passes, against hand calculation, and the way to it from a finding. */
class PassesLessonTest {

	private static final double TAN = 0.5773503;

	private final Lesson passes = Lessons.named("passes").orElseThrow();

	@Test
	void aPassLikeTheOthersRunsInTheirGroove() {
		Outcome usual = of();

		assertThat(usual.number("mouth")).isZero();
		assertThat(usual.number("cut")).isZero();
		assertThat(passes.said(usual)).startsWith("The last pass runs in the groove of those before.", "F is the lead of the thread.");
	}

	@ParameterizedTest
	// a whole pitch further out is the next groove; the sign is that of Z
	@CsvSource({"0.5, 0.5", "-0.5, -0.5", "1.5, 0", "2, 0.5", "-1, 0.5", "16, -0.5"})
	void theStartLiesBesideTheGrooveByWhatIsNoWholePitch(double begin, double beside) {
		assertThat(of("begin", begin).number("mouth")).isCloseTo(beside, within(1e-9));
	}

	@Test
	void anotherSpeedLagsOtherwise() {
		// F S / 1800 (from memory, handbooks of turning controls), where the axis follows 1/30 s late; 33 ms are a hundredth less
		Outcome faster = of("speed", 600, "lastSpeed", 900);

		assertThat(faster.number("lag")).isCloseTo(1.5 * 600 / 1800 * 0.99, within(1e-9));
		assertThat(faster.number("lastLag")).isCloseTo(1.5 * 900 / 1800 * 0.99, within(1e-9));
		assertThat(faster.number("mouth")).isCloseTo(1.5 * 300 / 1800 * 0.99, within(1e-9));
		assertThat(of("speed", 600, "lastSpeed", 900, "late", 0).number("mouth")).as("an axis without lag").isZero();
	}

	@Test
	void anotherFeedDriftsFromTheStartOn() {
		// 1.6 for 1.5: 0.1 mm a turn; 4 turns to the mouth, 20 / 1.5 turns from there
		Outcome other = of("lastFeed", 1.6, "approach", 6, "late", 0);

		assertThat(other.number("mouth")).isCloseTo(-0.4, within(1e-9));
		assertThat(other.number("drift")).isCloseTo(-0.1 * 20 / 1.5, within(1e-9));
		assertThat(passes.said(other)).anyMatch(said -> said.startsWith("It cuts off all that the thread is wide"));
	}

	@Test
	void aShallowerGrooveLiesWithinADeeperOne() {
		// two passes of 0.4: the last is 0.4 tan 30 = 0.2309 wider on each side
		Outcome within = of("depth", 0.8, "first", 0.4, "division", 1, "begin", 0.2);
		Outcome beside = of("depth", 0.8, "first", 0.4, "division", 1, "begin", 0.3);

		assertThat(within.number("cut")).isZero();
		assertThat(beside.number("cut")).isCloseTo(0.3 - 0.4 * TAN, within(1e-6));
		assertThat(beside.number("oversize")).isCloseTo(Math.sqrt(3) * (0.3 - 0.4 * TAN), within(1e-6));
	}

	@Test
	void theAxisNeedsWayToComeUpToItsFeed() {
		// F S T (a - 1 - ln a) = 0.495 x (0.02 - 1 + 3.9120) for a = 2 %
		assertThat(of().number("need")).isCloseTo(0.495 * 2.9320, within(1e-4));
		assertThat(passes.said(of("approach", 1))).anyMatch(said -> said.startsWith("The axis needs 1.45 mm"));
	}

	@Test
	void depthsByTheRootOfTheNumberAreHandbookSteps() {
		// first 0.3: 0.3, 0.424, 0.520, 0.600, 0.671, 0.735, 0.794, then the depth of 0.8
		ThreadPasses divided = new ThreadPasses(1.5, 0.8, 0.3, 0.01, false);

		assertThat(divided.depths()).hasSize(8).element(3).isEqualTo(0.6);
		assertThat(divided.depths().get(6)).isCloseTo(0.3 * Math.sqrt(7), within(1e-12));
		assertThat(divided.depths().get(7)).isEqualTo(0.8);
	}

	@Test
	void chipsAddUpToTheGroove() {
		// 0.8 deep, flat 1.5 / 8: 0.8 x (0.1875 + 0.8 tan 30)
		for (boolean even : new boolean[] {true, false}) {
			double sum = new ThreadPasses(1.5, 0.8, 0.25, 0.04, even).chips().stream().mapToDouble(chip -> chip).sum();
			assertThat(sum).isCloseTo(0.8 * (0.1875 + 0.8 * TAN), within(1e-6));
		}
	}

	@Test
	void theSameDepthEachPassIsHeavierFromPassToPass() {
		Outcome even = of("division", 1, "depth", 0.8, "first", 0.2);

		assertThat(even.number("passes")).isEqualTo(4);
		assertThat(even.number("heavyAt")).isEqualTo(4);
		// the last from 0.6 to 0.8 against the first to 0.2
		assertThat(even.number("ratio")).isCloseTo((0.2 * 0.1875 + (0.64 - 0.36) * TAN) / (0.2 * 0.1875 + 0.04 * TAN), within(1e-6));
	}

	@Test
	void aScrewBindsWhereTheToleranceIsUsedUp() {
		// M30x1.5 in a bore: 1.32 x 0.09 x 1.5^0.4 x 30^0.1 = 0.1963 mm (ISO 965-1; its table has 0.2 for the range 22.4 to 45)
		Outcome off = of("feed", 1.51, "lastFeed", 1.51);

		assertThat(off.number("play")).isCloseTo(0.1963, within(5e-5));
		assertThat(off.number("binds")).isCloseTo(0.1963 / (Math.sqrt(3) * 0.01), within(0.01));
		assertThat(of("starts", 2, "feed", 3, "lastFeed", 3).number("error")).as("two starts").isZero();
	}

	@ParameterizedTest
	@CsvSource({"1, helix-uneven, begin, 0.5", "2, speed-changed, lastSpeed, 699.12", "3, passes-too-heavy, first, 0.65"})
	void aFindingBringsItsNumbers(int exercise, String rule, String name, double value) {
		CheckResult result = Samples.check(MachineProfile.generic(), Job.EMPTY, Exercise.of("passes", exercise).orElseThrow().program());
		Finding finding = result.findings().stream().filter(f -> f.rule().equals(rule)).findFirst().orElseThrow();

		Filled filled = new Filling(result).of(finding).orElseThrow();

		assertThat(filled.lesson()).isSameAs(passes);
		assertThat(filled.values().of(name)).isCloseTo(value, within(0.005));
		assertThat(filled.values().of("diameter")).isEqualTo(30);
		assertThat(filled.values().of("length")).isEqualTo(20);
	}

	@Test
	void theLessonHasAsManyPassesAsTheProgram() {
		CheckResult result = Samples.check(MachineProfile.generic(), Job.EMPTY, Exercise.of("passes", 1).orElseThrow().program());

		Filled filled = new Filling(result).at(21, Optional.of(passes)).orElseThrow();

		assertThat(passes.outcome(filled.values()).number("passes")).isEqualTo(5);
	}

	private Outcome of(Object... moved) {
		Values values = Values.usual(passes);
		for (int i = 0; i < moved.length; i += 2) {
			values = values.with((String) moved[i], ((Number) moved[i + 1]).doubleValue());
		}
		return passes.outcome(values);
	}
}
