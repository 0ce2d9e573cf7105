package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;

/** Remarks of the shop that stand beside a tap and speak of something else: they are not taken for its name or its thread. */
class StrayCommentsTest {

	private static final String DRILLED = """
			G21 G17 G40 G80 G90 G94
			T2 M6 (DRILL 8.8)
			G54 G0 X0 Y0 S1100 M3
			G43 H2 Z50 M8
			G98 G83 Z-35 R3 Q5 F150
			X30
			G80 M9
			G91 G28 Z0
			G90
			M1
			""";
	private static final String TAPPED = """
			G54 G0 X0 Y0 S400 M3
			G43 H3 Z50 M8
			%sG98 G84 Z-25 R6 F500
			X30
			G80 M9
			G91 G28 Z0
			M30
			""";

	@ParameterizedTest
	@ValueSource(strings = {"CHAMFER 1X45", "CHAMFER 0.5-1.0", "REAMER IN OP20", "WATCH THE DRILL", "CLEAN THE REAMER",
			"CHECK BORE WITH PIN 8.9", "NULLPUNKT M8 MITTE", "LOCATE ON M16 PEG", "DRILL DEPTH CHECKED", "DEBURR BY HAND", "M8 ON",
			"P/N M8-1234", "R1/4 ALL ROUND"})
	void aRemarkAroundTheTap(String remark) {
		String comment = "(" + remark + ")\n";
		assertThat(heard(DRILLED + comment + "(TAP M10X1.25)\nT3 M6\n" + TAPPED.formatted(""))).as("above its title").isEmpty();
		assertThat(heard(DRILLED + "(TAP M10X1.25)\n" + comment + "T3 M6\n" + TAPPED.formatted(""))).as("below its title").isEmpty();
		assertThat(heard(DRILLED + "(TAP M10X1.25)\nT3 M6\n" + TAPPED.formatted(comment))).as("before the cycle").isEmpty();
	}

	@Test
	void aDrillInTheSpindleIsStillNamed() {
		assertThat(heard(DRILLED + "(TAP M10X1.25)\nT2 M6 (DRILL 8.8)\n" + TAPPED.formatted("")))
				.anySatisfy(f -> assertThat(f).startsWith("drill-in-tapping-cycle"));
		assertThat(heard(DRILLED + "(REAMER 9H7)\nT4 M6\n" + TAPPED.formatted("")))
				.anySatisfy(f -> assertThat(f).startsWith("drill-in-tapping-cycle T4 is called a reamer"));
	}

	@Test
	void aBareSizeTakesThePitchThatTheTitleSays() {
		assertThat(heard("(PLATE, 2X M10X1.25)\n" + DRILLED + "T3 M6 (TAP M10)\n" + TAPPED.formatted(""))).isEmpty();
		assertThat(heard(DRILLED + "T3 M6 (TAP M10)\n" + TAPPED.formatted(""))).as("without it the pitch is the coarse one").isNotEmpty();
		assertThat(heard("(PLATE, 2X M10X1)\n" + DRILLED + "T3 M6 (TAP M10)\n" + TAPPED.formatted(""))).as("a pitch that is not cut")
				.isNotEmpty();
	}

	@Test
	void aTapOfAnotherDiameterIsNotMeantByACode() {
		assertThat(heard(DRILLED + "(T3 D=10. - RIGHT HAND TAP)\nT3 M6\n" + TAPPED.formatted("(M8 = COOLANT)\n"))).isEmpty();
	}

	@Test
	void aListOfATurretHasToolsThatDoNotDrill() {
		assertThat(Samples.work("(T1 TURN   T3 SPOT   T5 DRILL 25/64   T7 TAP 7/16-20   T9 CUT OFF .118W)", "G20 G90", "T5 M6", "S700 M3",
				"G0 X0 Y0", "G83 Z-1.2 R.1 Q.2 F5", "G80", "T7 M6", "S300 M3", "G0 X0 Y0", "G84 Z-.8 R.2 F15", "G80", "M30").tappings())
				.singleElement().satisfies(tapping -> assertThat(tapping.wanted().statedThread().orElseThrow().value().designation())
						.isEqualTo("7/16-20 UNF"));
	}
}
