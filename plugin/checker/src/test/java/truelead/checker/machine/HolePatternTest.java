package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.program.LengthUnit;

/** Patterns of holes that one block says under a cycle that was only defined. */
class HolePatternTest {

	private static List<String> places(String... lines) {
		return Followed.milling(lines).places();
	}

	@Test
	void fourHolesRoundTheCentreThatTheToolStandsAt() {
		assertThat(places("G21 G90 G0 X10. Y5. Z20.", "G81 G99 Z-10. R2. F100. L0", "G70 I20. J0 L4", "G80"))
				.containsExactly("30,5", "10,25", "-10,5", "10,-15");
	}

	@Test
	void anArcARowAndAGrid() {
		String cycle = "G81 G99 Z-10. R2. F100. L0";
		assertThat(places("G21 G90 G0 X0 Y0 Z20.", cycle, "G71 I10. J0 K90. L2", "G80")).containsExactly("10,0", "0,10");
		assertThat(places("G21 G90 G0 X1. Y1. Z20.", cycle, "G72 I5. J90. L3", "G80")).containsExactly("1,1", "1,6", "1,11");
		assertThat(places("G21 G90 G0 X0 Y0 Z20.", "G81 Z-10. R2. F100. K0", "G37.1 X0 Y0 I10. P2 J5. K2", "G80"))
				.containsExactly("0,0", "10,0", "10,5", "0,5");
		assertThat(places("G21 G90 G0 X0 Y0 Z20.", "G81 Z-10. R2. F100. K0", "G34 X5. Y0 I10. J90. K2", "G80"))
				.containsExactly("5,10", "5,-10");
	}

	@Test
	void withoutACountItIsTheWordForInches() {
		Followed run = Followed.milling("G70 G90 G0 X1.", "G81 Z-1. R1. F1.", "G80");
		assertThat(run.state().unit()).isEqualTo(LengthUnit.INCH);
	}

	@Test
	void anglesThatCountOnUnderPolarCoordinatesStayAsTheyAre() {
		assertThat(places("G21 G90 G0 X0 Y0 Z20.", "G16", "G81 X10. Y0 Z-5. R2. F100.", "G91 Y90. K3", "G90 G80 G15"))
				.containsExactly("10,0", "0,10", "-10,0", "0,-10");
	}
}
