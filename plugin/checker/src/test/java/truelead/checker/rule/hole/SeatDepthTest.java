package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A counterbore typed so deep that no thread is left below it. */
class SeatDepthTest {

	private static List<String> tapped(String seat, String tap) {
		return heard("G21 G90\nT1 M6 (DRILL 5.0)\nS2000 M3\nG0 X0 Y0 Z50\nG83 X0 Z-30 R2 Q5 F150\nX30\nG80\nT2 M6 (COUNTERBORE 11)\n"
				+ "S500 M3\nG0 X0 Y0 Z50\nG82 X0 Z-" + seat + " R2 P200 F60\nX30\nG80\n" + "T3 M6 (" + tap
				+ ")\nS300 M3\nG0 X0 Y0 Z50\nG84 X0 Z-22 R5 F300\nX30\nG80\nM30\n");
	}

	@Test
	void theTapsLeadAloneGoesOnBelowIt() {
		assertThat(tapped("6.5", "M6 TAP")).isEmpty();
		assertThat(tapped("16.5", "M6 TAP")).isEmpty();
		assertThat(tapped("20.5", "M6 TAP")).singleElement().asString()
				.startsWith("thread-too-short the hole is 11 mm wide down to 20.5 mm and the tap goes 22 mm deep: 1.5 mm are left for "
						+ "M6x1, less than the tap's lead; see both depths");
	}
}
