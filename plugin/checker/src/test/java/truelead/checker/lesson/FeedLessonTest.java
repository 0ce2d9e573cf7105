package truelead.checker.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A tap led off its pitch: lag, holder, flanks and breaking. */
class FeedLessonTest {

	private final Lesson lesson = Lessons.named("feed").orElseThrow();

	@ParameterizedTest
	@CsvFileSource(resources = "/truelead/checker/rule/feed-error.csv", numLinesToSkip = 2)
	void lag_is_turns_times_what_the_feed_is_off(String thread, double pitch, double speed, double feed, double right, double error,
			double ten, double fifteen) {
		Outcome outcome = outcome("pitch", pitch, "speed", speed, "feed", feed, "depth", 15);
		assertThat(outcome.number("right")).isCloseTo(right, within(1e-9));
		assertThat(outcome.number("error")).isCloseTo(error, within(5e-6));
		assertThat(outcome.number("lag")).isCloseTo(fifteen, within(5e-5));
		assertThat(outcome("pitch", pitch, "speed", speed, "feed", feed, "depth", 10 * pitch).number("lag")).isCloseTo(ten, within(5e-5));
	}

	@ParameterizedTest
	@CsvFileSource(resources = "/truelead/checker/rule/spindle-run-up.csv", numLinesToSkip = 2)
	void a_spindle_that_stops_takes_the_tap_along(String thread, double pitch, double speed, double seconds, double turns, double travel) {
		Outcome outcome = outcome("pitch", pitch, "speed", speed, "feed", speed * pitch, "holder", 2, "acceleration", speed / 60 / seconds);
		assertThat(outcome.number("stop")).isCloseTo(turns, within(5e-5));
		assertThat(outcome.number("overrun")).isCloseTo(travel, within(5e-5));
		assertThat(outcome.number("reversal")).isCloseTo(travel, within(5e-5));
	}

	@ParameterizedTest
	@ValueSource(doubles = {100, 333, 520, 2870})
	void a_feed_that_fits_leaves_nothing_to_give(double speed) {
		Outcome outcome = outcome("pitch", 1.25, "speed", speed, "feed", 1.25 * speed);
		assertThat(outcome.number("lag")).isZero();
		assertThat(outcome.number("axial")).isZero();
		assertThat(outcome.number("shaved")).isZero();
		assertThat(lesson.said(outcome).get(0)).isEqualTo("F fits: 1.2500 mm a turn is the pitch, and nothing has to give.");
	}

	@Test
	void worse_feeds_are_never_kinder() {
		double before = -1;
		for (double feed = 800; feed > 500; feed -= 10) {
			Outcome outcome = outcome("feed", feed);
			assertThat(outcome.number("strain")).isGreaterThan(before);
			before = outcome.number("strain");
		}
	}

	@Test
	void behind_and_ahead_cost_the_same_in_a_rigid_holder() {
		Outcome behind = outcome("feed", 780);
		Outcome ahead = outcome("feed", 820);
		assertThat(behind.number("lag")).isCloseTo(-ahead.number("lag"), within(1e-12));
		assertThat(behind.number("axial")).isCloseTo(ahead.number("axial"), within(1e-9));
	}

	@Test
	void a_soft_holder_takes_what_a_rigid_one_leaves_to_the_flanks() {
		Outcome rigid = outcome("feed", 790);
		Outcome soft = outcome("feed", 790, "holder", 2, "travel", 5, "stiffness", 20);
		assertThat(soft.number("used")).isCloseTo(0.1875, within(1e-9));
		assertThat(soft.number("axial")).isCloseTo(0.1875 * 20, within(1e-9));
		assertThat(soft.number("shaved")).isZero();
		assertThat(rigid.number("shaved")).isGreaterThan(0.15);
	}

	@Test
	void travel_is_used_up_at_the_turn_where_the_lag_has_grown_to_it() {
		Outcome outcome = outcome("feed", 760, "holder", 1, "travel", 0.3, "stiffness", 20);
		assertThat(outcome.number("full")).isCloseTo(0.3 / 0.05, within(1e-3));
		assertThat(outcome.number("used")).isEqualTo(0.3);
	}

	@Test
	void flanks_never_bear_more_than_shaves_them() {
		// M6x1, 790 at 800: 0.0125 off a turn; 2100 x 0.5413 x 1 x 0.0125 x 15 turns = 213.1 N
		assertThat(outcome("feed", 790).number("axial")).isCloseTo(2100 * 0.541266 * 0.0125 * 15, within(0.01));
	}

	@Test
	void torque_of_a_tap_that_fits_is_the_cutting_torque() {
		// kc P^2 D / 8000 = 2100 x 1 x 6 / 8000
		assertThat(outcome("feed", 800).number("torque")).isCloseTo(1.575, within(1e-12));
		assertThat(outcome("feed", 800, "kind", 1).number("torque")).isCloseTo(2.5 * 1.575, within(1e-12));
	}

	@Test
	void half_the_feed_breaks_the_tap_and_the_doubtful_turns_stand_about_it() {
		Outcome outcome = outcome("feed", 400);
		assertThat(outcome.number("early")).isLessThan(outcome.number("breaks"));
		assertThat(outcome.number("breaks")).isBetween(1.0, 15.0);
		assertThat(Double.isNaN(outcome.number("late")) || outcome.number("late") > outcome.number("breaks")).isTrue();
		assertThat(lesson.said(outcome)).anyMatch(said -> said.startsWith("A tap of this size would likely break about turn"));
	}

	@Test
	void a_spindle_that_sags_hurts_a_feed_a_minute_in_an_uncoupled_machine_only() {
		assertThat(outcome("feed", 800, "holder", 2, "turning", 98).number("lag")).isCloseTo(15 * (800 / 784.0 - 1), within(1e-9));
		assertThat(outcome("feed", 1, "mode", 1, "holder", 2, "turning", 98).number("lag")).isZero();
		assertThat(outcome("feed", 800, "holder", 1, "turning", 98).number("lag")).isZero();
	}

	@Test
	void feed_a_turn_rounded_to_a_hundredth_is_off_by_the_rounding() {
		// 7/16-20: 1.27 fits in two decimals, 32 threads an inch (0.79375) does not
		assertThat(outcome("pitch", 0.79375, "feed", 0.79375, "mode", 1, "decimals", 2).number("error")).isCloseTo(-0.00375, within(1e-9));
	}

	private Outcome outcome(Object... moved) {
		Values values = Values.usual(lesson);
		for (int i = 0; i < moved.length; i += 2) {
			values = values.with((String) moved[i], ((Number) moved[i + 1]).doubleValue());
		}
		return lesson.outcome(values);
	}
}
