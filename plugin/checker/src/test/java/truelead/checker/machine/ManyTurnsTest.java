package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Helices of many turns in one block. */
class ManyTurnsTest {

	@Test
	void turnsBesideTheFirstAreSaidByName() {
		Followed run = Followed.milling("G71 G90 G0 X7 Y0 Z-18", "G3 X7 Y0 Z-3 I=-7 J=0 TURN=9 F300");
		assertThat(run.arcs()).singleElement().satisfies(arc -> assertThat(arc.sweep() / (2 * Math.PI)).isCloseTo(10, within(1e-9)));
	}

	@Test
	void anArcWithoutThemIsOne() {
		Followed run = Followed.milling("G71 G90 G0 X7 Y0 Z-18", "G3 X7 Y0 Z-3 I=-7 J=0 TURN=2 F300", "G3 X-7 I-7 J0");
		assertThat(run.arcs().get(1).sweep()).isCloseTo(Math.PI, within(1e-9));
	}
}
