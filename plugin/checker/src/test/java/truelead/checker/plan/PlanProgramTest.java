package truelead.checker.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import truelead.checker.Checker;
import truelead.checker.callout.CalloutReader;
import truelead.checker.job.Job;
import truelead.checker.job.Stock;
import truelead.checker.job.StockGroup;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.grammar.ProgramText;

/** What the plan writes, our own check takes: coarse and fine, metric and inch, every way, blind and through. */
class PlanProgramTest {
	private static final List<String> THREADS = List.of("M3", "M4", "M5", "M6", "M8", "M8x1", "M10", "M10x1.25", "M10x1", "M12", "M12x1.5",
			"M12x1.25", "M14", "M14x1.5",
			"M16", "M16x1.5", "M18", "M18x1.5", "M20", "M20x1.5", "M22", "M22x1.5", "M24", "M24x2", "#4-40", "#4-48", "#5-40", "#6-32",
			"#6-40", "#8-32", "#8-36", "#10-24",
			"#10-32", "#12-24", "#12-28", "1/4-20", "1/4-28", "5/16-18", "5/16-24", "3/8-16", "3/8-24", "7/16-14", "7/16-20", "1/2-13",
			"1/2-20", "9/16-12", "9/16-18",
			"5/8-11", "5/8-18", "3/4-10", "3/4-16", "7/8-9", "7/8-14", "1-8", "1-12");

	@ParameterizedTest
	@EnumSource(Method.class)
	void theProgramPassesTheCheck(Method method) {
		for (String thread : THREADS) {
			ThreadSpec spec = CalloutReader.readExactly(thread).orElseThrow().spec();
			for (double depth : new double[] { 0.8, 1.5, 2.5 }) {
				boolean through = method == Method.SPIRAL_POINT || depth == 2.5;
				Request request = new Request(spec, Optional.empty(), depth * spec.diameter(), OptionalDouble.empty(), through, 3,
						MachineProfile.generic());
				if (HolePlan.of(method, request).isEmpty()) {
					// only forming asks for a hole so close that no drill on sale may give it; the plan rules it out then
					assertThat(method).isEqualTo(Method.FORM_TAP);
					assertThat(Plan.of(request).weighings().get(method.ordinal()).possible()).isFalse();
					continue;
				}
				List<String> program = Plan.program(method, request);
				assertThat(alarms(program)).as(() -> thread + " " + method + " " + depth + "\n" + String.join("\n", program)).isEmpty();
			}
		}
	}

	@Test
	void aMachineThatAsksForARigidTapCodeGetsIt() {
		MachineProfile machine = MachineProfile.generic().with("m135", "rigid-tap-on").with("rigid-tap-required", "yes");
		Request request = new Request(spec("M6"), Optional.empty(), 9, OptionalDouble.empty(), false, 2, machine);
		List<String> program = Plan.program(Method.SPIRAL_FLUTE, request);
		int cycle = program.indexOf(program.stream().filter(line -> line.contains("G84")).findFirst().orElseThrow());
		assertThat(program.get(cycle - 1)).matches("M\\d+ S\\d+");
		assertThat(program.get(cycle - 1).split(" ")[1])
				.isEqualTo("S" + Figure.plain(Demand.of(Method.SPIRAL_FLUTE, request,
						HolePlan.of(Method.SPIRAL_FLUTE, request).orElseThrow()).speed(), 1));
		assertThat(alarms(program, machine)).isEmpty();
	}

	@Test
	void aSpindleThatStallsRulesTheTapOut() {
		// cut: 2100 x 3² x 24 / 8000 = 56.7 N m
		Request request = new Request(spec("M24"), Optional.of(new Stock(StockGroup.STEEL, "STEEL", OptionalDouble.empty())), 24,
				OptionalDouble.empty(), true, 1, MachineProfile.generic().with("spindle-torque", "50"));
		Plan plan = Plan.of(request);
		assertThat(plan.weighings().get(Method.SPIRAL_POINT.ordinal()).ruledOut()).singleElement().asString()
				.contains("takes about 56.7 N m").contains("the spindle gives 50 N m");
		assertThat(plan.chosen().orElseThrow().method()).isEqualTo(Method.THREAD_MILL);
	}

	private static ThreadSpec spec(String thread) {
		return CalloutReader.readExactly(thread).orElseThrow().spec();
	}

	private static List<String> alarms(List<String> program) {
		return alarms(program, MachineProfile.generic());
	}

	private static List<String> alarms(List<String> program, MachineProfile machine) {
		ProgramFile file = new ProgramFile("plan.nc", ProgramText.of(String.join("\n", program) + "\n"));
		var result = Checker.check(file, ProgramFolder.EMPTY, Job.EMPTY, machine, RuleSettings.DEFAULT);
		assertThat(result.work().operations()).hasSize(1);
		assertThat(result.work().operations().get(0).wanted().statedThread()).isPresent();
		return result.findings().stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> f.rule() + ": " + f.message()).toList();
	}
}
