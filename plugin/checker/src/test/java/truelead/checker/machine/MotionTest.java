package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;

class MotionTest {

	@Test
	void rapidAndFeedMovesGoWhereTheWordsSay() {
		Followed run = Followed.milling("G21 G90 G54", "G0 X10. Y20. Z5.", "G1 Z-2.5 F100.", "X15.", "M30");
		assertThat(run.ends()).containsExactly("10,20,5", "10,20,-2.5", "15,20,-2.5");
		assertThat(run.moves().get(0).rapid()).isTrue();
		assertThat(run.moves().get(2).rapid()).isFalse();
		assertThat(run.lost()).isEmpty();
	}

	@Test
	void anAxisThatHasNotMovedIsNotKnown() {
		assertThat(Followed.milling("G0 X10.").ends()).containsExactly("10,?,?");
	}

	@Test
	void inchWordsBecomeMillimetres() {
		Followed run = Followed.milling("G20", "G0 X1. Y.5 Z-.25");
		assertThat(run.ends()).containsExactly("25.4,12.7,-6.35");
		assertThat(run.state().unitStated()).isTrue();
	}

	@Test
	void incrementsAddToThePlaceBefore() {
		assertThat(Followed.milling("G0 X10. Y0 Z0", "G91 X5. Y-1.", "X5.").ends()).containsExactly("10,0,0", "15,-1,0", "20,-1,0");
	}

	@Test
	void resolutionIsHalfOfTheFinestDecimal() {
		assertThat(Followed.milling("G0 X10.125 Y1.5").moves().get(0).resolution()).isEqualTo(0.0005, within(1e-12));
	}

	@Test
	void homingLosesTheAxesThatHaveWords() {
		Followed run = Followed.milling("G0 X10. Y10. Z5.", "G91 G28 Z0", "G90 X20.");
		assertThat(run.ends()).containsExactly("10,10,5", "10,10,5", "10,10,?", "20,10,?");
	}

	@Test
	void machineCoordinatesLoseTheAxisToo() {
		Followed run = Followed.milling("G0 X10. Y10. Z5.", "G53 G0 Z0", "G0 X20.");
		assertThat(run.ends()).containsExactly("10,10,5", "10,10,?", "20,10,?");
	}

	@Test
	void aFullCircleByItsCentreSweepsATurn() {
		Step.Arc arc = Followed.milling("G0 X10. Y0 Z0", "G3 I-10. F100").arcs().get(0);
		assertThat(arc.sweep()).isEqualTo(2 * Math.PI, within(1e-9));
		assertThat(Followed.text(arc.centre())).isEqualTo("0,0,0");
		assertThat(arc.startRadius()).isEqualTo(10, within(1e-9));
	}

	@Test
	void aHelixAdvancesByItsLead() {
		Step.Arc arc = Followed.milling("G0 X10. Y0 Z-10.", "G3 X10. Y0 Z-8.5 I-10. J0 F100").arcs().get(0);
		assertThat(arc.lead()).isEqualTo(1.5, within(1e-9));
	}

	@Test
	void clockwiseSweepsBelowZero() {
		Step.Arc arc = Followed.milling("G0 X0 Y10. Z0", "G2 X10. Y0 I0 J-10.").arcs().get(0);
		assertThat(arc.sweep()).isEqualTo(-Math.PI / 2, within(1e-9));
	}

	@Test
	void aRadiusTakesTheShortWayAndANegativeOneTheLong() {
		assertThat(Followed.milling("G0 X0 Y0 Z0", "G3 X10. Y10. CR=10.").arcs().get(0).sweep()).isEqualTo(Math.PI / 2, within(1e-9));
		Step.Arc shorter = Followed.milling("G0 X0 Y0 Z0", "G3 X10. Y10. R10.").arcs().get(0);
		assertThat(shorter.sweep()).isEqualTo(Math.PI / 2, within(1e-9));
		assertThat(Followed.text(shorter.centre())).isEqualTo("0,10,0");
		Step.Arc longer = Followed.milling("G0 X0 Y0 Z0", "G3 X10. Y10. R-10.").arcs().get(0);
		assertThat(longer.sweep()).isEqualTo(1.5 * Math.PI, within(1e-9));
		assertThat(Followed.text(longer.centre())).isEqualTo("10,0,0");
	}

	@Test
	void halfArcsWithARadiusAHairTooLargeStayHalfArcs() {
		Step.Arc arc = Followed.milling("G0 X-5. Y0 Z0", "G3 X5. Y0 Z.75 R5.0001").arcs().get(0);
		assertThat(arc.sweep()).isEqualTo(Math.PI, within(0.02));
		assertThat(arc.lead()).isEqualTo(1.5, within(0.02));
	}

	@Test
	void aRadiusTooShortShowsInTheEndRadius() {
		Step.Arc arc = Followed.milling("G0 X0 Y0 Z0", "G3 X20. Y0 R9.").arcs().get(0);
		assertThat(arc.endRadius() - arc.startRadius()).isEqualTo(2, within(1e-9));
	}

	@Test
	void severalTurnsAreCountedByP() {
		Step.Arc arc = Followed.milling("G0 X5. Y0 Z0", "G2 X5. Y0 Z-9. I-5. J0 P3").arcs().get(0);
		assertThat(arc.sweep()).isEqualTo(-6 * Math.PI, within(1e-9));
		assertThat(arc.lead()).isEqualTo(-3, within(1e-9));
	}

	@Test
	void arcsInTheOtherPlanesTurnAboutTheirAxis() {
		Step.Arc zx = Followed.milling("G18", "G0 X0 Y3. Z10.", "G3 X10. Z0 I0 K-10.").arcs().get(0);
		assertThat(zx.sweep()).isEqualTo(Math.PI / 2, within(1e-9));
		Step.Arc yz = Followed.milling("G19", "G0 X3. Y10. Z0", "G2 Y0 Z-10. J-10. K0").arcs().get(0);
		assertThat(yz.sweep()).isEqualTo(-Math.PI / 2, within(1e-9));
		assertThat(yz.startRadius()).isEqualTo(10, within(1e-9));
	}

	@Test
	void absoluteCentresAreReadAsSuch() {
		Step.Arc arc = Followed.milling("G90.1", "G0 X30. Y20. Z0", "G3 X20. Y30. I20. J20.").arcs().get(0);
		assertThat(Followed.text(arc.centre())).isEqualTo("20,20,0");
		assertThat(arc.sweep()).isEqualTo(Math.PI / 2, within(1e-9));
	}

	@Test
	void compensationIsKeptAsStateWithItsOffset() {
		Followed run = Followed.milling("G0 X0 Y0 Z0", "G1 G41 D12 X5. F100", "G3 X5. Y0 I-5.", "G1 G40 X0");
		assertThat(run.arcs().get(0).modal().compensation()).isEqualTo(Compensation.LEFT);
		assertThat(run.arcs().get(0).modal().compensationOffset().value()).isEqualTo(12);
		assertThat(run.state().compensation()).isEqualTo(Compensation.OFF);
	}

	@Test
	void aSynchronisedTapComesBackToWhereItStarted() {
		Followed run = Followed.on(MachineProfile.named("rs274"), "G21 G0 X1 Y2 Z5", "S100 M3", "G33.1 Z-10 K1.25", "G0 Z20");
		Step.Synchronised tap = run.all(Step.Synchronised.class).get(0);
		assertThat(tap.code()).isEqualTo(331);
		assertThat(tap.lead().value()).isEqualTo(1.25);
		assertThat(tap.returns()).isTrue();
		assertThat(Followed.text(tap.to())).isEqualTo("1,2,-10");
		assertThat(run.moves().get(1).from().z()).isEqualTo(5);
	}

	@Test
	void aWorkOffsetChangeLosesThePlaceUntilTheWayBack() {
		Followed run = Followed.milling("G54 G0 X10. Y10. Z5.", "G55", "G0 X0", "G54", "G0 Z7.");
		assertThat(run.ends()).containsExactly("10,10,5", "0,?,?", "?,10,7");
		assertThat(run.state().workOffset()).isEqualTo(54);
	}

	@Test
	void extendedOffsetsHaveTheirOwnNumbers() {
		assertThat(Followed.milling("G54.1 P3 X0").state().workOffset()).isEqualTo(5403);
		assertThat(Followed.milling("G59.2 X0").state().workOffset()).isEqualTo(5902);
	}
}
