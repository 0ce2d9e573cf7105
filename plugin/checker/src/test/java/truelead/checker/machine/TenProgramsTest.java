package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Plane;

/** Ten programs of five unusual features each; every place worked out by hand. */
class TenProgramsTest {

	/** A bolt circle by polar words about a local zero, turned, with a hole under block delete and a depth changed on the way. */
	@Test
	void boltCircleByPolarWordsInATurnedLocalZero() {
		Followed run = Followed.milling("G21 G17 G90 G55 G0 X0 Y0 Z30.", "G52 X100. Y50.", "G68 X0 Y0 R90.", "G16",
				"G99 G81 X20. Y0 Z-10. R2. F80.", "Y90.", "/Y180.", "Y270. Z-6.", "G15", "G69", "G52 X0 Y0", "G80", "M30");
		assertThat(run.places()).containsExactly("100,70", "80,50", "100,30", "120,50");
		assertThat(run.strokes()).extracting(Step.Stroke::bottom).containsExactly(-10.0, -10.0, -10.0, -6.0);
		assertThat(run.stroke(2).block().skippable()).isTrue();
		assertThat(run.stroke(0).modal().workOffset()).isEqualTo(55);
	}

	/**
	 * A tap in a subprogram called with packed repeats, incremental, whose speed comes from a variable, rigid by M29, feed per revolution.
	 */
	@Test
	void rigidTapInASubprogramCalledWithPackedRepeats() {
		Followed run = Followed.milling("%", "O0001(BRACKET)", "G21 G90 G94 G54", "#100=400", "T7 M6", "S#100 M3",
				"G43 H7 G0 X-10. Y0 Z20.", "M98 P30500", "G80 G94", "M30", "O0500", "G95 M29 S#100", "G91 G99 G84 X10. Z-17. R-18. F1.25",
				"G80 G90", "G0 Z20.", "M99", "%");
		assertThat(run.places()).containsExactly("0,0", "10,0", "20,0");
		assertThat(run.strokes()).extracting(Step.Stroke::rLevel).containsExactly(2.0, 2.0, 2.0);
		assertThat(run.strokes()).extracting(Step.Stroke::bottom).containsExactly(-15.0, -15.0, -15.0);
		assertThat(run.strokes()).allSatisfy(stroke -> {
			assertThat(stroke.modal().rigid().get().value()).isEqualTo(400);
			assertThat(stroke.modal().feedMode()).isEqualTo(FeedMode.PER_REVOLUTION);
			assertThat(stroke.block().caller().get().line()).isEqualTo(7);
		});
		assertThat(run.state().feedMode()).isEqualTo(FeedMode.PER_MINUTE);
	}

	/** Thread milling in a loop: one full circle a turn, absolute centres, inch, mirrored, with compensation. */
	@Test
	void threadMillingInALoopMirroredInInch() {
		Followed run = Followed.milling("G20 G90 G54", "G51.1 X0", "G0 X1. Y0 Z.1", "Z-.5", "G90.1", "G1 G41 D3 X1.25 F8.", "#1=-.5",
				"WHILE [#1 LT -.3] DO1", "#1=#1+.0625", "G3 X1.25 Y0 Z#1 I1. J0", "END1", "G1 G40 X1.", "G91.1", "G50.1 X0",
				"G0 Z.1", "M30");
		assertThat(run.arcs()).hasSize(4);
		assertThat(run.arcs()).allSatisfy(arc -> {
			assertThat(arc.sweep()).isEqualTo(-2 * Math.PI, within(1e-9));
			assertThat(arc.startRadius()).isEqualTo(6.35, within(1e-9));
			assertThat(arc.lead()).isEqualTo(1.5875, within(1e-9));
			assertThat(Followed.text(arc.centre())).startsWith("-25.4,0,");
			assertThat(arc.modal().mirrored()).isTrue();
			assertThat(arc.modal().compensation()).isEqualTo(Compensation.LEFT);
		});
		assertThat(run.arcs().get(3).to().z()).isEqualTo(-0.25 * 25.4, within(1e-9));
	}

	/** A macro called for every hole of a row, with an argument left out, a vacant test, a function and a jump out of a loop. */
	@Test
	void modalMacroForEveryHoleWithAnArgumentLeftOut() {
		Followed run = Followed.milling("O10", "G21 G90 G54 G0 X0 Y0 Z10.", "G66 P9100 Z-8.", "X5.", "X15.", "G67", "X30.", "M30", "O9100",
				"IF [#18 NE #0] GOTO 5", "#18=FUP[1.2]", "N5 WHILE [1 EQ 1] DO1", "G1 Z#26 F100.", "G0 Z#18", "IF [#5003 EQ 2] GOTO 9",
				"END1", "N9 M99");
		assertThat(run.ends()).containsExactly("0,0,10", "5,0,10", "5,0,-8", "5,0,2", "15,0,2", "15,0,-8", "15,0,2", "30,0,2");
		assertThat(run.lost()).isEmpty();
	}

	/**
	 * Turning: turret word, speed limit, pecking on the face, tapping along Z with R from the initial level, increments by W, diameters.
	 */
	@Test
	void turningDrillsAndTapsOnTheFace() {
		Followed run = Followed.on(MachineProfile.named("turning"), "G50 S2500", "T0404", "G97 S800 M3", "G0 X0 Z5.", "G74 R1.",
				"G74 Z-28. Q5000 F.12", "T0606", "G97 S300 M3", "G0 X0 Z6.", "G84 W-26. R-3. F1.25", "G80", "G0 X60. W10.", "M30");
		assertThat(run.stroke(0).cycle().kind()).isEqualTo(Cycle.Kind.PECK_DRILL);
		assertThat(run.stroke(0).bottom()).isEqualTo(-28);
		assertThat(run.stroke(1).cycle().kind()).isEqualTo(Cycle.Kind.TAP);
		assertThat(run.stroke(1).rLevel()).isEqualTo(3);
		assertThat(run.stroke(1).bottom()).isEqualTo(-23);
		assertThat(run.stroke(1).modal().speed().value()).isEqualTo(300);
		assertThat(run.end().x()).isEqualTo(30);
		assertThat(run.end().z()).isEqualTo(16);
	}

	/** RS-274: a named subprogram with arguments in nested o-word loops, synchronised taps, an early return, and a plane other than XY. */
	@Test
	void oWordGridOfSynchronisedTaps() {
		Followed run = Followed.on(MachineProfile.named("rs274"), "o<tap> sub", "  o110 if [#3 LE 0]", "    o<tap> return", "  o110 endif",
				"  G0 X#1 Y#2", "  G33.1 Z[-#3] K[40/32]", "o<tap> endsub", "G21 G90 G54 G0 Z5", "M3 S200", "#<row>=0",
				"o100 while [#<row> LT 2]", "  #<col>=0", "  o101 repeat [2]",
				"    o<tap> call [#<col>*10] [#<row>*20] [[#<row>+#<col>]*4]", "    #<col>=[#<col>+1]", "  o101 endrepeat",
				"  #<row>=[#<row>+1]", "o100 endwhile", "M2");
		assertThat(run.all(Step.Synchronised.class)).extracting(tap -> Followed.text(tap.to()))
				.containsExactly("10,0,-4", "0,20,-4", "10,20,-8");
		assertThat(run.all(Step.Synchronised.class)).allSatisfy(tap -> assertThat(tap.lead().value()).isEqualTo(1.25));
		assertThat(run.end().z()).isEqualTo(-8);
	}

	/** Cycles in G18 and G19, left hand, both by L0 and a pattern from a local call, the return level changed on the way. */
	@Test
	void leftHandTapsOnTheSideByALocalPattern() {
		Followed run = Followed.milling("G21 G90 G56 G0 X0 Y40. Z0", "S300 M4", "G18 G98 G74 X0 Z0 Y-12. R3. F300. L0", "M97 P500",
				"G80 G17", "M30", "N500 X10. Z5.", "G99 X20.", "Z15. Y-9.", "M99");
		assertThat(run.strokes()).extracting(stroke -> Followed.text(stroke.place())).containsExactly("10,3,5", "20,3,5", "20,3,15");
		assertThat(run.strokes()).extracting(Step.Stroke::bottom).containsExactly(-12.0, -12.0, -9.0);
		assertThat(run.strokes()).allSatisfy(stroke -> {
			assertThat(stroke.cycle().kind()).isEqualTo(Cycle.Kind.TAP_LEFT);
			assertThat(stroke.modal().plane()).isEqualTo(Plane.ZX);
			assertThat(stroke.initial()).isEqualTo(40);
			assertThat(stroke.modal().spindle()).isEqualTo(SpindleTurn.COUNTERCLOCKWISE);
		});
	}

	/** Homing under a cycle, offset data, a rotary step, an extended offset and a probe whose result is not known. */
	@Test
	void rotaryStepsWithOffsetDataAndAProbe() {
		Followed run = Followed.milling("G21 G90 G10 L2 P1 X-300. Y-200. Z-400.", "G54 G0 A0 X0 Y0 Z50.", "G31 Z-5. F50.", "#101=#5063",
				"G0 Z50.", "G81 X5. Y5. Z-10. R2. F90.", "A120.", "G80 G91 G28 Z0", "G90 G54.1 P2 G0 X5. Y5.", "G43 H2 Z50.",
				"G84 Z#101 R2. F100.", "G80", "M30");
		assertThat(run.strokes()).hasSize(3);
		assertThat(run.stroke(0).modal().rotary().a()).isZero();
		assertThat(run.stroke(1).modal().rotary().a()).isEqualTo(120);
		assertThat(run.stroke(1).modal().frame()).isNotZero();
		assertThat(run.stroke(2).modal().workOffset()).isEqualTo(5402);
		assertThat(run.stroke(2).bottom()).isNaN();
		assertThat(run.lost()).containsExactly("Z is not known: #5063 is known at the machine only",
				"the depth of the thread is not known");
	}

	/** A program of a richer language: named values, a labelled loop, an increment by word, a synchronised tap in two blocks, a frame. */
	@Test
	void richerLanguageWithATapInTwoBlocks() {
		Followed run = Followed.milling("N10 G710 G90 G500", "N20 R1=0 PITCH=1.5", "N30 S200 M3", "HOLE:", "N40 G0 X=R1*20 Y0 Z5",
				"N50 G331 Z-12 K=PITCH", "N60 G332 Z5 K=PITCH", "N70 R1=R1+1", "N80 IF R1<3 GOTOB HOLE", "N90 G0 Z=IC(45)", "N100 M30");
		assertThat(run.all(Step.Synchronised.class)).hasSize(6);
		assertThat(run.all(Step.Synchronised.class)).extracting(Step.Synchronised::code).startsWith(3310, 3320);
		assertThat(run.all(Step.Synchronised.class).get(4).to()).isEqualTo(new Point(40, 0, -12));
		assertThat(run.all(Step.Synchronised.class)).allSatisfy(tap -> assertThat(tap.lead().value()).isEqualTo(1.5));
		assertThat(run.end().z()).isEqualTo(50);
		assertThat(run.state().workOffset()).isEqualTo(500);
	}

	/** Tapping by feed in and out with reversal, overrides locked, scaled coordinates, G92, a helix of several turns, inverse time feed. */
	@Test
	void tappingByFeedWithReversalAndAHelixOfSeveralTurns() {
		Followed run = Followed.milling("G21 G90 G54 G0 X10. Y10. Z10.", "G92 X0 Y0", "G51 X0 Y0 Z0 P2.", "G0 X5. Y0", "G50", "M49 S500 M3",
				"G1 Z-10. F500.", "M4", "G1 Z10.", "M48 M3", "G0 X3. Y0", "G93 G2 X3. Y0 Z4. I-3. P4 F2.", "G94", "G92.1", "G0 X0", "M30");
		assertThat(run.moves()).filteredOn(move -> !move.rapid()).allSatisfy(move -> {
			assertThat(move.modal().overridesLocked()).isTrue();
			assertThat(Followed.text(move.to())).startsWith("20,10,");
		});
		assertThat(run.moves()).filteredOn(move -> !move.rapid()).extracting(move -> move.modal().spindle())
				.containsExactly(SpindleTurn.CLOCKWISE, SpindleTurn.COUNTERCLOCKWISE);
		Step.Arc helix = run.arcs().get(0);
		assertThat(Followed.text(helix.centre())).isEqualTo("10,10,10");
		assertThat(helix.sweep()).isEqualTo(-8 * Math.PI, within(1e-9));
		assertThat(helix.lead()).isEqualTo(-1.5, within(1e-9));
		assertThat(helix.modal().feedMode()).isEqualTo(FeedMode.INVERSE_TIME);
		assertThat(Followed.text(run.end())).isEqualTo("0,10,4");
	}
}
