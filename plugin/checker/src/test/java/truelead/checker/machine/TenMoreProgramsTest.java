package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Plane;

/** Ten more programs of five unusual features each; every place worked out by hand. */
class TenMoreProgramsTest {

	private static final MachineProfile RS274 = MachineProfile.named("rs274");
	private static final MachineProfile TURNING = MachineProfile.named("turning");

	/** Nested WHILE, places by indirect variables, a computed jump out of the inner loop, a count of 0, return to R. */
	@Test
	void gridFromATableOfVariablesLeftByAComputedJump() {
		Followed run = Followed.milling("O1", "G21 G17 G90 G54 G0 X0 Y0 Z20.", "#101=5. #102=15. #103=30.", "#1=1",
				"G99 G81 Z-8. R2. F90. L0", "WHILE [#1 LE 3] DO1", "#2=0", "WHILE [#2 LT 2] DO2",
				"IF [[#1 EQ 2] AND [#2 EQ 1]] GOTO[50+#1*10]", "X#[100+#1] Y[#2*10.]", "#2=#2+1", "END2", "N70 #1=#1+1", "END1",
				"G80", "M30");
		assertThat(run.places()).containsExactly("5,0", "5,10", "15,0", "30,0", "30,10");
		assertThat(run.strokes()).allSatisfy(stroke -> assertThat(stroke.bottom()).isEqualTo(-8));
		assertThat(run.stroke(1).initial()).isEqualTo(20);
	}

	/**
	 * G66 whose macro calls another by G65 with the second list of arguments, block delete level 3 on, a vacant test, a local level each.
	 */
	@Test
	void modalMacroThatCallsAMacroWithTheSecondListOfArguments() {
		Followed run = Followed.on(MachineProfile.generic().with("block-delete", "3"), "O1", "G90 G0 X0 Y0 Z9.", "#1=77.",
				"G66 P500 A2. B-6.", "X10.", "/3 X20.", "/4 X30.", "G67", "Y#1", "M30", "O500", "G65 P600 A#1 I1. J#2 I4.",
				"IF [#3 EQ #0] THEN #3=8.", "G0 Z[#3+1]", "M99", "O600", "G1 Z#5 F[#1*100+#4*10+#7]", "IF [#6 NE #0] GOTO 9",
				"Z#7", "N9 M99");
		assertThat(run.ends()).containsExactly("0,0,9", "10,0,9", "10,0,-6", "10,0,4", "10,0,9", "30,0,9", "30,0,-6", "30,0,4",
				"30,0,9", "30,77,9");
		assertThat(run.moves().get(2).modal().feed().value()).isEqualTo(214);
		assertThat(run.moves().get(2).block().outermost().line()).isEqualTo(4);
	}

	/** RS-274: values returned, calls inside calls, a computed call, locals kept, repeat, call of a file beside it. */
	@Test
	void oWordSubprogramsThatReturnValues() {
		Followed run = Followed.with(Map.of("lift", "o<lift> sub\nG0 Z[#1]\no<lift> endsub [#1*3]\nM2"), RS274, "o100 sub", "  #5=[#1*2]",
				"o100 endsub [#5+1]", "o200 sub", "  o100 call [#1]", "  #2=#<_value>", "  o200 return [#2*10]", "  G0 X99", "o200 endsub",
				"G21 G90 G0 X0 Y0 Z5", "#1=7", "#2=1", "o200 call [3]", "G0 X#<_value>", "#10=100", "o[#10] call [4]", "G0 Y#<_value>",
				"G0 Z[#1+#2]", "o300 repeat [2]", "  o<lift> call [#<_value>]", "o300 endrepeat", "M2");
		assertThat(run.ends()).containsExactly("0,0,5", "70,0,5", "70,9,5", "70,9,8", "70,9,9", "70,9,27");
		assertThat(run.lost()).isEmpty();
	}

	/** A mirror in a turned local zero with a helix, a tap and a work offset: p to 20-x, then a quarter turn, then 100 along X. */
	@Test
	void mirroredThenTurnedThenShifted() {
		Followed run = Followed.milling("G21 G17 G90 G57 G0 X0 Y0 Z10.", "G52 X100. Y0", "G68 X0 Y0 R90.", "G51.1 X10.", "G0 X30. Y0", "Z0",
				"G3 I-5. Z-2. F100", "G0 Z10.", "G84 X30. Y5. Z-8. R2. F80.", "G80", "G50.1", "G69", "G52 X0 Y0", "G0 X1. Y2.", "M30");
		assertThat(Followed.text(run.moves().get(1).to())).isEqualTo("100,-10,10");
		Step.Arc helix = run.arcs().get(0);
		assertThat(Followed.text(helix.centre())).isEqualTo("100,-5,0");
		assertThat(helix.sweep()).isEqualTo(-2 * Math.PI, within(1e-9));
		assertThat(helix.lead()).isEqualTo(-2, within(1e-9));
		assertThat(run.places()).containsExactly("95,-10");
		assertThat(run.stroke(0).modal().mirrored()).isTrue();
		assertThat(run.stroke(0).modal().workOffset()).isEqualTo(57);
		assertThat(Followed.text(run.end())).isEqualTo("1,2,10");
		assertThat(run.state().mirrored()).isFalse();
	}

	/** G92 and G52 on top of one another, an extended offset, repeats of an incremental cycle, a position read back. */
	@Test
	void shiftsOnTopOfOneAnotherAndAnExtendedOffset() {
		Followed run = Followed.milling("G21 G90 G54 G0 X10. Y10. Z20.", "G92 X0 Y0", "G52 X5.", "G0 X1. Y1.", "#1=#5041",
				"G91 G99 G81 X2. Y0 Z-12. R-18. F90. K2", "G80 G90", "G0 X#1 Z20.", "G52 X0", "G92.1", "G0 X[#1*2]",
				"G54.1 P7 G0 X0 Y0", "M30");
		assertThat(run.moves().get(1).to()).isEqualTo(new Point(16, 11, 20));
		assertThat(run.places()).containsExactly("18,11", "20,11");
		assertThat(run.strokes()).allSatisfy(stroke -> {
			assertThat(stroke.rLevel()).isEqualTo(2);
			assertThat(stroke.bottom()).isEqualTo(-10);
		});
		assertThat(run.ends().subList(2, 5)).containsExactly("16,11,20", "2,11,20", "0,0,?");
		assertThat(run.state().workOffset()).isEqualTo(5407);
	}

	/** Arcs by R of more than half a turn, in the ZX plane, of several turns in the YZ plane, incremental, with absolute centres. */
	@Test
	void arcsInAllPlanes() {
		Followed run = Followed.milling("G21 G90 G54 G0 X10. Y0 Z0", "G17 G3 X0 Y-10. R-10. F100", "G18 G0 X0 Z10.", "G3 X10. Z0 I0 K-10.",
				"G19 G0 Y5. Z0", "G91 G2 Y0 Z0 X6. J-5. K0 P3", "G90 G90.1 G17 G0 X3. Y4.", "G2 X3. Y4. I0 J0", "G91.1", "M30");
		Step.Arc large = run.arcs().get(0);
		assertThat(large.sweep()).isEqualTo(1.5 * Math.PI, within(1e-6));
		assertThat(Followed.text(large.centre())).startsWith("0,0,");
		Step.Arc side = run.arcs().get(1);
		assertThat(side.sweep()).isEqualTo(Math.PI / 2, within(1e-9));
		assertThat(Followed.text(side.centre())).isEqualTo("0,-10,0");
		Step.Arc helix = run.arcs().get(2);
		assertThat(helix.sweep()).isEqualTo(-6 * Math.PI, within(1e-9));
		assertThat(helix.lead()).isEqualTo(2, within(1e-9));
		assertThat(Followed.text(helix.to())).isEqualTo("16,5,0");
		assertThat(run.arcs().get(3).startRadius()).isEqualTo(5, within(1e-9));
		assertThat(Followed.text(run.arcs().get(3).centre())).startsWith("0,0,");
	}

	/** Packed repeats, repeats by L, a local call, a return to a block, a subprogram that taps under a cycle of its caller. */
	@Test
	void callsInAllTheirSpellings() {
		Followed run = Followed.milling("O1", "G21 G90 G54 S300 M3 G0 X0 Y0 Z20.", "G99 G84 Z-9. R3. F300. L0", "M98 P20100", "M98 P100 L1",
				"M97 P70 L2", "M98 P200", "X999.", "N50 G80", "M30", "N70 G91 Y5.", "G90", "M99", "O100", "G91 X10.", "G90", "M99", "O200",
				"X0 Y0", "M99 P50");
		assertThat(run.places()).containsExactly("10,0", "20,0", "30,0", "30,5", "30,10", "0,0");
		assertThat(run.strokes()).allSatisfy(stroke -> assertThat(stroke.cycle().kind()).isEqualTo(Cycle.Kind.TAP));
		assertThat(run.events(Step.EventKind.SUB_CALL)).hasSize(4);
	}

	/** A richer language: a head with a default, a loop by count with a step in a field, a choice, a repeated part, a count in a call. */
	@Test
	void richerProgramWithChoicesAndRepeats() {
		Followed run = Followed.with(Map.of("HOLE", "PROC HOLE(REAL AT, REAL DEEP=-6)\nG0 X=AT\nG1 Z=DEEP F100\nG0 Z5\nRET"),
				MachineProfile.generic(), "G710 G90 G54", "DEF INT K", "G0 X0 Y0 Z5", "FOR K=1 TO 3", "R[10+K]=K*K",
				"CASE K OF 1 GOTOF FLAT 3 GOTOF SKIP DEFAULT GOTOF DEEP", "FLAT: HOLE(R11)", "GOTOF NEXT", "DEEP: HOLE(R12,-9)",
				"GOTOF NEXT", "SKIP: G0 Y=IC(1)", "NEXT:", "ENDFOR", "REPEAT SKIP NEXT P=2", "M30");
		assertThat(run.ends()).containsExactly("0,0,5", "1,0,5", "1,0,-6", "1,0,5", "4,0,5", "4,0,-9", "4,0,5", "4,1,5", "4,2,5", "4,3,5");
		assertThat(run.lost()).isEmpty();
	}

	/** Turning: chasing in passes with X diameters, return words against feed words, increments, a tap on the face and a drill across. */
	@Test
	void turningThreadsTapsAndDrills() {
		Followed run = Followed.on(TURNING, "G0 X60. Z5. T0303", "G97 S400 M3", "G92 X47.2 Z-30. F1.5", "X46.6", "X46.05", "G0 X80. Z10.",
				"T0404", "G98 G97 S100 M4", "G0 X0 Z4.", "G84 Z-18. R-1. F125.", "G80", "G99", "T0505", "G0 X50. Z-12. C0",
				"G87 X30. R-4. F.1", "C90.", "G80", "G0 U10. W2.", "M30");
		assertThat(run.strokes()).hasSize(3);
		assertThat(run.stroke(0).modal().feedMode()).isEqualTo(FeedMode.PER_MINUTE);
		assertThat(run.stroke(0).rLevel()).isEqualTo(3);
		assertThat(run.stroke(0).bottom()).isEqualTo(-18);
		assertThat(run.stroke(1).modal().plane()).isEqualTo(Plane.YZ);
		assertThat(run.stroke(1).initial()).isEqualTo(25);
		assertThat(run.stroke(1).bottom()).isEqualTo(15);
		assertThat(run.stroke(2).modal().rotary().c()).isEqualTo(90);
		assertThat(run.stroke(2).modal().feedMode()).isEqualTo(FeedMode.PER_REVOLUTION);
		assertThat(Followed.text(run.end())).isEqualTo("30,0,-10");
	}

	/** Taps by feed, by synchronised motion in and out, and by one word, with speeds from variables, a gear and an oriented spindle. */
	@Test
	void tapsWithoutACycle() {
		Followed run = Followed.on(RS274, "G21 G90 G54 G0 X0 Y0 Z5", "#<s>=250 #<p>=1.25", "M41", "S#<s> M3", "M49", "G1 Z-10 F[#<s>*#<p>]",
				"M4", "G1 Z5", "M48 M3", "G0 X10", "G33 Z-10 K#<p>", "M4", "G33 Z5 K#<p>", "M3", "M19", "G0 X20", "G95 S#<s> M3",
				"G33.1 Z-10 K1.25", "G94", "M2");
		assertThat(run.moves()).filteredOn(move -> !move.rapid()).hasSize(2).allSatisfy(move -> {
			assertThat(move.modal().overridesLocked()).isTrue();
			assertThat(move.modal().feed().value()).isEqualTo(312.5);
		});
		assertThat(run.all(Step.Synchronised.class)).extracting(move -> Followed.text(move.from()) + " to " + Followed.text(move.to()))
				.containsExactly("10,0,5 to 10,0,-10", "10,0,-10 to 10,0,5", "20,0,5 to 20,0,-10");
		assertThat(run.all(Step.Synchronised.class)).extracting(Step.Synchronised::returns).containsExactly(false, false, true);
		assertThat(run.all(Step.Synchronised.class).get(1).modal().spindle()).isEqualTo(SpindleTurn.COUNTERCLOCKWISE);
		assertThat(run.events(Step.EventKind.SPINDLE)).extracting(event -> event.modal().spindle()).contains(SpindleTurn.STOPPED);
	}
}
