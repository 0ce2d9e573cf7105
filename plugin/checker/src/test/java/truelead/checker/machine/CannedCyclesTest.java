package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Plane;

class CannedCyclesTest {

	private static final String START = "G21 G17 G90 G54 G0 X0 Y0 Z50.";

	@Test
	void aTapGoesFromTheRLevelToItsDepth() {
		Followed run = Followed.milling(START, "S500 M3", "G98 G84 X10. Y20. Z-15. R5. F625.", "G80");
		Step.Stroke stroke = run.stroke(0);
		assertThat(run.strokes()).hasSize(1);
		assertThat(Followed.text(stroke.place())).isEqualTo("10,20,5");
		assertThat(stroke.bottom()).isEqualTo(-15);
		assertThat(stroke.initial()).isEqualTo(50);
		assertThat(stroke.cycle().kind()).isEqualTo(Cycle.Kind.TAP);
		assertThat(stroke.cycle().code()).isEqualTo(840);
		assertThat(stroke.modal().feed().value()).isEqualTo(625);
		assertThat(stroke.modal().spindle()).isEqualTo(SpindleTurn.CLOCKWISE);
		assertThat(stroke.positioned()).isTrue();
	}

	@Test
	void furtherHolesAreXyBlocks() {
		Followed run = Followed.milling(START, "G99 G81 X10. Y0 Z-15. R5. F100.", "X20.", "Y10.", "G98 X100.", "G80", "G0 X0");
		assertThat(run.places()).containsExactly("10,0", "20,0", "20,10", "100,10");
		assertThat(run.stroke(1).positioned()).isFalse();
		assertThat(run.stroke(1).cycle()).isSameAs(run.stroke(0).cycle());
		assertThat(run.moves().get(1).from().z()).isEqualTo(50);
	}

	@Test
	void theReturnLevelIsRUnderG99() {
		Followed run = Followed.milling(START, "G99 G81 X10. Y0 Z-15. R5. F100.", "G0 X0");
		assertThat(run.moves().get(1).from().z()).isEqualTo(5);
	}

	@Test
	void aChangedWordHoldsFromItsBlockOn() {
		Followed run = Followed.milling(START, "G81 X10. Y0 Z-15. R5. F100.", "X20. Z-8.", "X30. R3.");
		assertThat(run.strokes()).extracting(Step.Stroke::bottom).containsExactly(-15.0, -8.0, -8.0);
		assertThat(run.strokes()).extracting(Step.Stroke::rLevel).containsExactly(5.0, 5.0, 3.0);
	}

	@Test
	void incrementalCyclesCountRFromTheInitialLevelAndDepthFromR() {
		Followed run = Followed.milling(START, "G91 G99 G81 X10. Y5. Z-20. R-45. F100. L3");
		assertThat(run.places()).containsExactly("10,5", "20,10", "30,15");
		assertThat(run.stroke(2).rLevel()).isEqualTo(5);
		assertThat(run.stroke(2).bottom()).isEqualTo(-15);
		assertThat(run.strokes()).extracting(Step.Stroke::repeat).containsExactly(1, 2, 3);
	}

	@Test
	void repeatsByKDoTheSame() {
		assertThat(Followed.milling(START, "G91 G81 X10. Z-20. R-45. K2").places()).containsExactly("10,0", "20,0");
	}

	@Test
	void aCountOfZeroOnlySetsTheCycleUp() {
		Followed run = Followed.milling(START, "G83 X99. Z-15. R5. Q3. F100. L0", "X10. Y0", "X20.", "G80");
		assertThat(run.places()).containsExactly("10,0", "20,0");
		assertThat(run.stroke(0).cycle().kind()).isEqualTo(Cycle.Kind.PECK_DRILL);
	}

	@Test
	void anAxisWordBehindG80StartsNoCycle() {
		Followed run = Followed.milling(START, "G84 X10. Y0 Z-15. R5. F100.", "G80", "X20.");
		assertThat(run.strokes()).hasSize(1);
		assertThat(run.events(Step.EventKind.CYCLE_CANCELLED)).hasSize(1);
	}

	@Test
	void motionWordsEndACycleToo() {
		Followed run = Followed.milling(START, "G84 X10. Y0 Z-15. R5. F100.", "G0 Z50.", "X20.");
		assertThat(run.strokes()).hasSize(1);
		assertThat(run.ends()).containsExactly("0,0,50", "10,0,50", "20,0,50");
	}

	@Test
	void aCycleLeftOnRunsAgainAtTheNextTool() {
		Followed run = Followed.milling(START, "G84 X10. Y0 Z-15. R5. F100.", "T2 M6", "X20. Y20.");
		assertThat(run.strokes()).hasSize(2);
		assertThat(run.stroke(1).modal().tool().value()).isEqualTo(2);
	}

	@Test
	void cyclesInTheOtherPlanesDrillAlongTheirAxis() {
		Step.Stroke alongY = Followed.milling(START, "G18 G81 X10. Z-5. Y-15. R5. F100.").stroke(0);
		assertThat(Followed.text(alongY.place())).isEqualTo("10,5,-5");
		assertThat(alongY.bottom()).isEqualTo(-15);
		Step.Stroke alongX = Followed.milling(START, "G19 G84 Y10. Z-5. X-15. R5. F100.").stroke(0);
		assertThat(Followed.text(alongX.place())).isEqualTo("5,10,-5");
	}

	@Test
	void levelsAreVoidWhereThePlaneChangesUnderACycle() {
		Followed run = Followed.milling(START, "S300 M3", "G84 X10. Y5. Z-15. R5. F100.", "G18", "X20.", "G80");
		assertThat(run.stroke(1).bottom()).isNaN();
		assertThat(run.lost()).containsExactly("the tapping cycle has no depth: no block since its G code says one");
	}

	@Test
	void leftHandTapsAreG74InMilling() {
		assertThat(Followed.milling(START, "G74 X0 Z-10. R2. F100.").stroke(0).cycle().kind()).isEqualTo(Cycle.Kind.TAP_LEFT);
		assertThat(Followed.milling(START, "G84.3 X0 Z-10. R2. F100.").stroke(0).cycle().kind()).isEqualTo(Cycle.Kind.TAP_LEFT);
	}

	@Test
	void rigidTappingEndsWithTheCycle() {
		Followed run = Followed.milling(START, "M29 S300", "G84 X0 Y0 Z-10. R2. F300.", "G80", "G0 X0");
		assertThat(run.stroke(0).modal().rigid().get().value()).isEqualTo(300);
		assertThat(run.stroke(0).modal().rigidWord().get().written()).isEqualTo("M29");
		assertThat(run.state().rigid()).isEmpty();
		assertThat(run.events(Step.EventKind.RIGID_OFF)).hasSize(1);
	}

	@Test
	void rigidTappingOutlastsThePositioningMove() {
		Followed run = Followed.milling(START, "M29 S300", "G0 X5.", "G84 X0 Y0 Z-10. R2. F300.");
		assertThat(run.stroke(0).modal().rigid()).isPresent();
	}

	@Test
	void theRPlaneMayBeCalledEr() {
		assertThat(Followed.milling(START, "S500 M3", "G84 X10 Y20 Z-15 ER5 F625", "G80").stroke(0).place().z()).isEqualTo(5);
		assertThat(Followed.milling(START, "S500 M3", "G81 X10 Y20 Z-15 ER-2.5 F100", "G80").stroke(0).place().z()).isEqualTo(-2.5);
	}

	@Test
	void aLeadInKIsNoCount() {
		Step.Stroke stroke = Followed.milling(START, "S500 M3 F100", "G84 X10 Y20 Z-15 R5 K1.25", "X30", "G80").stroke(1);
		assertThat(stroke.modal().feed().value()).isEqualTo(1.25);
		assertThat(stroke.modal().feedMode()).isEqualTo(FeedMode.PER_REVOLUTION);
		assertThat(Followed.milling(START, "S500 M3 F100", "G84 X10 Y20 Z-15 ER5 K2", "G80").strokes()).singleElement()
				.satisfies(one -> assertThat(one.modal().feed().value()).isEqualTo(2));
		assertThat(Followed.milling(START, "S500 M3 F500", "G91 G84 X10 Z-15 R-45 K2", "G80").strokes()).as("a count").hasSize(2);
	}

	@Test
	void aCycleThatIsCalledAtItsPlaces() {
		Followed run = Followed.milling("G21 G17 G90 G0 X0 Y0 Z50", "S500 M3", "G84 X0.5 Y5 Z-15 F625", "G79 X10 Y20 Z2", "G79 X30",
				"G0 Z80", "G79 X50 Y0", "M30");
		assertThat(run.places()).containsExactly("10,20", "30,20", "50,0");
		assertThat(run.stroke(0).rLevel()).isEqualTo(7);
		assertThat(run.stroke(2).bottom()).isEqualTo(-13);
		assertThat(run.stroke(0).cycle().kind()).isEqualTo(Cycle.Kind.TAP);
	}

	/** G79 typed over the return word of a cycle's block defines it, and the cycle that was in force is no more. */
	@Test
	void aCallInTheBlockOfADefinitionDefines() {
		Followed run = Followed.milling("G21 G17 G90 G0 X0 Y0 Z50", "S500 M3", "G81 X10 Y0 Z-9 F100", "G79 G84 X10 Y0 Z-15 F625", "X30",
				"G79 X50", "M30");
		assertThat(run.strokes()).singleElement().satisfies(stroke -> assertThat(stroke.cycle().code()).isEqualTo(840));
	}

	@Test
	void aTappingCycleWithoutDepthIsSaid() {
		assertThat(Followed.milling(START, "G84 X10. R5. F100.").lost()).containsExactly(
				"the tapping cycle has no depth: no block since its G code says one");
	}

	@Test
	void rotaryStepsMakeOtherHoles() {
		Followed run = Followed.milling(START, "G81 X10. Y0 Z-15. R5. F100.", "A90.", "A180.");
		assertThat(run.strokes()).extracting(stroke -> stroke.modal().rotary().a()).containsExactly(0.0, 90.0, 180.0);
	}

	@Test
	void aBlockUnderBlockDeleteKeepsThatFact() {
		Followed run = Followed.milling(START, "G81 X10. Y0 Z-15. R5. F100.", "/X20.", "X30.");
		assertThat(run.strokes()).extracting(stroke -> stroke.block().skippable()).containsExactly(false, true, false);
	}

	@Test
	void aSwitchedOnBlockDeleteLeavesTheBlockOut() {
		Followed run = Followed.on(MachineProfile.generic().with("block-delete", "2"), START, "G81 X10. Y0 Z-15. R5. F100.",
				"/2X20.", "/X30.");
		assertThat(run.places()).containsExactly("10,0", "30,0");
	}

	@Test
	void theFeedOfTheCycleBlockIsAWordOfTheCycle() {
		Cycle cycle = Followed.milling(START, "G84X10.Z-15.R5.F100.P500").stroke(0).cycle();
		assertThat(cycle.word('F').get().word().get().written()).isEqualTo("F100.");
		assertThat(cycle.word('P').get().value()).isEqualTo(500);
	}

	@Test
	void turningTapsOnTheFaceAlongZ() {
		Followed run = Followed.on(MachineProfile.named("turning"), "G0 X0 Z5.", "T0505", "G97 S300 M3", "G84 Z-20. R-3. F1.5", "G80");
		Step.Stroke stroke = run.stroke(0);
		assertThat(stroke.modal().plane()).isEqualTo(Plane.XY);
		assertThat(stroke.rLevel()).isEqualTo(2);
		assertThat(stroke.bottom()).isEqualTo(-20);
		assertThat(stroke.modal().feedMode()).isEqualTo(FeedMode.PER_REVOLUTION);
		assertThat(stroke.modal().tool().value()).isEqualTo(5);
		assertThat(run.lost()).isEmpty();
	}

	@Test
	void theNumberOfACalledPatternIsNoDwell() {
		Followed run = Followed.milling("O1", START, "G84 X0 Z-10. R2. F100. L0", "M98 P100 L1", "G80", "M30", "O100", "X10.", "M99");
		assertThat(run.stroke(0).cycle().word('P')).isEmpty();
		assertThat(run.places()).containsExactly("10,0");
	}

	/** Of these the deep hole cycle has in I how deep a peck goes, and in J how many there are (from memory). */
	@Test
	void pecksByDepthAndNumber() {
		Step.Stroke drill = Followed.milling("G0 X10 Y10 Z50", "G83 G99 Z2 I-5 J4 F250", "G80").stroke(0);
		assertThat(drill.rLevel()).isEqualTo(2);
		assertThat(drill.bottom()).isEqualTo(-18);
	}

	/** Some controls have the R plane in Z and the bottom in I; I above zero is the first peck of others. */
	@Test
	void thePlaneInTheAxisWordAndTheBottomInI() {
		Step.Stroke tap = Followed.milling("G0 X0 Y0 Z50", "G84 G98 X20 Y20 Z5 I-12 K0 R0 F500", "X40", "G80").stroke(1);
		assertThat(List.of(tap.initial(), tap.rLevel(), tap.bottom())).containsExactly(50.0, 5.0, -12.0);
		Step.Stroke rigid = Followed.milling("G0 X0 Y0 Z50", "G84 G98 X20 Y20 Z5 I-12 K0 R1 F500", "X40", "G80").stroke(1);
		assertThat(List.of(rigid.rLevel(), rigid.bottom())).containsExactly(5.0, -12.0);
		Step.Stroke pecked = Followed.milling("G0 X0 Y0 Z50", "G83 X20 Y20 Z-20 R2 I5. J1. K2. F100", "G80").stroke(0);
		assertThat(List.of(pecked.rLevel(), pecked.bottom())).containsExactly(2.0, -20.0);
	}
}
