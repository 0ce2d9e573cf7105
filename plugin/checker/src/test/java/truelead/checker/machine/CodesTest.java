package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.FeedMode;

/** Codes and profile keys that the other tests do not come by. */
class CodesTest {

	private static final MachineProfile MILLING = MachineProfile.generic();
	private static final MachineProfile TURNING = MachineProfile.named("turning");

	@Test
	void orientingTheSpindleStopsIt() {
		Modal state = Followed.milling("S500 M3", "M19", "G0 X0").state();
		assertThat(state.spindle()).isEqualTo(SpindleTurn.STOPPED);
		assertThat(state.spindleWord().get().written()).isEqualTo("M19");
	}

	@Test
	void aToolChangeStopsTheSpindleInMilling() {
		assertThat(Followed.milling("S500 M3", "T2 M6", "G0 X0").state().spindle()).isEqualTo(SpindleTurn.STOPPED);
		assertThat(Followed.on(TURNING, "S500 M3", "T0202", "G0 X0").state().spindle()).isEqualTo(SpindleTurn.CLOCKWISE);
	}

	/** Of two T words beside a change the first goes into the spindle and the second waits (from memory). */
	@Test
	void theSecondToolOfAChangeWaits() {
		Followed run = Followed.milling("T01 T02 M06", "G0 X0", "M6", "G0 X1.", "T3 T4 M6", "T5 M6", "G0 X2.");

		assertThat(run.events(Step.EventKind.TOOL_CHANGE)).extracting(event -> event.value().value()).containsExactly(1.0, 2.0, 3.0, 5.0);
	}

	@Test
	void feedAndSpeedOfTheChangeBlockAreTheNewTools() {
		Followed run = Followed.milling("F900", "T2 M6 S700 F120 M3", "G1 X1.");
		assertThat(run.events(Step.EventKind.TOOL_CHANGE).get(0).modal().feed().value()).isEqualTo(900);
		assertThat(run.state().feed().value()).isEqualTo(120);
		assertThat(run.state().spindle()).isEqualTo(SpindleTurn.CLOCKWISE);
	}

	@Test
	void spindleAndCoolantByOneCode() {
		Modal state = Followed.milling("S500 M13", "G0 X0").state();
		assertThat(state.spindle()).isEqualTo(SpindleTurn.CLOCKWISE);
		assertThat(state.coolant()).isTrue();
	}

	@Test
	void aSpindleStopTakesEffectBehindTheMotionOfItsBlock() {
		Followed run = Followed.milling("S500 M3", "G0 Z5. M5", "X1.");
		assertThat(run.moves().get(0).modal().spindle()).isEqualTo(SpindleTurn.CLOCKWISE);
		assertThat(run.moves().get(1).modal().spindle()).isEqualTo(SpindleTurn.STOPPED);
	}

	@Test
	void constantSurfaceSpeedIsKnown() {
		assertThat(Followed.on(TURNING, "G96 S150", "G0 X0").state().constantSurface()).isTrue();
		assertThat(Followed.on(TURNING, "G96 S150", "G97 S300", "G0 X0").state().constantSurface()).isFalse();
	}

	@Test
	void feedModesAreWordsOfTheirOwn() {
		Modal state = Followed.milling("G95 F1.25", "G0 X0").state();
		assertThat(state.feedMode()).isEqualTo(FeedMode.PER_REVOLUTION);
		assertThat(state.feedModeStated().get().written()).isEqualTo("G95");
		assertThat(Followed.on(TURNING, "G98 F100", "G0 X0").state().feedMode()).isEqualTo(FeedMode.PER_MINUTE);
		assertThat(Followed.on(TURNING, "G0 X0").state().feedModeStated()).isEmpty();
	}

	@Test
	void tappingModeLocksTheOverridesUntilAnotherMode() {
		Followed run = Followed.milling("G63", "G1 Z-5. F500", "G64", "Z5.");
		assertThat(run.moves()).extracting(move -> move.modal().overridesLocked()).containsExactly(true, false);
	}

	@Test
	void aFloatingTapBlockFeedsWithLockedOverrides() {
		Followed run = Followed.milling("G0 Z5.", "G63 Z-10. F500", "Z5.");
		assertThat(run.moves()).extracting(Step.Move::rapid).containsExactly(true, false, true);
		assertThat(run.moves().get(2).modal().overridesLocked()).isFalse();
		assertThat(run.moves().get(1).modal().overridesLocked()).isTrue();
	}

	@Test
	void threadingMovesInTurningTakeTheLeadFromF() {
		Step.Synchronised move = Followed.on(TURNING, "G0 X0 Z3.", "G32 Z-15. F1.5").all(Step.Synchronised.class).get(0);
		assertThat(move.lead().value()).isEqualTo(1.5);
		assertThat(move.modal().overridesLocked()).isTrue();
	}

	@Test
	void aSynchronisedMotionWithoutLeadIsSaid() {
		assertThat(Followed.milling("G0 Z5.", "G33 Z-10.").lost())
				.containsExactly("the lead of the synchronised motion is not known: neither K nor F says it");
	}

	@Test
	void someSynchronisedMotionsTurnTheSpindleByThemselves() {
		Followed run = Followed.milling("G0 X0 Y0 Z5.", "G331 Z-10. K1.25 S300", "G332 Z5. K1.25", "G331 Z-10. K-1.25", "G0 X1.");
		assertThat(run.all(Step.Synchronised.class)).extracting(move -> move.modal().spindle())
				.containsExactly(SpindleTurn.CLOCKWISE, SpindleTurn.COUNTERCLOCKWISE, SpindleTurn.COUNTERCLOCKWISE);
		assertThat(run.state().spindle()).isEqualTo(SpindleTurn.STOPPED);
	}

	@Test
	void aTurningMachineTurnsItsPartByIncrementsOfH() {
		Followed run = Followed.on(TURNING, "G0 X50. Z-10.", "G87 X30. R-4. F.1 C30.", "H90. K2", "C0");
		assertThat(run.strokes()).extracting(stroke -> stroke.modal().rotary().c()).containsExactly(30.0, 120.0, 210.0, 0.0);
	}

	@Test
	void theWayBackOfASynchronisedMotionKeepsItsLead() {
		Followed run = Followed.on(MachineProfile.named("rs274"), "G0 X0 Y0 Z5", "G33 Z-10 K1.25", "M4", "Z5");
		assertThat(run.all(Step.Synchronised.class)).extracting(move -> move.lead().value()).containsExactly(1.25, 1.25);
	}

	@Test
	void dwellIsAnEventWithItsWord() {
		Step.Event dwell = Followed.milling("G4 P500").events(Step.EventKind.DWELL).get(0);
		assertThat(dwell.value().value()).isEqualTo(500);
		assertThat(Followed.milling("F100", "G4 F2.", "G0 X0").state().feed().value()).isEqualTo(100);
	}

	@Test
	void stopsAreEvents() {
		Followed run = Followed.milling("M0", "M1", "M30");
		assertThat(run.events(Step.EventKind.STOP)).hasSize(1);
		assertThat(run.events(Step.EventKind.OPTIONAL_STOP)).hasSize(1);
		assertThat(Followed.on(MILLING.with("optional-stop", "no"), "M0", "M1", "M30").events(Step.EventKind.OPTIONAL_STOP)).isEmpty();
	}

	@Test
	void theLengthOffsetIsKnownByItsH() {
		assertThat(Followed.milling("G43 H5 Z50.", "X0").state().lengthOffset().value()).isEqualTo(5);
		assertThat(Followed.milling("G43 H5 Z50.", "G49", "X0").state().lengthOffset().isSet()).isFalse();
		assertThat(Followed.milling("T4 M6", "G43 Z50.").state().lengthOffset().value()).isEqualTo(4);
	}

	@Test
	void aLengthOffsetWithoutAMoveLosesTheHeight() {
		assertThat(Followed.milling("G0 X0 Y0 Z50.", "G43 H2", "X1.").end()).satisfies(end -> assertThat(end.z()).isNaN());
	}

	@Test
	void aChangeMayCancelTheLengthOffset() {
		MachineProfile cancels = MILLING.with("tool-change-cancels-length-offset", "yes");
		assertThat(Followed.on(cancels, "G43 H1 Z50.", "T2 M6", "G0 X0").state().lengthOffset().isSet()).isFalse();
		assertThat(Followed.milling("G43 H1 Z50.", "T2 M6", "G0 X0").state().lengthOffset().value()).isEqualTo(1);
	}

	@Test
	void numbersWithoutAPointMayCountLeastIncrements() {
		MachineProfile least = MILLING.with("numbers-without-point", "least-increment");
		assertThat(Followed.on(least, "G0 X10000 Y10.").ends()).containsExactly("10,10,?");
		assertThat(Followed.on(least, "G20 G0 X10000").moves().get(0).to().x()).isEqualTo(25.4, within(1e-9));
		assertThat(Followed.milling("G0 X10000").ends()).containsExactly("10000,?,?");
	}

	@Test
	void assignmentsMayCountBehindTheirBlock() {
		assertThat(Followed.on(MachineProfile.named("rs274"), "#1=1", "#1=5 G0 X#1", "Y#1").ends()).containsExactly("1,?,?", "1,5,?");
		assertThat(Followed.milling("#1=1", "#1=5 G0 X#1").ends()).containsExactly("5,?,?");
	}

	@Test
	void returnsMayNameABlock() {
		Followed run = Followed.milling("O1", "M98 P2", "G0 X1.", "N50 G0 X2.", "M30", "O2", "M99 P50");
		assertThat(run.ends()).containsExactly("2,?,?");
	}

	@Test
	void callsMayBeginAtABlock() {
		Followed run = Followed.milling("O1", "M98 P2 Q20", "M30", "O2", "N10 G0 X1.", "N20 G0 X2.", "M99");
		assertThat(run.ends()).containsExactly("2,?,?");
	}

	@Test
	void aCallByNameTakesTheNeighbouringFile() {
		Followed run = Followed.with(Map.of("holes", "G0 X3.\nM99"), MILLING, "M98 P\"holes\"", "M30");
		assertThat(run.ends()).containsExactly("3,?,?");
	}

	@Test
	void functionsWorkInDegrees() {
		assertThat(Followed.milling("#1=ATAN[1]/[-1]", "#2=SQRT[ABS[-16]]", "#3=ROUND[2.5]*10+FIX[2.9]+FUP[0.1]", "G0 X#1 Y#2 Z#3").ends())
				.containsExactly("135,4,33");
		assertThat(Followed.milling("G0 X[BIN[37]] Y[BCD[25]] Z[7 MOD 4]").ends()).containsExactly("25,37,3");
	}

	@Test
	void anArcWithoutCentreOrRadiusIsSaid() {
		assertThat(Followed.milling("G0 X0 Y0", "G2 X5. Y5.").lost()).containsExactly("an arc has neither centre nor radius in this block");
	}

	@Test
	void anUnknownCodeWithAxisWordsLosesThoseAxes() {
		Followed run = Followed.milling("G0 X0 Y0 Z0", "G222 X5.", "G0 Y1.");
		assertThat(Followed.text(run.end())).isEqualTo("?,1,0");
		assertThat(run.lost()).isEmpty();
		assertThat(run.remarks()).hasSize(1);
	}

	@Test
	void g80BesideARapidMoveMoves() {
		Followed run = Followed.milling("G0 X0 Y0 Z9.", "G81 X1. Z-1. R1. F9.", "G0 G80 Z20.");
		assertThat(run.end().z()).isEqualTo(20);
		assertThat(run.strokes()).hasSize(1);
	}

	@Test
	void positionsCanBeReadBackByVariables() {
		assertThat(Followed.milling("G20 G0 X2. Y1.", "X[#5001+1]").end().x()).isEqualTo(76.2, within(1e-9));
	}

	@Test
	void turningPassesComeBackToTheirStart() {
		assertThat(Followed.on(TURNING, "G0 X60. Z5.", "G90 X50. Z-20. F.2", "X45.", "G0 W1.").ends()).containsExactly("30,0,5",
				"25,0,5", "25,0,-20", "30,0,-20", "30,0,5", "22.5,0,5", "22.5,0,-20", "30,0,-20", "30,0,5", "30,0,6");
	}

	@Test
	void passesOfAThreadAreLedByF() {
		Followed run = Followed.on(TURNING, "G0 X60. Z5.", "G92 X47.2 Z-30. F1.5", "X46.6", "X46.05 Z-29.", "G76 P010060 Q50 R.02",
				"G76 X40. Z-20. P900 Q200 F2.");
		assertThat(run.all(Step.Synchronised.class)).extracting(pass -> Followed.text(pass.to()) + " F" + pass.lead().value())
				.containsExactly("23.6,0,-30 F1.5", "23.3,0,-30 F1.5", "23.025,0,-29 F1.5", "20,0,-20 F2.0");
		assertThat(run.end().z()).isEqualTo(5);
	}

	@Test
	void facingPassesLeaveTheToolWhereItWas() {
		assertThat(Followed.on(TURNING, "G0 X60. Z5.", "G94 X20. Z-2. F.2", "G0 Z10.").ends()).containsExactly("30,0,5", "30,0,10");
	}

	@Test
	void wordsOfTurningPassesAreModesWhereNothingIsToBeTurned() {
		assertThat(Followed.on(TURNING, "G91 G0 X2.", "G90 G0 X50. Z5.").end().x()).isEqualTo(25);
		assertThat(Followed.on(TURNING, "G0 G90 X50. Z5.").ends()).containsExactly("25,0,5");
		assertThat(Followed.on(TURNING, "S300 M3", "G92 S2000", "G0 X1.").state().speed().value()).isEqualTo(300);
		assertThat(Followed.on(TURNING, "G94 F100", "G0 X1.").state().feedMode()).isEqualTo(FeedMode.PER_MINUTE);
		assertThat(Followed.on(TURNING, "G0 X60. Z5.", "G94 X20. Z-2. F.2", "G0 X1.").state().feedMode())
				.isEqualTo(FeedMode.PER_REVOLUTION);
	}

	@Test
	void turningCyclesMoveNothingForGood() {
		Followed run = Followed.on(TURNING, "G0 X40. Z2.", "G71 P10 Q20 U.5 W.1 F.2", "G76 X28. Z-20. P920 Q300 F1.5", "G0 Z5.");
		assertThat(Followed.text(run.end())).isEqualTo("20,0,5");
	}

	@Test
	void aMachineMayTakeUnsetVariablesForZero() {
		assertThat(Followed.on(MILLING.with("unset-variables", "zero"), "G0 X#500").ends()).containsExactly("0,?,?");
	}
}
