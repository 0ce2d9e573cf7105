package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** G18 for G17 at the head: drill and tap both go along Y, and one finding says why. */
class WrongPlaneThroughoutTest {

	private static final String PROGRAM = """
			G21 G90 G94 G17
			T2 M6 (DRILL 5.0)
			G54 G0 X10 Y10 S2500 M3
			G43 H2 Z10
			G81 X10 Y10 Z-20 R3 F300
			X30
			G80
			T3 M6 (M6X1 TAP)
			G0 X10 Y10 S520 M3
			G43 H3 Z10
			G84 X10 Y10 Z-14 R5 F520
			X30
			G80
			M30
			""";

	@Test
	void onePlaneOneFinding() {
		assertThat(SampleCheck.loud(PROGRAM)).isEmpty();
		assertThat(SampleCheck.loud(PROGRAM.replace("G17", "G18"))).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("plane-wrong");
			assertThat(finding.message()).startsWith("G18 is in force, the cycle is written for X, Y and a depth along Z");
			assertThat(finding.fixes()).singleElement().extracting(Fix::title).isEqualTo("Change G18 in line 1 to G17");
		});
	}

	/** Some holes lie on the other side of zero, where Y is a depth below R after all. */
	@Test
	void holesOnBothSidesOfZero() {
		String program = PROGRAM.replace("X10 Y10", "X10 Y-10").replace("X30\n", "X30 Y10\n");

		assertThat(SampleCheck.loud(program)).isEmpty();
		assertThat(SampleCheck.loud(program.replace("G17", "G18"))).extracting(Finding::rule).containsExactly("plane-wrong");
	}

	@Test
	void holesThatAreMeantAlongYAreNot() {
		assertThat(SampleCheck.loud("""
				G21 G90 G94 G18
				T2 M6 (DRILL 5.0)
				G54 G0 X10 Z-20 Y10 S2500 M3
				G81 X10 Z-20 Y-20 R3 F300
				X30
				G80
				T3 M6 (M6X1 TAP)
				G0 X10 Z-20 Y10 S520 M3
				G84 X10 Z-20 Y-14 R5 F520
				X30
				G80
				M30
				""")).isEmpty();
	}
}
