package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import org.junit.jupiter.api.Test;

class NoThreadMadeTest {

	private static final String DRILLED = """
			G21 G90 G94 G17 G40
			T2 M6 (DRILL 5.0)
			G54 G0 X10 Y10 S2500 M3
			G43 H2 Z10
			G81 Z-18 R3 F300
			X30
			G80
			""";
	private static final String TAP = "T3 M6 (M6X1 TAP)\nG0 X10 Y10 S520 M3\nG43 H3 Z10\n";
	private static final String CYCLE = "G84 Z-12 R5 F520\nX30\nG80\n";
	private static final String END = "G0 Z50\nM30";

	@Test
	void aTapWithoutItsCycleThreadsNothing() {
		assertThat(heard(DRILLED + TAP + "X30\n" + END)).singleElement().asString()
				.startsWith("no-thread-made T3 is called a tap M6x1 and threads nothing");
		assertThat(heard(DRILLED + TAP + CYCLE + END)).isEmpty();
	}

	@Test
	void aTapThatThreadsElsewhereInTheProgramHasDoneItsWork() {
		assertThat(heard(DRILLED + TAP + "X30\nT2 M6\nG0 X10 Y10 S2500 M3\nG43 H2 Z10\n" + TAP + CYCLE + END)).isEmpty();
	}

	@Test
	void whatAPersonDoesAtAStopIsNotKnown() {
		assertThat(heard(DRILLED + TAP + "M0 (TAP BOTH BY HAND)\n" + END)).isEmpty();
	}

	@Test
	void aProgramThatShowsItsToolsMakesNoThreads() {
		assertThat(heard("G21 G90 G94 G17 G40\nT2 M6 (DRILL 5.0)\nG54 G0 X0 Y0\nG43 H2 Z100\nM1\nT3 M6 (M6X1 TAP)\nG0 X0 Y0\n"
				+ "G43 H3 Z100\nM1\nM30")).isEmpty();
	}

	@Test
	void aCallThatIsNotHereMayThread() {
		assertThat(heard(DRILLED + TAP + "M98 P4711\n" + END)).singleElement().asString().startsWith("not-followed");
	}

	@Test
	void aCutterThatGoesRoundWithoutAdvancingCutsARing() {
		String mill = """
				T4 M6 (THREAD MILL D12 M20X1.5)
				G0 X0 Y0 S2400 M3
				G43 H4 Z10
				G0 Z-15
				G3 X4 Z-14.625 I2 J0 F150
				G3 I-4 J0
				G3 X0 I-2 J0
				""";
		String program = DRILLED.replace("5.0", "18.5").replace("X10 Y10", "X0 Y0").replace("X30\n", "").replace("Z-18", "Z-25") + mill
				+ END;
		assertThat(heard(program)).anyMatch(said ->
				said.startsWith("helix-off-pitch the helix advances 0.000 mm a turn, M20x1.5 needs 1.500: a ring is cut and no thread"));
		assertThat(heard(program)).noneMatch(said -> said.startsWith("no-thread-made"));
	}
}
