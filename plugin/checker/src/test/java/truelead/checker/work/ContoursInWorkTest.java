package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import truelead.checker.machine.Interpreter;
import truelead.checker.machine.Step;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.Setting;
import truelead.grammar.ProgramText;

/** What is taken for holes, helices, feeds and faults of arcs does not depend on whether contours were followed in one step. */
class ContoursInWorkTest {

	/** The same machine, but that it follows block by block. */
	private static final MachineProfile SINGLE = MachineProfile.generic().with("incremental-words", "yes");

	@Property(tries = 120)
	void holesAndHelicesBetweenContoursAreTheSame(@ForAll Random random) {
		assertSame(random(random, 12));
	}

	/** The same where a program is longer than one chunk of text. */
	@Property(tries = 10)
	void holesAndHelicesOfLongProgramsAreTheSame(@ForAll Random random) {
		assertSame(random(random, 100));
	}

	private static void assertSame(List<String> lines) {
		ProgramFile program = new ProgramFile("main.nc", ProgramText.of(String.join("\n", lines)));
		Recorder together = recorder(program, MachineProfile.generic());
		Recorder single = recorder(program, SINGLE);
		assertThat(together.steps()).isLessThan(single.steps());
		assertThat(kept(together)).isEqualTo(kept(single));
	}

	private static Recorder recorder(ProgramFile program, MachineProfile profile) {
		Recorder recorder = new Recorder(profile, false);
		Interpreter.run(program, name -> Optional.empty(), profile, recorder);
		recorder.finish();
		return recorder;
	}

	/** All but the numbers of steps, a line each. */
	private static String kept(Recorder recorder) {
		List<String> kept = new ArrayList<>();
		recorder.kept.axisRuns.forEach(run -> kept.add("plunge " + run.place().rotary() + said(run.in())
				+ run.out().map(ContoursInWorkTest::said).orElse("") + run.top() + said(run.steps())));
		recorder.kept.arcRuns.forEach(run -> kept.add("helix " + said(run.before()) + " /" + said(run.arcs()) + " /" + said(run.after())));
		recorder.openArcs.forEach(arc -> kept.add("open arc" + said(arc)));
		recorder.trouble().forEach(trouble -> kept.add("trouble" + said(trouble.step())));
		recorder.compensation.entries().forEach(change -> kept.add("compensation" + said(change.step())));
		recorder.tools.forEach(tool -> kept.add("tool " + tool.lastMotion().map(BlockRef::line)
				+ tool.summary().feeds().stream().map(feed -> feed.odd().map(Setting::value) + " from " + feed.first().line()).toList()
				+ tool.summary().lengthOffsets() + tool.summary().movedWithoutOffset() + tool.summary().cutDry()));
		return String.join("\n", kept);
	}

	private static String said(List<? extends Step> steps) {
		return steps.stream().map(ContoursInWorkTest::said).collect(Collectors.joining());
	}

	private static String said(Step step) {
		return " " + step.getClass().getSimpleName() + step.block().line();
	}

	/** Long runs of moves and small arcs, with helices, circles, plunges, cycles and other tools between. */
	private static List<String> random(Random random, int parts) {
		String[] others = {"G3 X20. Y20. I5. J0", "G3 I5. J0", "G2 X20. Y20. Z-2. I4. J1.", "G3 I3. J0. Z-3.", "G1 Z-5. F100", "G0 Z5.",
				"G1 Z-2.", "Z3.", "G4 P100", "M8", "M9", "G41 D1 X3. Y3.", "G40 X1. Y1.", "T2 M6 (END MILL)", "G43 H2 Z20.",
				"G81 X1. Y2. Z-9. R2.", "G80", "G3 X25. Y25. R-5.", "G2 X30. Y1. R1.", "G2 X1. Y1. I1. J0.004", "G1 X20. Y20.", "G0", "G1",
				"F120.", "F500", "G18", "G17", "#1 = 5", "G0 A90.", "B-30. C10.5",
				"G1 X5. Y5. A30.", "G3 X25. Y25. CR=5. TURN=0", "G3 X25. Y25. Z-9. I5. J0 TURN=2"};
		List<String> lines = new ArrayList<>(List.of("G0 X0 Y0 Z5.", "G1 Z-1. F300."));
		for (int part = 0; part < parts; part++) {
			for (int i = 0, count = 15 + random.nextInt(60); i < count; i++) {
				contour(random, lines);
			}
			for (int i = 0, count = random.nextInt(5); i < count; i++) {
				lines.add(others[random.nextInt(others.length)]);
			}
			lines.addAll(List.of(random.nextInt(4) == 0 ? "G80" : "G17 G80", "G90 G1 X" + part + ".5 Y" + part + "."));
		}
		lines.add("G17");
		for (int i = 0; i < 40; i++) {
			lines.add("X" + (i + 50) + ". Y" + i + ".");
		}
		return lines;
	}

	private static void contour(Random random, List<String> lines) {
		switch (random.nextInt(14)) {
			case 0 -> {
				double radius = 0.5 + random.nextInt(30) / 10.0;
				double begin = random.nextDouble() * 7;
				double end = begin + random.nextDouble() * 6;
				boolean left = random.nextBoolean();
				double x = random.nextInt(50);
				double y = random.nextInt(50);
				lines.add("G1 " + place(x + radius * Math.cos(begin), y + radius * Math.sin(begin)));
				for (int i = 0, parts = 1 + random.nextInt(3); i < parts; i++) {
					double from = begin + (left ? 1 : -1) * (end - begin) * i / parts;
					double to = begin + (left ? 1 : -1) * (end - begin) * (i + 1) / parts;
					lines.add((i > 0 ? "" : left ? "G3 " : "G2 ") + place(x + radius * Math.cos(to), y + radius * Math.sin(to))
							+ String.format(Locale.ROOT, " I%.3f J%.3f", -radius * Math.cos(from), -radius * Math.sin(from)));
				}
				lines.add("G1 " + place(x + 7, y));
			}
			case 1 -> lines.add(String.format(Locale.ROOT, "Z%.1f", -random.nextInt(4) - 0.5));
			case 2 -> up(random, lines);
			case 3 -> lines.add("G1 F" + (200 + 50 * random.nextInt(5)) + ".");
			case 4 -> lines.add(place(random.nextInt(60), random.nextInt(60) + 0.25) + " A" + random.nextInt(90) + ". C="
					+ random.nextInt(9));
			default -> lines.add(place(random.nextInt(60), random.nextInt(60) + 0.25));
		}
	}

	/** Some moves along Z, fed and rapid. */
	private static void up(Random random, List<String> lines) {
		for (int i = 0, count = 2 + random.nextInt(3); i < count; i++) {
			lines.add(String.format(Locale.ROOT, "%sZ%.1f", random.nextInt(3) == 0 ? "" : random.nextBoolean() ? "G0 " : "G1 ",
					random.nextInt(8) - 5.5));
		}
		lines.add("G1");
	}

	private static String place(double x, double y) {
		return String.format(Locale.ROOT, "X%.3f Y%.3f", x, y);
	}
}
