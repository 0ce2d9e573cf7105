package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** What a lathe has turned, bored and parts off around a thread: shoulders and reliefs, taper bores, the bar behind a part, channels of two tool systems. */
class LatheShapeTest {

	private static final String BOLT = "G21 G99\nT0101 (TURN)\nG96 S180 M3\nG0 X34. Z2.\nG1 Z-40. F.2\nG0 X36. Z2.\nG0 X19.95\nG1 Z-30. F.2\nX34.\nG0 X60. Z60.\n";
	private static final String THREAD = "T0303 (THREAD M20X1.5)\nG97 S600 M3\nG0 X24. Z6.\nG92 X19.4 Z-26. F1.5\nX18.8\nX18.4\nX18.16\nG0 X60. Z60.\n";

	@Test
	void aThreadEndsBeforeTheShoulder() {
		assertThat(said(BOLT + THREAD)).isEmpty();
		assertThat(said(BOLT + THREAD.replace("Z-26.", "Z-33."))).containsExactly("thread-into-shoulder the thread goes on to Z-33, the outside is turned to its diameter as far as Z-30: "
				+ "the point runs 3 mm into the shoulder and breaks; end a pitch before it, Z-28.5, or turn a relief first");
	}

	@Test
	void aReliefBelongsToTheWayOut() {
		String relief = "T0202 (GROOVE 4)\nG97 S600 M3\nG0 X36. Z-32.\nG1 X17. F.06\nG0 X36.\nG0 X60. Z60.\n";
		String neck = BOLT.replace("G1 Z-30. F.2\nX34.\n", "G1 Z-26. F.2\nX17. Z-27.\nZ-30.\nX34.\n");
		assertThat(said(neck + THREAD.replace("Z-26.", "Z-28."))).isEmpty();
		assertThat(said(BOLT + relief + THREAD.replace("Z-26.", "Z-34."))).as("nobody says how wide the groove is").isEmpty();
		assertThat(said(BOLT + relief + THREAD.replace("Z-26.", "Z-38."))).singleElement().asString().startsWith("thread-into-shoulder the thread goes on to Z-38");
		assertThat(said(BOLT + relief.replace("Z-32.", "Z-30.") + THREAD.replace("Z-26.", "Z-32."))).as("a groove in front of the shoulder").singleElement().asString().startsWith("thread-into-shoulder");
	}

	@Test
	void aLeftHandThreadBeginsInTheRelief() {
		String neck = BOLT.replace("G1 Z-30. F.2\nX34.\n", "G1 Z-26. F.2\nX17. Z-27.\nZ-30.\nX34.\n");
		String left = "T0303 (THREAD M20X1.5 LH)\nG97 S600 M3\nG0 X36. Z-28.\nG92 X19.4 Z4. F1.5\nX18.8\nX18.4\nX18.16\nG0 X60. Z60.\n";
		assertThat(said(neck + left)).isEmpty();
		assertThat(said(neck + left.replace("Z-28.", "Z-31."))).singleElement().asString().startsWith("thread-into-shoulder the thread begins at Z-31");
	}

	/** Behind what is turned the bar may have the size of the thread. */
	@Test
	void withoutASignOfMoreWorkBehindItIsOnlyTold() {
		String bar = "G21 G99\nT0101 (TURN)\nG96 S180 M3\nG0 X22. Z0\nG1 X-1. F.1\nG0 X19.95 Z2.\nG1 Z-20. F.2\nG0 X24.\nX60. Z60.\n";
		assertThat(said(bar + THREAD)).isEmpty();
		assertThat(said(bar.replace("G0 X22. Z0", "G0 X38. Z0") + THREAD)).singleElement().asString().startsWith("thread-into-shoulder");
	}

	@Test
	void anUnknownCycleOfAPointIsNotPassedOver() {
		assertThat(said("G21 G99\nT0303 (M20X1.5)\nG97 S500 M3\nG0 X24. Z6.\nG276 X18.16 Z-20. F1.5\nG0 X60. Z60.\n")).singleElement().asString().startsWith("not-followed G276 is not a code this machine profile knows");
		assertThat(said("G21 G99\nT0303 (TURN)\nG97 S500 M3\nG0 X24. Z6.\nG276 X18.16 Z-20. F1.5\nG0 X60. Z60.\n")).isEmpty();
	}

	@Test
	void aThreadingBarIsNoTap() {
		String bar = "G21 G99\nT0303 (GEWINDEBOHRSTANGE M30X2)\nG97 S500 M3\nG0 X26. Z6.\nG76 P010060 Q50 R10\nG76 X30. Z-30. P1083 Q200 F2.\n";
		assertThat(said(bar)).isEmpty();
		assertThat(said(bar.replace("F2.", "F1.5"))).singleElement().asString().startsWith("feed-off-pitch");
	}

	@Test
	void whereTheOutsideWasTurnedElsewhereNobodyKnowsTheShoulder() {
		assertThat(said("G21 G99\nT0101 (FACE)\nG96 S180 M3\nG0 X34. Z0\nG1 X-1. F.2\nG0 X60. Z60.\n" + THREAD.replace("Z-26.", "Z-80."))).isEmpty();
	}

	@Test
	void aMotionOfItsOwnTouchesTheShoulderWithItsFlank() {
		String own = "T0303 (THREAD M20X1.5)\nG97 S600 M3\nG0 X24. Z6.\nX19.2\nG33 Z-30. K1.5\nG0 X24.\nZ6.\nX18.16\nG33 Z-30. K1.5\nG0 X24.\nX60. Z60.\n";
		assertThat(Samples.findings(MachineProfile.named("turning"), BOLT + own + "M30\n")).filteredOn(found -> found.severity() == Severity.WARNING).singleElement()
				.satisfies(found -> assertThat(found.message()).contains("at full depth the point's flank is 0.47 mm ahead of it and runs into the shoulder"));
	}

	@Test
	void theContourOfACycleThatNamesItIsTurned() {
		String shaft = "G18 G90 G95 DIAMON\nT1 D1 ;SCHRUPPSTAHL\nG96 S180 M4\nG0 X52 Z2\nCYCLE95(\"BOLT:BOLT_END\",2,0.1,0.3,,0.25,0.15,0.1,9,,,)\nG0 X100 Z100\nT3 D1 ;GEWINDESTAHL M30X2\nG97 S500 M3\nG0 X34 Z10\n"
				+ "CYCLE97(2,,0,-36,30,30,4,1,1.227,0.05,30,0,8,1,3,1)\nG0 X100 Z100\nM30\nBOLT:\nG1 X0 Z0\nX26\nX30 Z-2\nZ-40\nX48\nBOLT_END:\n";
		assertThat(said(shaft)).isEmpty();
		assertThat(said(shaft.replace("-36,", "-43,"))).singleElement().asString().startsWith("thread-into-shoulder");
	}

	@Test
	void theBoreOfATaperThreadIsBetweenItsMinorDiameters() {
		String pipe = "G20 G99\nT0101 (DRILL 9/16)\nG97 S700 M3\nG0 X0 Z.2\nG1 Z-1.3 F.007\nG0 Z5.\nT0202 (BORING BAR)\nG96 S350 M3\nG0 X.719 Z.1\nG1 Z-1.1 F.006\nG0 X.65\nZ5.\n"
				+ "T0303 (1/2-14 NPT INSIDE)\nG97 S650 M3\nG0 X.68 Z.2\nG76 P010060 Q20 R10\nG76 X.792 Z-.7 R.0281 P571 Q90 F.0714\nG0 Z5.\n";
		assertThat(said(pipe)).isEmpty();
		assertThat(said(pipe.replace("X.719", "X.66"))).singleElement().asString().startsWith("drill-too-small the hole is bored 0.66 in, the smallest minor diameter of 1/2-14 NPT");
		assertThat(said(pipe.replace("X.719", "X.782"))).singleElement().asString().startsWith("drill-too-big the hole is bored 0.782 in, the minor diameter of 1/2-14 NPT at the gauge plane");
		assertThat(said(pipe.replace("X.68 Z.2", "X.75 Z.2"))).singleElement().asString().startsWith("exit-scars-thread");
		assertThat(said(pipe.replace("G0 X.719 Z.1\nG1 Z-1.1", "G0 X.729 Z.1\nG1 Z0\nX.66 Z-1.1"))).as("a cone").isEmpty();
		assertThat(said(pipe.replace("G0 X.719 Z.1\nG1 Z-1.1 F.006", "G0 X.6 Z.1\nG90 X.66 Z-1.1 R.0375 F.006"))).as("a cone by G90").isEmpty();
	}

	@Test
	void aHoleThroughThePartMayEndInTheBar() {
		String nut = "G21 G99\nT0202 (DRILL 6.8)\nG97 S2000 M3\nG0 X0 Z3.\nG83 Z-18. Q4. F.1\nG80\nG0 Z40.\nT0303 (TAP M8 THRU)\nS500\nG0 X0 Z5.\nG84 Z-12. F1.25\nG80\nG0 Z40.\nT0404 (CUT OFF)\nS1500\nG0 X20. Z-13.\nG1 X-.5 F.06\nG0 X30. Z40.\n";
		assertThat(said(nut)).isEmpty();
		assertThat(said(nut.replace("Z-12.", "Z-17.5"))).singleElement().asString().startsWith("drill-too-shallow the part is cut off from the bar later, the tap goes 17.5 mm deep");
		assertThat(said(nut.replace("Z-12.", "Z-7."))).singleElement().asString().startsWith("not-through the tap goes 7 mm deep in a hole that is called through, the part is cut off 13 mm from its face");
		assertThat(said(nut.replace("Z-12.", "Z-14.").replace("Z-13.", "Z-60."))).as("the rest is bored from the other side").isEmpty();
		assertThat(said(nut.replace("Z-12.", "Z-17.5").replace("G1 X-.5 F.06", "G1 X14. F.06"))).as("a groove parts nothing").isEmpty();
	}

	@Test
	void eachChannelIsAProgram() {
		String swiss = "(BUSH)\n$1\nG21 G99\nT0300 (THREAD M10X1)\nG97 S1000 M3\nG0 X14. Z-3.\nG92 X9.6 Z12. F1.\nX9.2\nX8.9\nX8.77\nG0 X20.\n!2L1\nM2\n$2\nG21 G99\nT2100 (DRILL 2.5)\nS2=2000 M23\nG0 X0 Z-1.\nG1 Z12. F.05\nG0 Z-2.\nT2200 (TAP M3)\nS2=600 M23\n"
				+ "G0 X0 Z-3.\nG84 Z7. F.5\nG80\nG0 Z-5.\nM2\n";
		assertThat(said(swiss)).isEmpty();
		assertThat(said(swiss.replace("Z7. F.5", "Z7. F.7"))).singleElement().asString().startsWith("feed-off-pitch");
		String named = swiss.replace("$1\n", "(CHANNEL) $1\n").replace("$2\n", "(CHANNEL) $2\n").replace("M2\n", "");
		assertThat(said(named)).as("a comment before the channel, and no end of the first one").isEqualTo(said(swiss.replace("M2\n", "")));
		assertThat(said(swiss.replace("DRILL 2.5", "DRILL 2.9"))).singleElement().asString().startsWith("drill-too-big");
		assertThat(said(swiss.replace("Z12. F1.", "Z12. F1.25"))).singleElement().asString().startsWith("feed-off-pitch");
	}

	@Test
	void everyStartIsAsDeepAndOnePitchOn() {
		String starts = "G21 G99\nT0303 (M24X6P3)\nG97 S300 M3\nG0 X28. Z12.\nG92 X23.2 Z-30. F6.\nX21.6\nX20.6\nX20.32\nG0 X28. Z15.\nG92 X23.2 Z-30. F6.\nX21.6\nX20.61\nX20.33\n";
		assertThat(said(starts)).isEmpty();
		assertThat(said(starts.replace("Z15.", "Z14."))).singleElement().asString().startsWith("helix-uneven passes from here on begin 1 mm beside");
		assertThat(said(starts.replace("X20.61\nX20.33\n", "X21.2\n"))).singleElement().asString().startsWith("helix-off-size the deepest pass of this start outside goes to diameter 21.2 mm");
	}

	@Test
	void theWayBackOfEachPass() {
		String pass = "G0 X19.4\nG32 W-34. F1.5\nG0 U4.6\nW34.\n";
		String passes = "G21 G99\nT0303 (M20X1.5)\nG97 S500 M3\nG0 X24. Z6.\n" + pass + pass.replace("19.4", "19.") + pass.replace("19.4", "18.7") + pass.replace("19.4", "18.4") + pass.replace("19.4", "18.16");
		assertThat(said(passes)).isEmpty();
		assertThat(said(passes.replace("W34.", "W33."))).as("each pass begins 1 mm before the last one").singleElement().asString().startsWith("helix-uneven");
		assertThat(said(passes.replace("X18.16\nG32 W-34. F1.5\nG0 U4.6\nW34.", "X18.16\nG32 W-34. F1.5\nW34.\nG0 U4.6"))).as("G32 is still in force").singleElement().asString().startsWith("exit-scars-thread");
	}

	@Test
	void theLeadInTheOtherUnit() {
		assertThat(said(THREAD.replace("F1.5", "F.059"))).containsExactly("inch-metric-mixup F0.059 cuts a lead of 0.059 mm, M20x1.5 has 1.500, 25.4 times as much: the value is in inches; F1.5");
	}

	private static List<String> said(String program) {
		MachineProfile turning = MachineProfile.named("turning");
		return Samples.findings(program.contains("DIAMON") ? turning.with("G90", "absolute") : turning, program + (program.contains("M2\n") ? "" : "M30\n")).stream().filter(found -> found.severity() != Severity.INFORMATION)
				.map(found -> found.rule() + " " + found.message()).toList();
	}
}
