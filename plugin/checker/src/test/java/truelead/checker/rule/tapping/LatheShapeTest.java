package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/**
 * What a lathe has turned, bored and parts off around a thread: shoulders and reliefs, taper bores, the bar behind a part, channels of two
 * tool systems.
 */
class LatheShapeTest {

	private static final String BOLT = """
			G21 G99
			T0101 (TURN)
			G96 S180 M3
			G0 X34. Z2.
			G1 Z-40. F.2
			G0 X36. Z2.
			G0 X19.95
			G1 Z-30. F.2
			X34.
			G0 X60. Z60.
			""";
	private static final String THREAD = """
			T0303 (THREAD M20X1.5)
			G97 S600 M3
			G0 X24. Z6.
			G92 X19.4 Z-26. F1.5
			X18.8
			X18.4
			X18.16
			G0 X60. Z60.
			""";

	@Test
	void aThreadEndsBeforeTheShoulder() {
		assertThat(said(BOLT + THREAD)).isEmpty();
		assertThat(said(BOLT + THREAD.replace("Z-26.", "Z-33.")))
				.containsExactly("thread-into-shoulder the thread goes on to Z-33, the outside is turned to its diameter as far as Z-30: "
						+ "the point runs 3 mm into the shoulder and breaks; end a pitch before it, Z-28.5, or turn a relief first");
	}

	@Test
	void aReliefBelongsToTheWayOut() {
		String relief = """
				T0202 (GROOVE 4)
				G97 S600 M3
				G0 X36. Z-32.
				G1 X17. F.06
				G0 X36.
				G0 X60. Z60.
				""";
		String neck = BOLT.replace("G1 Z-30. F.2\nX34.\n", "G1 Z-26. F.2\nX17. Z-27.\nZ-30.\nX34.\n");
		assertThat(said(neck + THREAD.replace("Z-26.", "Z-28."))).isEmpty();
		assertThat(said(BOLT + relief + THREAD.replace("Z-26.", "Z-34."))).as("nobody says how wide the groove is").isEmpty();
		assertThat(said(BOLT + relief + THREAD.replace("Z-26.", "Z-38."))).singleElement().asString()
				.startsWith("thread-into-shoulder the thread goes on to Z-38");
		assertThat(said(BOLT + relief.replace("Z-32.", "Z-30.") + THREAD.replace("Z-26.", "Z-32."))).as("a groove in front of the shoulder")
				.singleElement().asString().startsWith("thread-into-shoulder");
	}

	@Test
	void aLeftHandThreadBeginsInTheRelief() {
		String neck = BOLT.replace("G1 Z-30. F.2\nX34.\n", "G1 Z-26. F.2\nX17. Z-27.\nZ-30.\nX34.\n");
		String left = """
				T0303 (THREAD M20X1.5 LH)
				G97 S600 M3
				G0 X36. Z-28.
				G92 X19.4 Z4. F1.5
				X18.8
				X18.4
				X18.16
				G0 X60. Z60.
				""";
		assertThat(said(neck + left)).isEmpty();
		assertThat(said(neck + left.replace("Z-28.", "Z-31."))).singleElement().asString()
				.startsWith("thread-into-shoulder the thread begins at Z-31");
	}

	/** Behind what is turned the bar may have the size of the thread. */
	@Test
	void withoutASignOfMoreWorkBehindItIsOnlyTold() {
		String bar = """
				G21 G99
				T0101 (TURN)
				G96 S180 M3
				G0 X22. Z0
				G1 X-1. F.1
				G0 X19.95 Z2.
				G1 Z-20. F.2
				G0 X24.
				X60. Z60.
				""";
		assertThat(said(bar + THREAD)).isEmpty();
		assertThat(said(bar.replace("G0 X22. Z0", "G0 X38. Z0") + THREAD)).singleElement().asString().startsWith("thread-into-shoulder");
	}

	@Test
	void anUnknownCycleOfAPointIsNotPassedOver() {
		assertThat(said("G21 G99\nT0303 (M20X1.5)\nG97 S500 M3\nG0 X24. Z6.\nG276 X18.16 Z-20. F1.5\nG0 X60. Z60.\n")).singleElement()
				.asString().startsWith("not-followed G276 is not a code this machine profile knows");
		assertThat(said("G21 G99\nT0303 (TURN)\nG97 S500 M3\nG0 X24. Z6.\nG276 X18.16 Z-20. F1.5\nG0 X60. Z60.\n")).isEmpty();
	}

	@Test
	void aThreadingBarIsNoTap() {
		String bar = """
				G21 G99
				T0303 (GEWINDEBOHRSTANGE M30X2)
				G97 S500 M3
				G0 X26. Z6.
				G76 P010060 Q50 R10
				G76 X30. Z-30. P1083 Q200 F2.
				""";
		assertThat(said(bar)).isEmpty();
		assertThat(said(bar.replace("F2.", "F1.5"))).singleElement().asString().startsWith("feed-off-pitch");
	}

	@Test
	void whereTheOutsideWasTurnedElsewhereNobodyKnowsTheShoulder() {
		assertThat(said("G21 G99\nT0101 (FACE)\nG96 S180 M3\nG0 X34. Z0\nG1 X-1. F.2\nG0 X60. Z60.\n" + THREAD.replace("Z-26.", "Z-80.")))
				.isEmpty();
	}

	@Test
	void aMotionOfItsOwnTouchesTheShoulderWithItsFlank() {
		String own = """
				T0303 (THREAD M20X1.5)
				G97 S600 M3
				G0 X24. Z6.
				X19.2
				G33 Z-30. K1.5
				G0 X24.
				Z6.
				X18.16
				G33 Z-30. K1.5
				G0 X24.
				X60. Z60.
				""";
		assertThat(Samples.findings(MachineProfile.named("turning"), BOLT + own + "M30\n"))
				.filteredOn(found -> found.severity() == Severity.WARNING).singleElement().satisfies(found -> assertThat(found.message())
						.contains("at full depth the point's flank is 0.47 mm ahead of it and runs into the shoulder"));
	}

	@Test
	void theContourOfACycleThatNamesItIsTurned() {
		String shaft = """
				G18 G90 G95 DIAMON
				T1 D1 ;SCHRUPPSTAHL
				G96 S180 M4
				G0 X52 Z2
				CYCLE95("BOLT:BOLT_END",2,0.1,0.3,,0.25,0.15,0.1,9,,,)
				G0 X100 Z100
				T3 D1 ;GEWINDESTAHL M30X2
				G97 S500 M3
				G0 X34 Z10
				CYCLE97(2,,0,-36,30,30,4,1,1.227,0.05,30,0,8,1,3,1)
				G0 X100 Z100
				M30
				BOLT:
				G1 X0 Z0
				X26
				X30 Z-2
				Z-40
				X48
				BOLT_END:
				""";
		assertThat(said(shaft)).isEmpty();
		assertThat(said(shaft.replace("-36,", "-43,"))).singleElement().asString().startsWith("thread-into-shoulder");
	}

	@Test
	void theBoreOfATaperThreadIsBetweenItsMinorDiameters() {
		String pipe = """
				G20 G99
				T0101 (DRILL 9/16)
				G97 S700 M3
				G0 X0 Z.2
				G1 Z-1.3 F.007
				G0 Z5.
				T0202 (BORING BAR)
				G96 S350 M3
				G0 X.719 Z.1
				G1 Z-1.1 F.006
				G0 X.65
				Z5.
				T0303 (1/2-14 NPT INSIDE)
				G97 S650 M3
				G0 X.68 Z.2
				G76 P010060 Q20 R10
				G76 X.792 Z-.7 R.0281 P571 Q90 F.0714
				G0 Z5.
				""";
		assertThat(said(pipe)).isEmpty();
		assertThat(said(pipe.replace("X.719", "X.66"))).singleElement().asString()
				.startsWith("drill-too-small the hole is bored 0.66 in, the smallest minor diameter of 1/2-14 NPT");
		assertThat(said(pipe.replace("X.719", "X.782"))).singleElement().asString()
				.startsWith("drill-too-big the hole is bored 0.782 in, the minor diameter of 1/2-14 NPT at the gauge plane");
		assertThat(said(pipe.replace("X.68 Z.2", "X.75 Z.2"))).singleElement().asString().startsWith("exit-scars-thread");
		assertThat(said(pipe.replace("G0 X.719 Z.1\nG1 Z-1.1", "G0 X.729 Z.1\nG1 Z0\nX.66 Z-1.1"))).as("a cone").isEmpty();
		assertThat(said(pipe.replace("G0 X.719 Z.1\nG1 Z-1.1 F.006", "G0 X.6 Z.1\nG90 X.66 Z-1.1 R.0375 F.006")))
				.as("a cone by G90").isEmpty();
	}

	@Test
	void aHoleThroughThePartMayEndInTheBar() {
		String nut = """
				G21 G99
				T0202 (DRILL 6.8)
				G97 S2000 M3
				G0 X0 Z3.
				G83 Z-18. Q4. F.1
				G80
				G0 Z40.
				T0303 (TAP M8 THRU)
				S500
				G0 X0 Z5.
				G84 Z-12. F1.25
				G80
				G0 Z40.
				T0404 (CUT OFF)
				S1500
				G0 X20. Z-13.
				G1 X-.5 F.06
				G0 X30. Z40.
				""";
		assertThat(said(nut)).isEmpty();
		assertThat(said(nut.replace("Z-12.", "Z-17.5"))).singleElement().asString()
				.startsWith("drill-too-shallow the part is cut off from the bar later, the tap goes 17.5 mm deep");
		assertThat(said(nut.replace("Z-12.", "Z-7."))).singleElement().asString()
				.startsWith("not-through the tap goes 7 mm deep in a hole that is called through, the part is cut off 13 mm from its face");
		assertThat(said(nut.replace("Z-12.", "Z-14.").replace("Z-13.", "Z-60."))).as("the rest is bored from the other side").isEmpty();
		assertThat(said(nut.replace("Z-12.", "Z-17.5").replace("G1 X-.5 F.06", "G1 X14. F.06"))).as("a groove parts nothing").isEmpty();
	}

	@Test
	void eachChannelIsAProgram() {
		String swiss = """
				(BUSH)
				$1
				G21 G99
				T0300 (THREAD M10X1)
				G97 S1000 M3
				G0 X14. Z-3.
				G92 X9.6 Z12. F1.
				X9.2
				X8.9
				X8.77
				G0 X20.
				!2L1
				M2
				$2
				G21 G99
				T2100 (DRILL 2.5)
				S2=2000 M23
				G0 X0 Z-1.
				G1 Z12. F.05
				G0 Z-2.
				T2200 (TAP M3)
				S2=600 M23
				G0 X0 Z-3.
				G84 Z7. F.5
				G80
				G0 Z-5.
				M2
				""";
		assertThat(said(swiss)).isEmpty();
		assertThat(said(swiss.replace("Z7. F.5", "Z7. F.7"))).singleElement().asString().startsWith("feed-off-pitch");
		String named = swiss.replace("$1\n", "(CHANNEL) $1\n").replace("$2\n", "(CHANNEL) $2\n").replace("M2\n", "");
		assertThat(said(named)).as("a comment before the channel, and no end of the first one").isEqualTo(said(swiss.replace("M2\n", "")));
		assertThat(said(swiss.replace("DRILL 2.5", "DRILL 2.9"))).singleElement().asString().startsWith("drill-too-big");
		assertThat(said(swiss.replace("Z12. F1.", "Z12. F1.25"))).singleElement().asString().startsWith("feed-off-pitch");
	}

	@Test
	void everyStartIsAsDeepAndOnePitchOn() {
		String starts = """
				G21 G99
				T0303 (M24X6P3)
				G97 S300 M3
				G0 X28. Z12.
				G92 X23.2 Z-30. F6.
				X21.6
				X20.6
				X20.32
				G0 X28. Z15.
				G92 X23.2 Z-30. F6.
				X21.6
				X20.61
				X20.33
				""";
		assertThat(said(starts)).isEmpty();
		assertThat(said(starts.replace("Z15.", "Z14."))).singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 1 mm beside");
		assertThat(said(starts.replace("X20.61\nX20.33\n", "X21.2\n"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of this start outside goes to diameter 21.2 mm");
	}

	@Test
	void theWayBackOfEachPass() {
		String pass = "G0 X19.4\nG32 W-34. F1.5\nG0 U4.6\nW34.\n";
		String passes = "G21 G99\nT0303 (M20X1.5)\nG97 S500 M3\nG0 X24. Z6.\n" + pass + pass.replace("19.4", "19.")
				+ pass.replace("19.4", "18.7") + pass.replace("19.4", "18.4") + pass.replace("19.4", "18.16");
		assertThat(said(passes)).isEmpty();
		assertThat(said(passes.replace("W34.", "W33."))).as("each pass begins 1 mm before the last one").singleElement().asString()
				.startsWith("helix-uneven");
		assertThat(said(passes.replace("X18.16\nG32 W-34. F1.5\nG0 U4.6\nW34.", "X18.16\nG32 W-34. F1.5\nW34.\nG0 U4.6")))
				.as("G32 is still in force").singleElement().asString().startsWith("exit-scars-thread");
	}

	@Test
	void theLeadInTheOtherUnit() {
		assertThat(said(THREAD.replace("F1.5", "F.059")))
				.containsExactly("inch-metric-mixup F0.059 cuts a lead of 0.059 mm, M20x1.5 has 1.500, 25.4 times as much: the value is in "
						+ "inches; F1.5");
	}

	private static List<String> said(String program) {
		MachineProfile turning = MachineProfile.named("turning");
		return Samples.heard(program.contains("DIAMON") ? turning.with("G90", "absolute") : turning, program + (program.contains("M2\n")
				? "" : "M30\n"));
	}
}
