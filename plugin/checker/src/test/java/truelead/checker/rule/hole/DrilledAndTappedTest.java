package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Severity;

/** Holes that are drilled and tapped, as shops write them, and one slip in them: one finding. */
class DrilledAndTappedTest {

	private static List<String> said(String blocks) {
		return Samples.findings(blocks.split("~")).stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> (f.at().line() + 1) + " " + f.rule() + ": " + f.message()).toList();
	}

	private static List<String> told(String blocks) {
		return Samples.findings(blocks.split("~")).stream().map(f -> f.severity() + " " + f.rule() + ": " + f.message()).toList();
	}

	private static final String PLATE =
			"G21 G90 G17 G40 G80~T1 M6 (SPOT DRILL)~G54 G0 X0 Y0 S1500 M3~G43 H1 Z20.~G81 Z-2. R2. F100~X20.~G80~T2 M6 (DRIL 5.0)~G54 G0 "
			+ "X0 Y0 S2000 M3~G43 H2 Z20.~G83 Z-20. R2. Q4. F200~X20.~G80~"
			+ "T3 M6 (TAP M6)~G54 G0 X0 Y0 S500 M3~G43 H3 Z20.~G84 Z-12. R5. F500~X20.~G80~M30";

	@Test
	void aDrillThatTapsIsToldOnceAndTheTapBehindItFindsItsHole() {
		assertThat(said(PLATE)).isEmpty();
		assertThat(said(PLATE.replace("G83 Z-20. R2. Q4.", "G84 Z-20. R2."))).singleElement().asString()
				.startsWith("11 drill-in-tapping-cycle: T2 taps where nothing else drills and T3 threads M6x1 behind it: it is the drill");
		assertThat(said(PLATE.replace("DRIL 5.0", "DRILL 5.0").replace("G83 Z-20. R2. Q4.", "G84 Z-20. R2."))).singleElement().asString()
				.startsWith("11 drill-in-tapping-cycle: T2 is called a drill");
		assertThat(said(PLATE.replace("DRIL 5.0", "SPECIAL").replace("TAP M6", "M6 GAUGE").replace("G83 Z-20. R2. Q4.", "G84 Z-20. R2.")))
				.noneMatch(f -> f.contains("drill-in-tapping-cycle"));
	}

	@Test
	void theDrillOfTheHolesRunsWithAnotherToolsOffset() {
		assertThat(said(PLATE.replace("H2", "H3"))).singleElement().asString().startsWith("10 length-offset-missing: H3 is not T2's")
				.endsWith("H2");
		assertThat(said(PLATE.replace("G43 H2 ", "G0 "))).singleElement().asString()
				.contains("length-offset-missing: T2 runs with H1, left over");
		// the first tool may be the one that all are measured by
		assertThat(said(PLATE.replace("G43 H1 ", ""))).isEmpty();
		assertThat(said(PLATE.replace("H1 Z", "H9 Z"))).singleElement().asString().contains("length-offset-missing: H9 is not T1's");
	}

	@Test
	void severalTapsRunASubprogramThatNamesTheOffsetOfTheFirstTool() {
		String three =
				"G21 G90 G17~T1 M6 (SPOT DRILL)~G0 X0 Y0 S1500 M3~G43 H1 Z20~G81 Z-2 R2 F100~X20~G80~T2 M6 (DRILL 3.3)~G0 X0 Y0 S2500 "
				+ "M3~G43 H2 Z20~G83 Z-17 R2 Q4 F200~G80~T3 M6 (DRILL 5.0)~G0 X20 Y0 S2000 M3~G43 H3 Z20~G83 Z-20 R2 Q4 F200~G80~"
				+ "T4 M6 (TAP M4)~#1=0 #2=500 #3=350~M98 P100~T5 M6 (TAP M6)~#1=20 #2=400 #3=400~M98 P100~M30~O100~G0 X#1 Y0 S#2 M3~G43 H1 "
				+ "Z20~G84 Z-10 R5 F#3~G80~M99";
		assertThat(said(three)).singleElement().asString().startsWith("27 length-offset-missing: H1 is not T4's").endsWith("H4");
		assertThat(said(three.replace("T1 M6 (SPOT DRILL)~G0 X0 Y0 S1500 M3~G43 H1 Z20~G81 Z-2 R2 F100~X20~G80~", "")
				.replace("T2 M6 (DRILL 3.3)~G0 X0 Y0 S2500 M3~G43 H2", "T2 M6 (DRILL 3.3)~G0 X0 Y0 S2500 M3~G43 H1")))
				.as("one offset for most tools").isEmpty();
	}

	@Test
	void aSingleHoleUnderAnotherWorkOffset() {
		String one = PLATE.replace("X20.~", "").replace("X0 Y0", "X10. Y0");
		assertThat(said(one)).isEmpty();
		assertThat(said(one.replace("G54 G0 X10. Y0 S500", "G55 G0 X10. Y0 S500").replace("DRIL 5", "DRILL 5"))).singleElement().asString()
				.contains("hole-missing").contains("under another work offset");
		// not drilled for it: for a dowel
		assertThat(said(one.replace("G54 G0 X10. Y0 S500", "G55 G0 X10. Y0 S500").replace("DRIL 5", "DRILL 6")
				.replace("SPOT DRILL", "COUNTERSINK"))).isEmpty();
	}

	@Test
	void asManyHolesLeftOutAsThreadedAreAQuestion() {
		String half = PLATE.replace("F500~X20.~", "F500~");
		assertThat(said(half)).isEmpty();
		assertThat(told(half)).contains("INFORMATION hole-skipped: the hole at X20 Y0 is drilled with the 1 that T3 threads, and never "
				+ "threaded: for something else?");
	}

	@Test
	void theRigidCodeBeforeEachCycleOfAToolButOne() {
		String cycle = "G0 X%d Z20.~M29 S500~G84 Z-12. R5. F500~G80~";
		String taps = "G21 G90~T1 M6 (TAP M6)~G0 X0 Y0 S500 M3~G43 H1 Z20.~" + String.format(cycle, 0) + String.format(cycle, 20)
				+ String.format(cycle, 40) + "M30";
		assertThat(said(taps)).isEmpty();
		assertThat(said(taps.replace("X40 Z20.~M29 S500~", "X40 Z20.~"))).singleElement().asString()
				.startsWith("14 rigid-mode-missing: no rigid-tap code is in force, the other cycles of T1 have M29 each");
		// once for all of them: so the machine is set
		assertThat(said(taps.replace("X40 Z20.~M29 S500~", "X40 Z20.~").replace("X20 Z20.~M29 S500~", "X20 Z20.~"))).isEmpty();
	}

	@Test
	void aSynchronisedMoveAwayFromTheHole() {
		String plate =
				"G21 G90~T1 M6 (DRILL 4.2)~G0 X0 Y0 S2000 M3~G43 H1 Z20~G81 Z-18 R2 F200~G80~T2 M6 (TAP M5)~G0 X0 Y0 S400 M3~G43 H2 "
				+ "Z4~G33.1 Z%s K.8~G0 Z20~M30";
		assertThat(said(String.format(plate, "-12"))).isEmpty();
		assertThat(said(String.format(plate, "12"))).singleElement().asString()
				.startsWith("10 plane-heights-wrong: the move goes from Z4 to Z12").endsWith("see the sign of the depth");
	}

	@Test
	void aTapThatComesBackInRapid() {
		String bush =
				"(MACHINE PROFILE: turning)~G18 G21 G99~T0101 (DRILL 6.8)~G97 S1800 M3~G0 X0 Z5~G1 Z-26 F.12~G0 Z5~T0202 (TAP M8)~G97 S300 "
				+ "M3~G0 X0 Z6~G33 Z-18 F1.25~M4~%s~M5~G0 Z50~M30";
		assertThat(said(String.format(bush, "G33 Z6 F1.25"))).isEmpty();
		assertThat(said(String.format(bush, "G0 Z6"))).singleElement().asString()
				.startsWith("13 tap-in-drilling-cycle: T2 is called a tap and comes back in rapid");
	}

	@Test
	void onABackSpindleTheMachineDecidesWhichWayM3Turns() {
		String back =
				"(MACHINE PROFILE: turning)~G18 G21 G99~T0101 (DRILL 5)~G97 S1800 %s~G0 X0 Z-5~G83 Z22 R-2 Q4000 F.12~G80~T0202 (TAP "
				+ "M6)~G97 S300 %s~G0 X0 Z-8~G84 Z14 F1~G80~M30";
		assertThat(said(String.format(back, "M4", "M4"))).isEmpty();
		assertThat(said(String.format(back, "M3", "M3"))).isEmpty();
		assertThat(said(String.format(back, "M3", "M4"))).singleElement().asString().contains("spindle-wrong-way");
	}

	@Test
	void aCycleByNameThatIsLeftOnWhenTheToolGoesUp() {
		String plate =
				"G71 G17 G90~T=\"DRILL_8.5\"~M6~D1 S2000 M3 F300~MCALL CYCLE81(20,0,3,-30)~X0 Y0~X40~MCALL~T=\"TAP_M10\"~M6~D1 S400 "
				+ "M3~MCALL CYCLE84(20,0,5,-20,,0.5,5,,1.5,0,400,400)~X0 Y0~X40~%sG0 Z100~M30";
		assertThat(said(String.format(plate, "MCALL~"))).isEmpty();
		assertThat(said(String.format(plate, ""))).singleElement().asString()
				.startsWith("15 cycle-left-on: CYCLE84 is still on and runs again behind this motion").endsWith("MCALL before it");
	}

	@Test
	void aFrameTurnedByAnExpression() {
		String hub =
				"G71 G17 G90~R1=0~T1 ; DRILL D10.2~M6~S1900 M3 F380 D1~MARK1:~ROT RPL=R1*90~X60 Y20~CYCLE81(50,0,2,-38)~R1=R1+1~IF R1<4 "
				+ "GOTOB MARK1~ROT~" + "R1=0~T2 ; TAP M12~M6~S265 M3 D1~MARK2:~ROT RPL=R1*%d~X60 "
				+ "Y20~CYCLE84(50,0,6,-27,,0,3,,1.75,0,265,265)~R1=R1+1~IF R1<4 GOTOB MARK2~ROT~M30";
		assertThat(said(String.format(hub, 90))).isEmpty();
		assertThat(said(String.format(hub, 60))).singleElement().asString().contains("hole-missing");
	}

	@Test
	void aToolListWithTheNumbersBehind() {
		String plate =
				"(D3.3 DRILL T5)~(M4 TAP T6)~G21 G90~T5 M6~G0 X0 Y0 S3000 M3~G43 H5 Z20.~G81 Z-14. R2. F240~G80~T6 M6~G0 X0 Y0 S500 M3~G43 "
				+ "H6 Z20.~G84 Z-9. R5. F%s~G80~M30";
		assertThat(said(String.format(plate, "350"))).isEmpty();
		assertThat(said(String.format(plate, "400"))).singleElement().asString().contains("feed-off-pitch").contains("M4x0.7 needs 0.700");
		assertThat(said(String.format(plate, "350").replace("D3.3", "D3.7"))).singleElement().asString().contains("drill-too-big");
		assertThat(said(String.format(plate, "350").replace("(M4 TAP T6)", "(DEBURR BEFORE TAP T6)"))).isEmpty();
		assertThat(said(String.format(plate, "350").replace("D3.3 DRILL T5", "3.3 DRILL T5"))).isEmpty();
		assertThat(said(String.format(plate, "350").replace("D3.3 DRILL T5", "3.7 CARBIDE DRILL T5"))).singleElement().asString()
				.contains("drill-too-big");
	}

	/** The centre drill shows the way too; on a bar machine Z grows towards the chuck. */
	@Test
	void aDrillOfALatheThatGoesAwayFromThePartIsToldAtTheDrill() {
		String lathe = "G21 G99 G97~T0404 (CENTRE DRILL)~S1800 M3~G0 X0. Z3.~G1 Z-6. F0.08~G0 Z50.~T0606 (DRILL 8.5)~S1400 M3~G0 X0. Z3.~"
				+ "G83 Z-32. Q6. F0.15~G80~G0 Z50.~T0808 (TAP M10X1.5)~S500 M3~G0 X0. Z6.~G84 Z-22. R4. F1.5~G80~G0 Z50.~M30";
		assertThat(said(lathe)).isEmpty();
		assertThat(said(lathe.replace("G83 Z-32.", "G83 Z32."))).singleElement().asString()
				.startsWith("10 plane-heights-wrong: T6 goes from Z3 to Z32, away from the part, the tap of its hole from Z10 to Z-22: ");
		assertThat(said(lathe.replace("G84 Z-22.", "G84 Z22."))).singleElement().asString().startsWith("16 plane-heights-wrong");
		String second = lathe.replace("~M30", "~M0 (FLIP PART)" + lathe.substring(lathe.indexOf("~T0404")));
		assertThat(said(second)).isEmpty();
		assertThat(said(second.substring(0, second.lastIndexOf("G83 Z-")) + second.substring(second.lastIndexOf("G83 Z-"))
				.replace("G83 Z-", "G83 Z"))).singleElement().asString().startsWith("28 plane-heights-wrong: T6 goes from Z3 to Z32");
		String grows = lathe.replace("Z3.", "Z*3.").replace("Z6.", "Z*6.").replace("Z50.", "Z*50.").replace("Z-", "Z").replace("Z*", "Z-")
				.replace(" R4.", "");
		assertThat(said(grows)).isEmpty();
		assertThat(said(grows.replace("G83 Z32.", "G83 Z-32."))).singleElement().asString()
				.startsWith("10 plane-heights-wrong: T6 goes from Z-3 to Z-32");
	}

	@Test
	void aTapIsOnTheSpindlesAxisBehindAHomeOfAllAxes() {
		assertThat(said("G20 G99~G0 T0505 (.4219 DRILL)~G97 S950 M3~G0 X0. Z.25~G83 Z-1.625 R0. Q.15 F.007~G80~G28 U0. V0. W0. M5~"
				+ "G0 T0707 (1/2-13 TAP)~G97 S250 M3~G0 X0. Z.5~G84 Z-1.1 R0. F.0769~G80~G28 U0. V0. W0.~M30")).isEmpty();
	}

	@Test
	void aDepthCalledOutIsHeldInTheSideOfALathesPartToo() {
		String side = "(6X M6, 12 FULL THREAD)~G21 G99 G97~G98~T0505 (5.0 DRILL)~S2200 M3~G0 X84. Z-45. C0~G87 X40. R-2. F180~G80~G0 X200.~"
				+ "T0606 (M6 TAP)~S500 M3~G0 X86. Z-45. C0~G88 X48. R-2. F500~G80~G0 X200.~M30";
		assertThat(said(side)).noneMatch(line -> line.contains("thread-too-short"));
		assertThat(said(side.replace("X48.", "X68."))).anyMatch(line -> line.startsWith("13 thread-too-short"));
	}

	@Test
	void theOtherEndOnASecondSpindleIsDrilledTheOtherWay() {
		String ends = "G21 G99 G97~T0606 (DRILL 10.2)~S800 M3~G0 X0 Z3.~G83 Z-40. Q8. F.15~G80~G0 Z50.~T0808 (TAP M12)~S250~G0 X0 Z8.~"
				+ "G84 Z-25. F1.75~G80~G0 Z50.~M36 (PICK OFF)~T1111 (DRILL 10.2 SUB)~S800 M4~G0 X0 Z-3.~G83 Z24. Q8. F.15~G80~G0 Z-5.~"
				+ "T1212 (TAP M12 SUB)~S250~G0 X0 Z-8.~G84 Z14. F1.75~G80~G0 Z-50.~M30";
		assertThat(said(ends)).isEmpty();
		assertThat(said(ends.replace("F1.75~G80~G0 Z-50.", "F1.5~G80~G0 Z-50."))).singleElement().asString().contains("feed-off-pitch");
	}
}
