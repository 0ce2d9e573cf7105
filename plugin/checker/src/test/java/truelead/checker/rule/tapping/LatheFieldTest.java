package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** What lathe programs of many hands do around a thread: holders that float, live tools, cycles called by name, parts turned end for end. */
class LatheFieldTest {

	@Test
	void aTapThatIsFedInAHolderThatFloats() {
		String program = "G21 G99\nT0101 (DRILL 6.8)\nG97 S1300 M3\nG0 X0 Z3.\nG1 Z-24. F.12\nG0 Z50.\nT0202 (M8 TAP, FLOATING HOLDER)\nG97 S250 M3\nG0 X0 Z6.\nG1 Z-15. F1.2\nM5\nM4\nG1 Z6. F1.3\nM5\nG0 Z50.\n";
		assertThat(said(program)).as("fed a little less in and a little more out").isEmpty();
		assertThat(said(program.replace("F1.3", "F2."))).singleElement().asString().startsWith("override-open");
		assertThat(said(program.replace("M4\n", ""))).singleElement().asString().startsWith("spindle-wrong-way");
	}

	/** G63 says by itself that a tap is fed, whatever the tool is called. */
	@Test
	void aToolWithoutANameUnderG63Taps() {
		String program = "G18 G21 G95 G90\nT3 D1 ;BOHRER 6.8\nG97 S1500 M3\nG0 X0 Z2\nG1 Z-22 F0.12\nG0 Z100\nT4 D1 ;M8\nG97 S400 M3\nG0 X0 Z5\nG63 Z-15 F1.25\nM5\nM4\nG63 Z5 F1.25\nM5\nG0 Z100\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M5\nM4\n", "M5\n"))).singleElement().asString().startsWith("spindle-wrong-way the tap comes out with the spindle stopped by M5");
		assertThat(said(program.replace("Z-15", "Z-22"))).singleElement().asString().startsWith("drill-too-shallow");
	}

	@Test
	void cyclesByNameWorkAlongZInThePlaneOfLathes() {
		String rigid = "G18 G21 G90 G95\nT5 (DRILL 10.2)\nG97 S900 M3\nG0 X0 Z10\nG1 Z-38 F.15\nG0 Z10\nT6 (M12 TAP)\nG97 S250 M3\nG0 X0 Z10\nCYCLE84(10,0,4,-28,,0,3,,1.75,0,250,250)\nG0 X200 Z200\n";
		assertThat(said(rigid)).isEmpty();
		assertThat(said(rigid.replace("1.75,0", "1.5,0"))).singleElement().asString().startsWith("feed-off-pitch");
		String floating = rigid.replace("CYCLE84(10,0,4,-28,,0,3,,1.75,0,250,250)", "CYCLE840(10,0,4,-28,,0,4,3,0,,1.75)");
		assertThat(said(floating)).isEmpty();
		assertThat(said(floating.replace("-28", "-37"))).singleElement().asString().startsWith("drill-too-shallow");
	}

	/** Under G331 a tap beside the axis is a live tool's, and no single point. */
	@Test
	void aLiveTapBesideTheAxisTaps() {
		String program = "G18 G21 G90 G94\nT5 (DRILL 5.0)\nG17\nS2500 M3\nG0 X40 Z5\nG0 C0\nG1 Z-18 F200\nG0 Z5\nT6 (M6 TAP)\nS500 M3\nG0 X40 Z5\nG0 C0\nG331 Z-13 K1 S500\nG332 Z5 K1\nG0 Z50\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("Z-13 K1", "Z-13 K1.25"))).isNotEmpty().allMatch(finding -> finding.startsWith("feed-off-pitch"));
		assertThat(said(program.replace("Z-13", "Z-17.5"))).singleElement().asString().startsWith("drill-too-shallow");
	}

	/** A code with a speed that no profile knows starts the live tool: which way the main spindle turned before says nothing of it. */
	@Test
	void aLiveToolTurnsByACodeOfItsOwn() {
		String program = "G21 G98\nT0303 (DRILL 6.8)\nG97 S900 M4\nG0 X56. Z5. C0\nM83 S2000\nG83 Z-22. F200.\nG80\nT0404 (M8 TAP)\nM83 P400\nS400\nG0 X56. Z5. C0\nG84 Z-14. F500.\nG80\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M83 P400", "M4"))).singleElement().asString().startsWith("spindle-wrong-way M4");
		assertThat(said(program.replace("M83 P400", "M41 M4"))).singleElement().asString().startsWith("spindle-wrong-way M4");
	}

	@Test
	void atAStopThePartMayBeTurnedEndForEnd() {
		String program = "G20 G99\nT0303 (5/16 DRILL)\nG97 S1500 M3\nG0 X0 Z.1\nG1 Z-1.35 F.005\nG0 Z2.\nT0404 (3/8-16 TAP)\nG97 S300 M3\nG0 X0 Z.4\nG84 Z-.95 F.0625\nG80\nG0 Z2.\nM0\nT0505 (BORING BAR)\nG97 S300 M3\nG0 X.915 Z.1\nG1 Z-.65 F.004\nX.88\nG0 Z2.\n";
		assertThat(said(program)).isEmpty();
		assertThat(said(program.replace("M0\n", ""))).singleElement().asString().startsWith("drilled-after-threading");
	}

	/** What a drill of no known size has made is as wide as the boring bar leaves it. */
	@Test
	void aBoreInAHoleOfNoKnownSize() {
		String program = "G21 G99\nT0101 (DRILL)\nG97 S600 M3\nG0 X0 Z5.\nG1 Z-45. F.15\nG0 Z5.\nT0202 (BORING BAR)\nG0 X45.5 Z2.\nG1 Z-35. F.1\nG0 X44.\nZ5.\nT0303 (THREAD M48X1.5 INSIDE)\nG97 S500 M3\nG0 X45. Z6.\nG92 X47. Z-30. F1.5\nX47.5\nX48.\nG0 Z50.\n";
		assertThat(said(program)).isNotEmpty().anyMatch(finding -> finding.startsWith("drill-too-small the hole is bored 45.5 mm"));
		assertThat(said(program.replace("X45.5", "X46.5"))).isEmpty();
	}

	private static List<String> said(String program) {
		return Samples.findings(MachineProfile.named("turning").with("G90", "absolute").with("G94", "feed-per-minute"), program + "M30\n").stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION).map(finding -> finding.rule() + " " + finding.message()).toList();
	}
}
