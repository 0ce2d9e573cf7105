package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.List;
import org.junit.jupiter.api.Test;

/** One line of a tapped pattern that somebody deleted, or a word of it: one finding, however much goes wrong behind it. */
class OneBlockLostTest {

	private static final String PROGRAM = """
			G21 G90 G17
			T1 M6 (DRILL 6.8)
			G54 G0 X10 Y10 S1500 M3
			G43 H1 Z50
			G83 Z-25 R2 Q5 F200
			X40
			X70
			G80
			T2 M6 (DRILL 5.0)
			G54 G0 X20 Y40 S2200 M3
			G43 H2 Z50
			G83 Z-20 R2 Q5 F200
			X60
			G80
			T3 M6 (TAP M6)
			G54 G0 X20 Y40 S450 M3
			G43 H3 Z50
			G84 Z-13 R5 F450
			X60
			G80
			T4 M6 (TAP M8)
			G54 G0 X10 Y10 S350 M3
			G43 H4 Z50
			G84 Z-17 R5 F437.5
			X40
			X70
			G80
			M30
			""";

	private static List<String> without(String line) {
		assertThat(PROGRAM).contains(line);
		return heard(PROGRAM.replace(line, ""));
	}

	@Test
	void nothingIsLost() {
		assertThat(heard(PROGRAM)).isEmpty();
	}

	@Test
	void theWayToTheFirstPlaceWithSpeedAndSpindle() {
		assertThat(without("G54 G0 X20 Y40 S450 M3\n")).as("begins at X60, where the drill ended").singleElement().asString()
				.startsWith("spindle-not-turning").endsWith("S450 M3 before the block, in one that goes to its own first place");
		assertThat(without("G54 G0 X10 Y10 S350 M3\n")).as("begins at the last hole of the tap before").singleElement().asString()
				.startsWith("spindle-not-turning");
	}

	@Test
	void theToolChange() {
		assertThat(without("T4 M6 (TAP M8)\n")).singleElement().asString().startsWith("feed-off-pitch")
				.contains("; a change to T4 before it, as H4 says, or ");
	}

	@Test
	void theRPlane() {
		assertThat(heard(PROGRAM.replace("Z-17 R5", "Z-17"))).singleElement().asString()
				.isEqualTo("plane-heights-wrong no R in the cycle: the tap is fed from Z50 on, where it stands, or the control stops or "
						+ "takes another R; the drill starts at R2");
		assertThat(heard(PROGRAM.replace("Z-17 R5", "Z-17").replace("G43 H4 Z50", "G43 H4 Z8")))
				.as("from where it stands, right above").isEmpty();
	}

	@Test
	void aTapInABoringCycleWhereTheOtherTaps() {
		assertThat(heard(PROGRAM.replace("G84 Z-17", "G85 Z-17"))).singleElement().asString()
				.startsWith("tap-in-drilling-cycle T4 is called a tap and runs in G85");
		assertThat(heard(PROGRAM.replace("G84", "G85"))).as("both: a self-reversing head").isEmpty();
	}

	@Test
	void theCycleOfATapThatIsCalledByItsHolder() {
		assertThat(heard(PROGRAM.replace("TAP M8", "M8 TENSION-COMPRESSION HOLDER"))).isEmpty();
		assertThat(heard(PROGRAM.replace("TAP M8", "M8 TENSION-COMPRESSION HOLDER").replace("G84 Z-17", "G81 Z-17"))).singleElement()
				.asString().startsWith("tap-in-drilling-cycle T4 is called a tap");
	}
}
