package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Holes on a pad above level 0, whose R is typed as for those beside it. */
class PadTest {

	private static List<String> tapped(String spotted, String r) {
		return heard("G21 G90\nT1 M6 (SPOT DRILL)\nS2000 M3\nG0 X0 Y0 Z50\nG81 X0 Z" + spotted
				+ " R12 F150\nX30\nG80\nT2 M6 (DRILL 8.5)\nS1100 M3\nG0 X0 Y0 Z50\nG83 X0 Z-25 R12 Q5 F180\nX30\nG80\n"
				+ "T3 M6 (M10 TAP)\nS300 M3\nG0 X0 Y0 Z50\nG84 X0 Z-10 R" + r + " F450\nX30\nG80\nM30\n");
	}

	@Test
	void theTapIsDrivenIntoThePad() {
		assertThat(tapped("6", "15")).isEmpty();
		assertThat(tapped("6", "9")).as("so near a drill may start as well").isEmpty();
		assertThat(tapped("6", "8")).singleElement().asString()
				.startsWith("plane-heights-wrong R is at Z8 and the bottom at Z-10: R is 4 mm below Z12, where the drill starts");
		assertThat(tapped("-4", "5")).as("level 0 is the surface").isEmpty();
	}
}
