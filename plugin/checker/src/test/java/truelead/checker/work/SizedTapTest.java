package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.Samples;
import truelead.checker.job.Fact;
import truelead.checker.thread.ThreadSpec;

/**
 * The thread of a tap that a tool list gives a diameter alone: pitches of ISO 261 and ASME B1.1, tap drills of shop charts (common
 * practice, no source).
 */
class SizedTapTest {

	@ParameterizedTest
	@CsvSource({"G21, 8., 6.8, 500, 625., M8x1.25", "G21, 8., 6.8, 500, 600., M8x1.25", "G21, 8., 6.8, 500, 500., M8x1.25",
			"G21, 8., 7., 500, 500., M8x1",
			"G21, 8., 7., 500, 625., M8x1.25", "G21, 8., 7.4, 500, 625., M8x1.25", "G21, 10., 8.5, 300, 450., M10x1.5",
			"G21, 10., 9., 300, 300., M10x1",
			"G20, .25, .201, 500, 25., 1/4-20 UNC", "G20, .25, .201, 500, 24., 1/4-20 UNC", "G20, .25, .213, 500, 17.86, 1/4-28 UNF",
			"G20, .19, .159, 640, 20., #10-32 UNF",
			"G20, .19, .159, 640, 22., #10-32 UNF", "G20, .315, .2677, 500, 24.6063, M8x1.25"})
	void diameterAndFeedOrDrill(String unit, String tap, String drill, String speed, String feed, String thread) {
		assertThat(wanted(unit, tap, drill, speed, feed)).hasValueSatisfying(fact -> {
			assertThat(fact.value().designation()).isEqualTo(thread);
			assertThat(fact.stated()).isTrue();
			assertThat(fact.origin()).contains("right hand tap");
		});
	}

	/** A pipe tap's diameter is in no series, and a drill between two pitches tells neither. */
	@ParameterizedTest
	@CsvSource({"G20, .54, .4375, 500, 27.78", "G21, 8., 6.9, 500, 560.", "G21, 13.157, 11.8, 300, 401."})
	void whatTellsNoPitch(String unit, String tap, String drill, String speed, String feed) {
		assertThat(wanted(unit, tap, drill, speed, feed).filter(Fact::stated)).isEmpty();
	}

	private static Optional<Fact<ThreadSpec>> wanted(String unit, String tap, String drill, String speed, String feed) {
		double scale = unit.equals("G20") ? 1 / 25.4 : 1;
		List<String> program = new ArrayList<>(List.of("(T1 D=" + drill + " CR=0. TAPER=118DEG - ZMIN=-25. - drill)",
				"(T2 D=" + tap + " CR=0. - ZMIN=-18. - right hand tap)", unit + " G90 G94 G54", "T1 M6", "S2000 M3",
				"G81 X0 Y0 Z" + -30 * scale + " R" + 5 * scale + " F10.", "G80", "T2 M6", "S" + speed + " M3"));
		program.addAll(List.of("G84 X0 Y0 Z" + -15 * scale + " R" + 5 * scale + " F" + feed, "G80", "M30"));
		return Samples.work(program.toArray(String[]::new)).tappings().get(0).wanted().thread();
	}
}
