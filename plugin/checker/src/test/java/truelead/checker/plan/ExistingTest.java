package truelead.checker.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.CheckResult;
import truelead.checker.Samples;
import truelead.checker.job.Job;
import truelead.checker.plan.Existing.Part;
import truelead.checker.profile.MachineProfile;

/** What a program says of its own thread, as a plan would be asked for it. */
class ExistingTest {

	@Test
	void aThroughHoleTakesItsWallAndHasNoBottom() {
		Existing existing = of("G21 G90 G94", "(M8X1.25 TAP)", "(HOLE: THROUGH 20)", "T3 M6 (SPIRAL POINT TAP)", "G0 X0 Y0 S400 M3",
				"G43 Z25. H3", "G84 Z-26. R5. F500", "X30.", "G80", "M30");

		assertThat(existing.request().through()).isTrue();
		assertThat(existing.request().depth()).isEqualTo(20);
		assertThat(existing.request().bottom()).isEmpty();
		assertThat(existing.request().count()).isEqualTo(2);
		assertThat(existing.way()).contains(Method.SPIRAL_POINT);
		assertThat(existing.origins().get(Part.DEPTH)).startsWith("called out in a note");
	}

	@Test
	void aThreadShorterThanItsWallStaysSo() {
		Existing existing = of("G21 G90 G94", "(M8X1.25 TAP 12 DEEP)", "(HOLE: THROUGH 20)", "T3 M6", "G0 X0 Y0 S400 M3", "G43 Z25. H3",
				"G84 Z-16. R5. F500", "G80", "M30");

		assertThat(existing.request().depth()).isEqualTo(12);
		assertThat(existing.request().wall()).isEqualTo(20);
	}

	@Test
	void aBlindHoleKeepsAQuarterOfItsDrillAboveTheFarFace() {
		Existing existing = of("G21 G90 G94", "(M8X1.25 TAP)", "(HOLE: WALL 20, BLIND)", "T3 M6", "G0 X0 Y0 S400 M3", "G43 Z25. H3",
				"G84 Z-12. R5. F500", "G80", "M30");

		assertThat(existing.request().bottom()).hasValue(20 - 6.75 / 4);
	}

	@Test
	void anInchProgramKeepsItsUnit() {
		Existing existing = of("G20 G90 G94", "(1/4-20 UNC TAP)", "T3 M6", "G0 X0 Y0 S350 M3", "G43 Z1. H3", "G84 Z-.5 R.2 F17.5",
				"G80", "M30");

		assertThat(existing.numbers()).anySatisfy(number -> {
			assertThat(number.name()).isEqualTo("depth");
			assertThat(number.value()).isEqualTo("0.375 in");
			assertThat(number.origin()).isEqualTo("programmed: the tool goes to 0.5 in, less its lead of 2.5 turns");
		});
		assertThat(existing.way()).as("of a tap of which nothing more is said").isEmpty();
	}

	@Test
	void whatAPersonChangesIsThatPersons() {
		Existing existing = of("G21 G90 G94", "(STOCK: STEEL, 28 HRC)", "(M8X1.25 TAP DEPTH 12)", "T3 M6", "G0 X0 Y0 S400 M3",
				"G43 Z25. H3", "G84 Z-16. R5. F500", "G80", "M30");
		Request asked = existing.request();
		Existing changed = existing.with(new Request(asked.thread(), asked.stock(), 10, asked.bottom(), asked.through(), asked.count(),
				asked.profile()), "typed");

		assertThat(changed.origins().get(Part.DEPTH)).isEqualTo("typed");
		assertThat(changed.origins().get(Part.STOCK)).isEqualTo(existing.origins().get(Part.STOCK)).startsWith("called out in a note");
	}

	@Test
	void aSpeedOutsideTheBandIsSaidToBe() {
		Existing existing = of("G21 G90 G94", "(STOCK: STEEL)", "(M8X1.25)", "T3 M6 (FORM TAP)", "G0 X0 Y0 S2000 M3", "G43 Z25. H3",
				"G84 Z-16. R5. F2500", "G80", "M30");
		Weighing forming = Plan.of(existing.request()).weighings().get(Method.FORM_TAP.ordinal());

		assertThat(existing.beside(forming)).containsExactly("made so now by T3, 50.3 m/min, above the band from memory");
	}

	private static Existing of(String... blocks) {
		CheckResult result = Samples.check(MachineProfile.generic(), Job.EMPTY, blocks);
		return ExistingReader.of(result.work().operations().get(0), result).orElseThrow();
	}
}
