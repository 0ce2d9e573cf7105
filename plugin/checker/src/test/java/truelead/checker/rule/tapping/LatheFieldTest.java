package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/**
 * What lathe programs of many hands do around a thread: holders that float, live tools, cycles called by name, parts turned end for end.
 */
class LatheFieldTest {

	@Test
	void aTapThatIsFedInAHolderThatFloats() {
		String program = """
				G21 G99
				T0101 (DRILL 6.8)
				G97 S1300 M3
				G0 X0 Z3.
				G1 Z-24. F.12
				G0 Z50.
				T0202 (M8 TAP, FLOATING HOLDER)
				G97 S250 M3
				G0 X0 Z6.
				G1 Z-15. F1.2
				M5
				M4
				G1 Z6. F1.3
				M5
				G0 Z50.
				""";
		assertThat(said(program)).as("fed a little less in and a little more out").isEmpty();
		assertThat(said(program.replace("F1.3", "F2."))).singleElement().asString().startsWith("override-open");
		assertThat(said(program.replace("M4\n", ""))).singleElement().asString().startsWith("spindle-wrong-way");
	}

	/** The tool that turns a plug and a neck behind its thread is no boring tool, and the hole in the face is the drill's. */
	@Test
	void aPlugWithANeckIsTurnedOutside() {
		String program = """
				(PLUG)
				G21 G40 G99
				T0101
				G97 S1200 M3
				G0 X29. Z1.
				X19.8
				G1 X23.8 Z-1.5 F.1
				Z-24.
				X21.
				Z-29.
				X29.
				G0 X100. Z100.
				T0505 (DRILL 6.8)
				G97 S1600 M3
				G0 X0 Z3.
				G83 Z-24. Q4000 F.12
				G80
				G0 Z100.
				T0707 (M8 TAP)
				G97 S300 M3
				G0 X0 Z6.
				G84 Z-18. F1.25
				G80
				G0 Z100.
				M30
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("DRILL 6.8", "DRILL 6.5"))).singleElement().asString().startsWith("drill-too-small");
		assertThat(said(program.replace("G83 Z-24.", "G83 Z-19."))).singleElement().asString().startsWith("drill-too-shallow");
	}

	/** G63 says by itself that a tap is fed, whatever the tool is called. */
	@Test
	void aToolWithoutANameUnderG63Taps() {
		String program = """
				G18 G21 G95 G90
				T3 D1 ;BOHRER 6.8
				G97 S1500 M3
				G0 X0 Z2
				G1 Z-22 F0.12
				G0 Z100
				T4 D1 ;M8
				G97 S400 M3
				G0 X0 Z5
				G63 Z-15 F1.25
				M5
				M4
				G63 Z5 F1.25
				M5
				G0 Z100
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M5\nM4\n", "M5\n"))).singleElement().asString()
				.startsWith("spindle-wrong-way the tap comes out with the spindle stopped by M5");
		assertThat(said(program.replace("Z-15", "Z-22"))).singleElement().asString().startsWith("drill-too-shallow");
	}

	@Test
	void cyclesByNameWorkAlongZInThePlaneOfLathes() {
		String rigid = """
				G18 G21 G90 G95
				T5 (DRILL 10.2)
				G97 S900 M3
				G0 X0 Z10
				G1 Z-38 F.15
				G0 Z10
				T6 (M12 TAP)
				G97 S250 M3
				G0 X0 Z10
				CYCLE84(10,0,4,-28,,0,3,,1.75,0,250,250)
				G0 X200 Z200
				""";
		assertThat(said(rigid)).isEmpty();
		assertThat(said(rigid.replace("1.75,0", "1.5,0"))).singleElement().asString().startsWith("feed-off-pitch");
		String floating = rigid.replace("CYCLE84(10,0,4,-28,,0,3,,1.75,0,250,250)", "CYCLE840(10,0,4,-28,,0,4,3,0,,1.75)");
		assertThat(said(floating)).isEmpty();
		assertThat(said(floating.replace("-28", "-37"))).singleElement().asString().startsWith("drill-too-shallow");
	}

	/** Under G331 a tap beside the axis is a live tool's, and no single point. */
	@Test
	void aLiveTapBesideTheAxisTaps() {
		String program = """
				G18 G21 G90 G94
				T5 (DRILL 5.0)
				G17
				S2500 M3
				G0 X40 Z5
				G0 C0
				G1 Z-18 F200
				G0 Z5
				T6 (M6 TAP)
				S500 M3
				G0 X40 Z5
				G0 C0
				G331 Z-13 K1 S500
				G332 Z5 K1
				G0 Z50
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("Z-13 K1", "Z-13 K1.25"))).isNotEmpty().allMatch(finding -> finding.startsWith("feed-off-pitch"));
		assertThat(said(program.replace("Z-13", "Z-17.5"))).singleElement().asString().startsWith("drill-too-shallow");
	}

	/** A code with a speed that no profile knows starts the live tool: which way the main spindle turned before says nothing of it. */
	@Test
	void aLiveToolTurnsByACodeOfItsOwn() {
		String program = """
				G21 G98
				T0303 (DRILL 6.8)
				G97 S900 M4
				G0 X56. Z5. C0
				M83 S2000
				G83 Z-22. F200.
				G80
				T0404 (M8 TAP)
				M83 P400
				S400
				G0 X56. Z5. C0
				G84 Z-14. F500.
				G80
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M83 P400", "M4"))).singleElement().asString().startsWith("spindle-wrong-way M4");
		assertThat(said(program.replace("M83 P400", "M41 M4"))).singleElement().asString().startsWith("spindle-wrong-way M4");
	}

	@Test
	void atAStopThePartMayBeTurnedEndForEnd() {
		String program = """
				G20 G99
				T0303 (5/16 DRILL)
				G97 S1500 M3
				G0 X0 Z.1
				G1 Z-1.35 F.005
				G0 Z2.
				T0404 (3/8-16 TAP)
				G97 S300 M3
				G0 X0 Z.4
				G84 Z-.95 F.0625
				G80
				G0 Z2.
				M0
				T0505 (BORING BAR)
				G97 S300 M3
				G0 X.915 Z.1
				G1 Z-.65 F.004
				X.88
				G0 Z2.
				""";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M0\n", ""))).singleElement().asString().startsWith("drilled-after-threading");
	}

	/** What a drill of no known size has made is as wide as the boring bar leaves it. */
	@Test
	void aBoreInAHoleOfNoKnownSize() {
		String program = """
				G21 G99
				T0101 (DRILL)
				G97 S600 M3
				G0 X0 Z5.
				G1 Z-45. F.15
				G0 Z5.
				T0202 (BORING BAR)
				G0 X45.5 Z2.
				G1 Z-35. F.1
				G0 X44.
				Z5.
				T0303 (THREAD M48X1.5 INSIDE)
				G97 S500 M3
				G0 X45. Z6.
				G92 X47. Z-30. F1.5
				X47.5
				X48.
				G0 Z50.
				""";
		assertThat(said(program)).isNotEmpty().anyMatch(finding -> finding.startsWith("drill-too-small the hole is bored 45.5 mm"));
		assertThat(said(program.replace("X45.5", "X46.5"))).isEmpty();
	}

	private static List<String> said(String program) {
		return Samples.heard(MachineProfile.named("turning").with("G90", "absolute").with("G94", "feed-per-minute"), program + "M30\n");
	}
}
