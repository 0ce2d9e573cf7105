package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static truelead.checker.Samples.tapping;
import static truelead.checker.Samples.work;

import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.job.FactSource;
import truelead.checker.job.Job;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.profile.MachineProfile;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping.Method;

class TappingsTest {

	@Test
	void drilledAndTappedM6() {
		Work work = work("G21 G17 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50. M8", "G81 Z-20. R2. F200.", "X30.",
				"G80", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z50. M8", "G84 Z-12. R3. F520.", "X30.", "G80", "M30");
		Tapping tapping = work.tappings().get(0);
		assertThat(work.operations()).hasSize(1);
		assertThat(tapping.method()).isEqualTo(Method.CYCLE);
		assertThat(tapping.tool().name()).isEqualTo("T2");
		assertThat(tapping.strokes()).hasSize(2);
		TapStroke stroke = tapping.strokes().get(0);
		assertThat(stroke.travel()).isEqualTo(15);
		assertThat(stroke.feed().value()).isEqualTo(520);
		assertThat(stroke.speed().value()).isEqualTo(520);
		assertThat(stroke.turning()).isEqualTo(SpindleTurn.CLOCKWISE);
		assertThat(stroke.hole().madeBefore(stroke.order())).isTrue();
		assertThat(stroke.staleFeed()).isFalse();
		assertThat(tapping.wanted().thread().orElseThrow().value().designation()).isEqualTo("M6x1");
		assertThat(tapping.wanted().thread().orElseThrow().source()).isEqualTo(FactSource.CALLOUT);
		assertThat(tapping.wanted().surface().value()).isZero();
		assertThat(tapping.wanted().surface().source()).isEqualTo(FactSource.DEFAULT);
	}

	/**
	 * A row of eight holes, of which the third is drilled deeper and the sixth not at all: three kinds beside the first stroke, whose block
	 * starts the cycle.
	 */
	@Test
	void aRowIsJudgedByItsTypicalStrokes() {
		Tapping tapping = tapping("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G43 H1 Z50.", "G81 X10. Y0. Z-18. R2. F200.", "X20.", "X40.",
				"X50.", "X70.", "X80.", "X30. Z-22.", "G80", "T2 M6 (M6 TAP)", "S500 M3", "G43 H2 Z50.", "G84 X10. Y0. Z-12. R4. F500.",
				"X20.", "X30.", "X40.", "X50.", "X60.", "X70.", "X80.", "G80", "M30");
		assertThat(tapping.strokes()).extracting(stroke -> stroke.place().u()).containsExactly(10.0, 20.0, 30.0, 40.0, 50.0,
				60.0, 70.0, 80.0);
		assertThat(tapping.strokes().typical()).extracting(stroke -> stroke.place().u()).containsExactly(10.0, 20.0, 30.0, 60.0);
		assertThat(tapping.strokes().where(stroke -> stroke.hole().made() && !stroke.positioned()))
				.extracting(stroke -> stroke.block().line()).containsExactly(16, 17, 18, 19, 21, 22);
		assertThat(tapping.strokes().count(1)).isEqualTo(5);
		assertThat(tapping.holes()).hasSize(8);
	}

	@Test
	void aFeedOfTheDrillIsStale() {
		Tapping tapping = tapping("G21 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.", "G81 Z-20. R2. F200.", "G80",
				"T2 M6 (M6 TAP)", "G0 X10. Y10. S520 M3", "G43 H2 Z50.", "G84 Z-12. R3.", "G80", "M30");
		assertThat(tapping.strokes().get(0).staleFeed()).isTrue();
	}

	@Test
	void tapInADrillingCycle() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6 TAP)", "G0 X10. Y10. S520 M3", "G43 H2 Z50.", "G81 Z-12. R3. F520.", "G80", "M30");
		assertThat(tapping.method()).isEqualTo(Method.DRILLING_CYCLE);
	}

	@Test
	void drillInATappingCycle() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (5.0 DRILL)", "G0 X10. Y10. S520 M3", "G43 H2 Z50.", "G84 Z-12. R3. F520.",
				"G80", "M30");
		assertThat(tapping.method()).isEqualTo(Method.WRONG_TOOL);
	}

	@Test
	void synchronisedInReversalSynchronisedOut() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z5.", "G33 Z-12. K1.", "M4",
				"G33 Z5. K1.", "M3", "G0 Z50.", "M30");
		assertThat(tapping.method()).isEqualTo(Method.SYNCHRONISED);
		assertThat(tapping.strokes()).singleElement().satisfies(s -> {
			assertThat(s.lead().value()).isEqualTo(1);
			assertThat(s.start()).isEqualTo(5);
			assertThat(s.bottom()).isEqualTo(-12);
			assertThat(s.turning()).isEqualTo(SpindleTurn.CLOCKWISE);
			assertThat(s.turningOut()).isEqualTo(SpindleTurn.COUNTERCLOCKWISE);
		});
	}

	@Test
	void rigidTappingInOneBlock() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z5.", "G33.1 Z-12. K1.", "X30.",
				"G33.1 Z-12. K1.", "G0 Z50.", "M30");
		assertThat(tapping.method()).isEqualTo(Method.SYNCHRONISED_BLOCK);
		assertThat(tapping.strokes()).hasSize(2);
	}

	@Test
	void fedInAndOutWithTheSpindleReversed() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z5.", "G1 Z-12. F520.", "M4", "G1 Z5.",
				"M3", "G0 Z50.", "M30");
		assertThat(tapping.method()).isEqualTo(Method.FEED);
		assertThat(tapping.strokes().get(0).turningOut()).isEqualTo(SpindleTurn.COUNTERCLOCKWISE);
	}

	@Test
	void aCycleLeftOnRunsAgainUnderTheNextTool() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z5.", "G84 Z-12. R3. F520.", "X30.",
				"T3 M6", "X50. Y50.", "G80", "M30");
		assertThat(tapping.strokes()).hasSize(2);
		assertThat(tapping.strays()).singleElement().satisfies(s -> assertThat(s.tool().name()).isEqualTo("T3"));
		assertThat(tapping.leftOn()).extracting(Tapping.LeftOn::met).contains(Tapping.Met.TOOL_CHANGE);
	}

	@Test
	void onTheCentreLineOfALathe() {
		Work work = Samples.work(MachineProfile.named("turning"), Job.EMPTY, "G21", "T0101 (DRILL 8.5)", "G97 S800 M3", "G0 X0 Z5.",
				"G1 Z-30. F.15", "G0 Z5.", "X100. Z100.", "T0202 (M10X1.5 TAP)", "G97 S300 M3", "G0 X0 Z5.", "G32 Z-20. F1.5", "M4",
				"G32 Z5. F1.5", "G0 X100. Z100.", "M30");
		Tapping tapping = work.tappings().get(0);
		assertThat(tapping.strokes().get(0).hole().made()).isTrue();
		assertThat(tapping.strokes().get(0).lead().value()).isEqualTo(1.5);
		assertThat(tapping.wanted().thread().orElseThrow().value().designation()).isEqualTo("M10x1.5");
	}

	@Test
	void drilledAndTappedByCyclesOnALathe() {
		Work work = Samples.work(MachineProfile.named("turning"), Job.EMPTY, "G21", "T0101 (DRILL 8.5)", "G97 S800 M3", "G0 X0 Z5.",
				"G83 Z-30. R2. Q5. F.15", "G80", "G0 X100. Z100.", "T0202 (M10X1.5 TAP)", "G97 S300 M3", "G0 X0 Z5.", "G84 Z-20. R3. F1.5",
				"G80", "G0 X100. Z100.", "M30");
		TapStroke stroke = work.tappings().get(0).strokes().get(0);
		assertThat(stroke.place().known()).isTrue();
		assertThat(stroke.hole().madeBefore(stroke.order())).isTrue();
		assertThat(stroke.hole().cuts().get(0).shoulder()).isCloseTo(-30 + 4.25 / Math.tan(Math.toRadians(59)), within(1e-6));
	}

	@Test
	void drilledByMovesAndTappedByACycleOnALathe() {
		Work work = Samples.work(MachineProfile.named("turning"), Job.EMPTY, "G21", "T0101 (DRILL 8.5)", "G97 S800 M3", "G0 X0 Z5.",
				"G1 Z-30. F.15", "G0 Z5.", "G0 X100. Z100.", "T0202 (M10X1.5 TAP)", "G97 S300 M3", "G0 X0 Z5.", "G84 Z-20. R3. F1.5", "G80",
				"G0 X100. Z100.", "M30");
		TapStroke stroke = work.tappings().get(0).strokes().get(0);
		assertThat(stroke.hole().madeBefore(stroke.order())).isTrue();
	}

	@Test
	void fedWithAFloatingHolderUnderG63() {
		MachineProfile profile = MachineProfile.generic().with("G63", "floating-tap");
		Work work = Samples.work(profile, Job.EMPTY, "G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z5.",
				"G63 Z-12. F520.", "G63 Z5. M4", "G0 Z50.", "M30");
		assertThat(work.tappings()).singleElement().satisfies(t -> {
			assertThat(t.method()).isEqualTo(Method.FEED);
			assertThat(t.strokes().get(0).modal().overridesLocked()).isTrue();
		});
	}

	@Test
	void aHoleSkippedByBlockDeleteIsStillInThePattern() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z5.", "G84 Z-12. R3. F520.", "X20.",
				"/Y30.", "G80", "M30");
		assertThat(tapping.strokes()).hasSize(3);
		assertThat(tapping.strokes().get(2).block().skippable()).isTrue();
	}

	@Test
	void aTapTornOutInRapid() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S520 M3", "G43 H2 Z5.", "G1 Z-12. F520.", "G0 Z5.",
				"X50.", "M30");
		assertThat(tapping.method()).isEqualTo(Method.DRILLING_CYCLE);
	}

	@Test
	void aSpeedThatIsNotKnownIsSaid() {
		Tapping tapping = tapping("G21 G90", "T2 M6 (M6X1 TAP)", "G54 G0 X10. Y10. S#100 M3", "G43 H2 Z5.", "G84 Z-12. R3. F520.",
				"G80", "M30");
		assertThat(tapping.notEvaluated()).singleElement().satisfies(n -> assertThat(n.why().words()).startsWith("the speed is not known"));
	}

	@Test
	void aThreadCutWithASinglePointIsNoTapping() {
		Work work = Samples.work(MachineProfile.named("turning"), Job.EMPTY, "G21", "T0101 (THREAD TOOL)", "G97 S800 M3", "G0 X30. Z5.",
				"X29.", "G32 Z-30. F1.5", "G0 X35.", "Z5.", "M30");
		assertThat(work.operations()).isEmpty();
	}

	@Test
	void feedSpeedAndDrillImplyTheThread() {
		Tapping tapping = tapping("G21 G90", "T1 M6 (DRILL 6.8)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.", "G81 Z-20. R2. F200.", "G80",
				"T2 M6", "G0 X10. Y10. S400 M3", "G43 H2 Z50.", "G84 Z-12. R3. F500.", "G80", "M30");
		assertThat(tapping.wanted().named()).isEmpty();
		assertThat(tapping.wanted().thread().orElseThrow().source()).isEqualTo(FactSource.IMPLIED);
		assertThat(tapping.wanted().thread().orElseThrow().value().designation()).isEqualTo("M8x1.25");
		assertThat(Math.abs(tapping.wanted().surface().value())).isCloseTo(0, within(1e-9));
	}
}
