package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static truelead.checker.Samples.milling;
import static truelead.checker.Samples.work;

import org.junit.jupiter.api.Test;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;

class ThreadMillingsTest {

	@Test
	void aHelixOfASubprogramAloneInIncrementsHasALeadAndNoLevel() {
		ThreadMilling operation = milling("O101 (M20X1.5 THREAD MILL)", "(TOOL: T5, THREAD MILL, DIA 14, PITCH 1.5)", "G21 G91",
				"G1 G41 D5 X3. Y3. F200", "G3 X-3. Y3. Z.375 R3.", "G3 I0 J-10. Z1.5", "G3 X-3. Y-3. Z.375 R3.", "G1 G40 X3. Y-3.",
				"G90", "M99");
		assertThat(operation.passes().get(0).lead()).isEqualTo(1.5, within(1e-9));
		assertThat(operation.passes().get(0).rightHand()).isTrue();
		assertThat(operation.passes().get(0).endLevel()).isNaN();
	}

	/** M20x1.5 with a cutter of 16: radius 2, entered by half an arc of radius 1, three half arcs a side up, out by half an arc. */
	private static final String[] HALF_ARCS = { "G21 G17 G90", "T7 M6 (THREAD MILL D16. M20X1.5)", "G54 G0 X0 Y0 S2000 M3", "G43 H7 Z5.",
			"Z-15.", "G1 F500.", "G3 X2. Y0 Z-14.25 R1.", "G3 X-2. Y0 Z-13.5 R2.", "G3 X2. Y0 Z-12.75 R2.", "G3 X0 Y0 Z-12. R1.",
			"G0 Z50.", "M30" };

	@Test
	void leadInTurnAndLeadOut() {
		ThreadMilling milling = milling(HALF_ARCS);
		assertThat(milling.passes()).singleElement().satisfies(pass -> {
			assertThat(pass.helix()).hasSize(2);
			assertThat(pass.turns()).isCloseTo(1, within(1e-6));
			assertThat(pass.lead()).isCloseTo(1.5, within(1e-6));
			assertThat(pass.radius()).isCloseTo(2, within(1e-6));
			assertThat(pass.place().u()).isCloseTo(0, within(1e-6));
			assertThat(pass.entry()).last().isInstanceOf(Step.Arc.class);
			assertThat(pass.exit()).first().isInstanceOf(Step.Arc.class);
			assertThat(pass.rightHand()).isTrue();
			assertThat(pass.external()).isFalse();
		});
		assertThat(milling.wanted().thread().orElseThrow().value().designation()).isEqualTo("M20x1.5");
		assertThat(milling.tool().facts().diameter().orElseThrow().value()).isEqualTo(16);
	}

	@Test
	void arcsAHairOffAreStillOneTurn() {
		ThreadMilling milling = milling("G21 G17 G90", "T7 M6 (THREAD MILL D10. M20X1.5)", "G54 G0 X0 Y0 S2000 M3", "G43 H7 Z5.", "Z-15.",
				"G1 F500.", "G3 X5. Y0 Z-14.25 R2.5", "G3 X-5. Y0 Z-13.5 R5.005", "G3 X5. Y0 Z-12.75 R5.005", "G3 X0 Y0 Z-12. R2.5",
				"G0 Z50.", "M30");
		assertThat(milling.passes()).singleElement().satisfies(pass -> {
			assertThat(pass.helix()).hasSize(2);
			assertThat(pass.turns()).isBetween(0.95, 1.0);
		});
	}

	@Test
	void oneCircleATurnInALoop() {
		ThreadMilling milling = milling("G21 G17 G90", "T7 M6 (THREAD MILL D10. M20X1.5)", "G54 G0 X0 Y0 S2000 M3", "G43 H7 Z5.",
				"G0 Z-15.", "G1 X5. F500.", "#1=-15.", "WHILE [#1 LT 0] DO 1", "#1=[#1+1.5]", "G3 I-5. J0 Z#1", "END 1", "G1 X0",
				"G0 Z50.", "M30");
		assertThat(milling.passes()).singleElement().satisfies(pass -> {
			assertThat(pass.turns()).isCloseTo(10, within(1e-6));
			assertThat(pass.lead()).isCloseTo(1.5, within(1e-6));
		});
	}

	@Test
	void aRampIntoAPocketIsNoThread() {
		Work work = work("G21 G17 G90", "T1 M6 (END MILL 10 DIA)", "G54 G0 X4. Y0 S2000 M3", "G43 H1 Z0.", "G3 X4. Y0 I-4. J0 Z-1.5 F300.",
				"G3 I-4. J0 Z-3.", "G1 X0", "G0 Z2.", "M30");
		assertThat(work.operations()).isEmpty();
	}

	@Test
	void roughingDownAndFinishingUpAreTwoPassesAtOneHole() {
		ThreadMilling milling = milling("G21 G17 G90", "T7 M6 (THREAD MILL D10. M20X1.5)", "G54 G0 X0 Y0 S2000 M3", "G43 H7 Z5.", "G0 Z1.5",
				"G1 X4.8 F500.", "G2 I-4.8 J0 Z0", "G2 I-4.8 J0 Z-1.5", "G1 X0", "G41 D7 X2.", "G3 X10. Y0 Z-.75 R4.", "G3 I-10. J0 Z.75",
				"G3 I-10. J0 Z2.25", "G3 X2. Y0 Z3. R4.", "G40 G1 X0", "G0 Z50.", "M30");
		assertThat(milling.passes()).hasSize(2);
		assertThat(milling.holes()).hasSize(1);
		assertThat(milling.finishing(milling.holes().get(0))).singleElement()
				.satisfies(p -> assertThat(p.radius()).isCloseTo(10, within(1e-6)));
		assertThat(milling.passes().get(0).rightHand()).isTrue();
	}

	@Test
	void aPassAHairBesideTheDrilledPlaceIsAtThatHole() {
		ThreadMilling milling = milling("G21 G17 G90", "T1 M6 (DRILL 29.5)", "G54 G0 X47.5 Y2.5 S300 M3", "G43 H1 Z5.",
				"G81 X47.5 Y2.5 Z-60. R2. F80", "G80", "T3 M6 (THREAD MILL D21.5 M33X3.5)", "G0 X47.5 Y2.5 S1180 M3", "G43 H3 Z5.",
				"G0 Z-40.375", "G41 G1 X50.688 Y-11.438 D3 F49.", "G3 X64.626 Y2.5 Z-39.5 I0 J13.938", "G3 I-17.126 J0 Z-36.",
				"G3 X50.688 Y16.438 Z-35.125 I-13.938 J0", "G40 G1 X47.5 Y2.5", "G0 Z50.", "M30");
		Hole hole = milling.holes().get(0);
		assertThat(hole.made()).isTrue();
		assertThat(milling.finishing(hole)).hasSize(1);
	}

	@Test
	void roundAStudItIsAnExternalThread() {
		ThreadMilling milling = milling("G21 G17 G90", "T7 M6 (THREAD MILL D10. M20X1.5)", "G54 G0 X30. Y0 S2000 M3", "G43 H7 Z5.",
				"G0 Z-15.", "G1 X14.08 F500.", "G2 I-14.08 J0 Z-16.5", "G1 X30.", "G0 Z50.", "M30");
		assertThat(milling.passes()).singleElement().satisfies(p -> assertThat(p.external()).isTrue());
	}

	@Test
	void aCombAndItsPitchAreInItsName() {
		String[] blocks = HALF_ARCS.clone();
		blocks[1] = "T7 M6 (M20X1.5 COMB THREAD MILL D16. P2.0)";
		ThreadMilling milling = milling(blocks);
		assertThat(milling.tool().facts().comb().orElseThrow().value()).isTrue();
		assertThat(milling.tool().facts().pitch().orElseThrow().value()).isEqualTo(2);
		assertThat(milling.wanted().thread().orElseThrow().value().pitch()).isEqualTo(1.5);
	}
}
