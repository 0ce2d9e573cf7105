package truelead.checker.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** The lessons of depth and helix against reference tables and hand calculation. */
class HoleLessonsTest {

	private final Lesson depth = Lessons.named("depth").orElseThrow();
	private final Lesson helix = Lessons.named("helix").orElseThrow();

	@ParameterizedTest
	@CsvFileSource(resources = "/truelead/checker/rule/drill-point.csv", numLinesToSkip = 2)
	void point_length_by_angle(double angle, double factor) {
		assertThat(of(depth, "drill", 10, "diameter", 11, "angle", angle).number("point")).isCloseTo(10 * factor, within(5.1e-5));
	}

	@Test
	void tap_meets_the_cone_where_its_nose_does() {
		// drill 5 at 118 degrees to 14: full to 12.498; lead 2.5 at 15 degrees: nose 5 - 2 x 2.5 x 0.26795 = 3.660; contact 0.670 x 0.60086
		// below
		Outcome outcome = of(depth, "drillTip", 14, "tapTip", 12.6);
		assertThat(outcome.number("full")).isCloseTo(12.4978, within(1e-4));
		assertThat(outcome.number("nose")).isCloseTo(3.6603, within(1e-4));
		assertThat(outcome.number("contact")).isCloseTo(12.9004, within(1e-4));
		assertThat(depth.said(outcome).get(0)).isEqualTo("The tap's end goes 0.10 mm into the cone, and would meet it 0.30 mm further.");
		assertThat(depth.said(of(depth, "drillTip", 14, "tapTip", 13)).get(0))
				.startsWith("The tap meets the cone 0.10 mm before its depth");
	}

	@ParameterizedTest
	@CsvSource({"0.06, 80, 0.0512, 54.2", "0.06, 80, 0.0472, 78.8", "0.112, 40, 0.0945, 53.9", "0.099, 56, 0.0860, 56.0"})
	void percent_of_thread_as_in_the_handbook(double inch, double threads, double drill, double percent) {
		double scale = 10; // the smallest sizes lie below the controls; percent does not change with scale
		assertThat(of(depth, "diameter", inch * 25.4 * scale, "pitch", 25.4 * scale / threads, "drill", drill * 25.4 * scale)
				.number("percent")).isCloseTo(percent, within(0.051));
	}

	@Test
	void a_thousandth_smaller_is_never_easier_and_tells_more_on_a_small_tap() {
		double small = of(depth, "diameter", 3, "pitch", 0.5, "drill", 2.5).number("pinch");
		double large = of(depth, "diameter", 12, "pitch", 1.75, "drill", 10.2).number("pinch");
		assertThat(small).isGreaterThan(large).isBetween(5.0, 12.0);
		assertThat(large).isPositive();
	}

	@Test
	void the_depth_it_names_leaves_the_usual_room() {
		double needed = of(depth).number("needed");
		Outcome mended = of(depth, "drillTip", needed, "tapTip", 12 + 2.5);
		assertThat(mended.number("room")).isCloseTo(2, within(1e-9));
		assertThat(mended.number("missing")).isZero();
	}

	@ParameterizedTest
	@CsvFileSource(resources = "thread-milling.csv", numLinesToSkip = 2)
	void helix_and_feeds_of_the_table(String thread, double diameter, double pitch, double cutter, double radius, double turn, double half,
			double quarter, double speed, double teeth, double toothFeed, double edgeFeed, double centreFeed, double ratio, double length,
			double time) {
		Outcome outcome = of(helix, "diameter", diameter, "pitch", pitch, "cutter", cutter, "radius", radius, "rise", pitch, "speed", speed,
				"teeth", teeth, "toothFeed", toothFeed, "feed", centreFeed, "entryRise", quarter);
		assertThat(outcome.number("needed")).isCloseTo(radius, within(1e-9));
		assertThat(outcome.number("edgeFeed")).isCloseTo(edgeFeed, within(1e-6));
		assertThat(outcome.number("centreFeed")).isCloseTo(centreFeed, within(6e-4));
		assertThat(outcome.number("length")).isCloseTo(length, within(6e-5));
		assertThat(outcome.number("time")).isCloseTo(time, within(6e-4));
		assertThat(outcome.number("entryOff")).isCloseTo(0, within(6e-5));
		assertThat(outcome.number("size")).isCloseTo(0, within(1e-9));
	}

	@Test
	void pitch_diameter_of_a_helix_that_fits_is_the_basic_one() {
		assertThat(of(helix).number("middle")).isCloseTo(16 - 0.649519 * 2, within(1e-6));
	}

	@Test
	void slips_between_radius_and_diameter() {
		assertThat(of(helix, "slip", 1).number("size")).isEqualTo(4);
		assertThat(of(helix, "slip", 2).number("size")).isEqualTo(12);
		assertThat(of(helix, "slip", 3).number("size")).isEqualTo(-2);
	}

	@ParameterizedTest
	@CsvSource({"0, 0, 0, right", "1, 1, 0, right", "1, 0, 1, left", "0, 1, 1, left"})
	void sense_and_way_make_the_hand(int sense, int way, int hand, String made) {
		assertThat(helix.said(of(helix, "sense", sense, "way", way, "hand", hand)))
				.contains("Sense and way make a " + made + "-hand thread, as wanted.");
		assertThat(helix.said(of(helix, "sense", sense, "way", way, "hand", 1 - hand)))
				.anyMatch(said -> said.contains("no screw will go in"));
	}

	private static Outcome of(Lesson lesson, Object... moved) {
		Values values = Values.usual(lesson);
		for (int i = 0; i < moved.length; i += 2) {
			values = values.with((String) moved[i], ((Number) moved[i + 1]).doubleValue());
		}
		return lesson.outcome(values);
	}
}
