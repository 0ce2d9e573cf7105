package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The numbers of drill and tap exchanged in the program: one slip. */
class SwappedToolsTest {

	private static List<String> called(String first, String second) {
		return heard("(T2 DRILL 6.8)\n(T3 M8 TAP)\nG21 G90\n" + first
				+ " M6\nS1400 M3\nG0 X10 Y10 Z50\nG81 X10 Y10 Z-25 R3 F180\nX40\nG80\n" + second
				+ " M6\nS400 M3\nG0 X10 Y10 Z50\nG84 X10 Y10 Z-16 R5 F500\nX40\nG80\nM30\n");
	}

	@Test
	void theTapDrillsAndTheDrillTaps() {
		assertThat(called("T2", "T3")).isEmpty();
		assertThat(called("T3", "T2")).singleElement().asString().startsWith("tap-in-drilling-cycle T3 is called a tap and runs in G81")
				.endsWith("the thread is torn out; T3 and T2, a drill that taps there, are swapped");
	}
}
