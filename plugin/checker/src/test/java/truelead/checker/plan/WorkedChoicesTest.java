package truelead.checker.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.plan.Wish.Field;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.grammar.ProgramText;

/** Ten choices as a machinist argues them. Where no source stands beside the argument it is common practice, no source. */
class WorkedChoicesTest {
	private static final MachineProfile MILL = MachineProfile.generic();

	/**
	 * Soft, long chips, wall of 2 D: forming makes none, and at 800 N/mm2 its torque is no matter. Hole by Machinery's Handbook, cold form
	 * tapping.
	 */
	@Test
	void softAluminiumThroughIsFormed() {
		Plan plan = plan(MILL, "M6", Field.STOCK, "aluminium", Field.THROUGH, "12");
		chosen(plan, Method.FORM_TAP, "DRILL DIA 5.55 ", "G84 Z-15.5");
		assertThat(pros(plan, Method.FORM_TAP)).contains("the stock flows").anyMatch(p -> p.startsWith("no chips"));
		assertThat(plan.weighings().get(Method.SPIRAL_POINT.ordinal()).possible()).isTrue();
	}

	/** Above 35 HRC metal does not flow and thin edges chip; a blind hole leaves a mill, which also comes out of it when it breaks. */
	@Test
	void hardenedSteelBlindIsMilled() {
		Plan plan = plan(MILL, "M8", Field.STOCK, "steel", Field.HARDNESS, "45HRC", Field.DEPTH, "12");
		chosen(plan, Method.THREAD_MILL, "THREAD MILL DIA", "G3 X");
		assertThat(out(plan, Method.FORM_TAP)).contains("above 35 HRC the metal does not flow");
		assertThat(out(plan, Method.SPIRAL_FLUTE)).contains("above 35 HRC its thin edges chip");
		assertThat(MillCut.in(plan.chosen().orElseThrow(), plan.request()).orElseThrow().radii()).hasSize(2);
	}

	/** Short, crumbling chips that straight flutes hold, a stiff tap that the abrasive stock wears slowly; forming crumbles it. */
	@Test
	void castIronIsTappedWithStraightFlutes() {
		Plan plan = plan(MILL, "M10", Field.STOCK, "cast iron", Field.DEPTH, "15");
		chosen(plan, Method.STRAIGHT_FLUTE, "DRILL DIA 8.5 ", "STRAIGHT FLUTE TAP M10X1.5");
		assertThat(out(plan, Method.FORM_TAP)).anyMatch(o -> o.contains("crumbles"));
	}

	/** Tough chips jam in a small blind hole and break a thin tap; austenitic stainless flows, so none are made. */
	@Test
	void smallBlindHolesInStainlessAreFormed() {
		Plan plan = plan(MILL, "M3", Field.STOCK, "stainless 316", Field.DEPTH, "6");
		chosen(plan, Method.FORM_TAP, "DRILL DIA 2.8 ", "FORM TAP M3X0.5");
		assertThat(plan.weighings().get(Method.FORM_TAP.ordinal()).cons()).anyMatch(c -> c.contains("lubrication"));
	}

	/**
	 * The joint seals by the tap's depth: L1 of ASME B1.20.1 is 0.2278, the tap stands 0.459 out of its ring (ASME B94.9, from memory):
	 * 0.687.
	 */
	@Test
	void pipeTaperIsTappedToTheGaugePlane() {
		Plan plan = plan(MILL, "1/4-18 NPT", Field.STOCK, "steel");
		chosen(plan, Method.STRAIGHT_FLUTE, "DRILL 7/16 DIA 0.4375", "G84 Z-0.687 ");
		assertThat(out(plan, Method.FORM_TAP)).contains("taper threads are not made with it");
		assertThat(out(plan, Method.THREAD_MILL)).anyMatch(o -> o.contains("cone"));
	}

	/** Cutting takes 2100 x 3.5^2 x 30 / 8000 = 96 N m (formula and kc from memory); the spindle has 60. A mill needs a few. */
	@Test
	void aLargeThreadOnASmallMachineIsMilled() {
		Plan plan = plan(MILL.with("spindle-torque", "60"), "M30", Field.STOCK, "steel", Field.THROUGH, "30");
		chosen(plan, Method.THREAD_MILL, "DRILL DIA 26.5 ", "COUNTERSINK");
		assertThat(out(plan, Method.SPIRAL_POINT)).singleElement().asString().contains("takes about 96.47 N m").contains("60 N m");
		assertThat(out(plan, Method.STRAIGHT_FLUTE)).anyMatch(o -> o.contains("stalls"));
	}

	/** One hole in a titanium part: minutes of milling are nothing beside the part that a seized tap scraps; forty holes are tapped. */
	@Test
	void oneHoleInACostlyPartIsMilled() {
		Plan plan = plan(MILL, "M6", Field.STOCK, "titanium", Field.DEPTH, "9");
		chosen(plan, Method.THREAD_MILL, "SINGLE FORM M6X1", "G3 X");
		assertThat(plan.weighings().get(Method.SPIRAL_FLUTE.ordinal()).cons()).anyMatch(c -> c.contains("scrap the part: this stock"));
		chosen(plan(MILL, "M6", Field.STOCK, "titanium", Field.DEPTH, "9", Field.COUNT, "40"), Method.SPIRAL_FLUTE, "40 HOLES", "X702.");
	}

	/**
	 * Tool and drill point may go 16 deep for 12 of thread: taps need lead and chip room below, a mill three quarters of a pitch. Geometry.
	 */
	@Test
	void littleRoomBelowIsForTheMill() {
		Plan plan = plan(MILL, "M8", Field.STOCK, "steel", Field.HARDNESS, "28HRC", Field.DEPTH, "12", Field.BOTTOM, "16");
		chosen(plan, Method.THREAD_MILL, "Z-15.63", "Z-12.94");
		assertThat(out(plan, Method.FORM_TAP)).singleElement().asString().contains("tools may reach 16 mm");
		assertThat(plan(MILL, "M8", Field.DEPTH, "12", Field.BOTTOM, "14").why()).contains("the deepest that the room gives is 10.3")
				.contains("by thread mill");
	}

	/** Thirty large threads: a comb makes each in one turn where a single form goes round for every pitch. */
	@Test
	void manyLargeThreadsAreMilledWithAComb() {
		Plan plan = plan(MILL, "M27x2", Field.STOCK, "steel", Field.DEPTH, "25", Field.COUNT, "30");
		chosen(plan, Method.COMB_MILL, "COMB THREAD MILL DIA", "30 HOLES");
		Map<Method, Double> seconds = new EnumMap<>(Method.class);
		plan.weighings().forEach(w -> seconds.put(w.method(), w.demand().orElseThrow().seconds()));
		assertThat(seconds.get(Method.COMB_MILL)).isLessThan(seconds.get(Method.THREAD_MILL) / 3);
	}

	/**
	 * A through hole in tough steel, unhardened 32 HRC: too hard to form with ease, the spiral point drives the chips out below (DIN 2197
	 * form B).
	 */
	@Test
	void throughHolesInTemperedSteelAreTappedWithASpiralPoint() {
		Plan plan = plan(MILL, "1/2-13 UNC", Field.STOCK, "steel", Field.HARDNESS, "32HRC", Field.THROUGH, "0.75in", Field.COUNT, "6");
		chosen(plan, Method.SPIRAL_POINT, "DRILL 27/64 DIA", "SPIRAL POINT TAP 1/2-13 UNC");
		assertThat(pros(plan, Method.SPIRAL_POINT)).anyMatch(p -> p.contains("chips ahead"));
	}

	private static Plan plan(MachineProfile machine, String callout, Object... asked) {
		Map<Field, String> said = new EnumMap<>(Field.class);
		said.put(Field.CALLOUT, callout);
		for (int i = 0; i < asked.length; i += 2) {
			said.put((Field) asked[i], (String) asked[i + 1]);
		}
		return Plan.of(new Wish(said).on(machine).request().orElseThrow());
	}

	private static void chosen(Plan plan, Method method, String... inTheProgram) {
		assertThat(plan.chosen().orElseThrow().method()).as(plan.why()).isEqualTo(method);
		String program = String.join("\n", plan.blocks()) + "\n";
		assertThat(program).contains(inTheProgram);
		ProgramFile file = new ProgramFile("plan.nc", ProgramText.of(program));
		assertThat(Checker.check(file, ProgramFolder.EMPTY, Job.EMPTY, plan.request().profile(), RuleSettings.DEFAULT).findings())
				.filteredOn(finding -> finding.severity() != Severity.INFORMATION).isEmpty();
	}

	private static List<String> pros(Plan plan, Method method) {
		return plan.weighings().get(method.ordinal()).pros();
	}

	private static List<String> out(Plan plan, Method method) {
		return plan.weighings().get(method.ordinal()).ruledOut();
	}
}
