package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A metric hole in an inch program, whose drill is called by its millimetres. */
class DrillUnitTest {

	private static List<String> tapped(String drill, String speed, String tap) {
		return heard("G20 G90 G17 G40 G80\n(" + drill + ")\nT1 M6\nG54 G0 X.25 Y.25 S" + speed
				+ " M3\nG43 H1 Z.5\nG83 Z-.42 R.05 Q.05 F9.\nX.75\nG80\n(" + tap + ")\nT2 M6\nG54 G0 X.25 Y.25 S800 M3\nG43 H2 Z.5\n"
				+ "G84 Z-.25 R.15 F15.748\nX.75\nG80\nM30\n");
	}

	@Test
	void whatTurnsTooFastInInchesIsInMillimetres() {
		assertThat(tapped("DRILL 2.5", "4500", "TAP M3")).isEmpty();
		assertThat(tapped("DRILL 2.1", "4500", "TAP M3")).singleElement().asString()
				.startsWith("drill-too-small the hole is drilled 0.0827 in, the smallest minor diameter of M3x0.5");
		assertThat(tapped("DRILL 2.9", "4500", "TAP M3")).singleElement().asString().startsWith("drill-too-big");
	}
}
