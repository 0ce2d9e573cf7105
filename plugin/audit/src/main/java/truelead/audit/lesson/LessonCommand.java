package truelead.audit.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import truelead.audit.report.Spared;
import truelead.audit.run.JobOptions;
import truelead.audit.run.ProgramLine;
import truelead.audit.source.Paths;
import truelead.audit.terminal.Complaint;
import truelead.audit.terminal.ExitStatus;
import truelead.audit.terminal.Terminal;
import truelead.checker.lesson.Control;
import truelead.checker.lesson.Exercise;
import truelead.checker.lesson.Filled;
import truelead.checker.lesson.Filling;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.checker.lesson.Values;

/** {@code truelead lesson}: writes a lesson's page, with the numbers of a finding or of one's own, and its exercises. */
@Command(name = "lesson", sortOptions = false,
		description = "Shows what a wrong feed, depth, helix or pass does to tool and thread, with numbers to move, and gives exercises.",
		footer = {"", "Examples:", "  lesson feed --out feed.html", "  lesson --from part.nc:42 --out why.html",
				"  lesson depth --set drill=5 --set drillTip=15 --report text", "  lesson passes --set begin=0.2 --out beside.html",
				"  lesson feed --exercise 1 --out feed-1.nc", "  lesson feed --exercise 1 --check feed-1.nc", "",
				"Exit status: 0 written, or the exercise is done; 1 something is left to do; 2 wrong use."})
public final class LessonCommand implements Callable<Integer> {

	/** How a lesson is written. */
	enum Report {
		HTML, TEXT
	}

	@Parameters(paramLabel = "LESSON", arity = "0..1",
			description = "feed, depth, helix or passes; with --from it may be left out, without both the lessons are listed.")
	private Optional<String> name = Optional.empty();

	@Option(names = "--from", paramLabel = "FILE:LINE",
			description = "Takes the numbers of the finding at a line of a program, or of the threading operation nearest to it.")
	private Optional<String> from = Optional.empty();

	@Option(names = "--set", paramLabel = "NAME=VALUE",
			description = "Sets a number, in its unit; may be given several times. --report text names them.")
	private List<String> settings = new ArrayList<>();

	@Option(names = "--report", paramLabel = "html|text", defaultValue = "HTML",
			description = "How to write the lesson; html when not given.")
	private Report report;

	@Option(names = "--exercise", paramLabel = "N", description = "Writes the program of an exercise, 1 to 3.")
	private Optional<Integer> exercise = Optional.empty();

	@Option(names = "--check", paramLabel = "FILE", description = "Looks at what was made of the exercise.")
	private Optional<String> check = Optional.empty();

	@Option(names = "--out", paramLabel = "FILE", description = "Where to write; standard output when not given.")
	private Optional<String> out = Optional.empty();

	@Mixin
	private JobOptions job = new JobOptions();

	private final Terminal terminal;

	/** The command, writing to a terminal. */
	public LessonCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		if (check.isPresent() && exercise.isEmpty()) {
			throw new Complaint("--check looks at an exercise; give its number with --exercise");
		}
		if (exercise.isPresent() && (from.isPresent() || !settings.isEmpty())) {
			throw new Complaint("--exercise has numbers of its own; leave out --from and --set");
		}
		Optional<Lesson> lesson = name.map(LessonCommand::lesson);
		if (exercise.isPresent()) {
			return practise(Exercise.of(lesson.orElseThrow(() -> new Complaint("--exercise: of which lesson? " + names())).name(),
					exercise.get()).orElseThrow(() -> new Complaint("--exercise " + exercise.get() + ": there are 1 to 3")));
		}
		if (lesson.isEmpty() && from.isEmpty()) {
			Lessons.ALL.forEach(one -> terminal.say(String.format(Locale.ROOT, "%-7s", one.name()) + one.title() + ". "
					+ one.introduction() + "\n"));
			return ExitStatus.CLEAN;
		}
		Filled filled = set(from.map(place -> from(place, lesson))
				.orElseGet(() -> new Filled(lesson.orElseThrow(), Values.usual(lesson.orElseThrow()), "")));
		write(report == Report.TEXT ? LessonText.write(filled) : LessonPage.write(filled));
		return ExitStatus.CLEAN;
	}

	private int practise(Exercise task) {
		if (check.isEmpty()) {
			write(task.program());
			return ExitStatus.CLEAN;
		}
		List<String> left = Exercise.left(Programs.of(task), Programs.of(check.get(), job));
		terminal.say((left.isEmpty() ? "Done: nothing is left to find." : "Not yet. " + task.task()) + "\n");
		left.forEach(one -> terminal.say("  " + one + "\n"));
		return left.isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private Filled from(String place, Optional<Lesson> lesson) {
		ProgramLine at = ProgramLine.of(place, job.job(), job.profile());
		return new Filling(at.result()).at(at.line(), lesson)
				.orElseThrow(() -> new Complaint("--from " + place + ": the thread nearest to that line is of no use for the lesson "
						+ lesson.map(Lesson::name).orElse("") + "; " + made(at)));
	}

	/** How the thread nearest to a line is made. */
	private static String made(ProgramLine at) {
		return new Filling(at.result()).at(at.line(), Optional.empty()).map(nearest -> switch (nearest.lesson().name()) {
			case "passes" -> "it is turned";
			case "helix" -> "it is milled";
			default -> "it is tapped";
		}).orElse("there is none");
	}

	private Filled set(Filled filled) {
		Values values = filled.values();
		for (String setting : settings) {
			int equals = setting.indexOf('=');
			String key = equals < 0 ? setting : setting.substring(0, equals);
			Control control = filled.lesson().controls().stream().filter(c -> c.name().equals(key)).findFirst()
					.orElseThrow(() -> new Complaint("--set " + setting + ": no such number; there are "
							+ filled.lesson().controls().stream().map(Control::name).collect(Collectors.joining(", "))));
			values = values.with(key, value(setting, equals, control));
		}
		return new Filled(filled.lesson(), values, filled.about());
	}

	private static double value(String setting, int equals, Control control) {
		String text = equals < 0 ? "" : setting.substring(equals + 1).strip();
		double value;
		try {
			value = text.matches("[0-9]*\\.?[0-9]+|[0-9]+\\.") ? Double.parseDouble(text) : control.choices().contains(text)
					? control.choices().indexOf(text) : Double.NaN;
		} catch (NumberFormatException none) {
			value = Double.NaN;
		}
		if (!(value >= control.least() && value <= control.most())) {
			throw new Complaint("--set " + setting + ": a number from " + LessonPage.plain(control.least()) + " to "
					+ LessonPage.plain(control.most()) + (control.unit().isEmpty() ? "" : " " + control.unit())
					+ (control.choices().isEmpty() ? "" : ", or one of: " + String.join("; ", control.choices())));
		}
		return value;
	}

	private static Lesson lesson(String typed) {
		return Lessons.named(typed).orElseThrow(() -> new Complaint("no lesson \"" + typed + "\"; there are " + names()));
	}

	private static String names() {
		return Lessons.ALL.stream().map(Lesson::name).collect(Collectors.joining(", "));
	}

	private void write(String content) {
		if (out.isEmpty()) {
			terminal.say(content);
			return;
		}
		Spared spared = new Spared(job.files());
		from.map(place -> Paths.of(ProgramLine.file(place))).ifPresent(spared::add);
		Programs.write(spared.target(out.get()), content);
	}
}
