package truelead.audit.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import truelead.audit.html.PlanPage;
import truelead.audit.report.Spared;
import truelead.audit.report.TextRequest;
import truelead.audit.run.JobOptions;
import truelead.audit.run.Machines;
import truelead.audit.run.ProgramLine;
import truelead.audit.terminal.Complaint;
import truelead.audit.terminal.ExitStatus;
import truelead.audit.terminal.Terminal;
import truelead.checker.job.Job;
import truelead.checker.plan.Existing;
import truelead.checker.plan.ExistingReader;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Request;
import truelead.checker.plan.Wish;
import truelead.checker.plan.Wish.Field;
import truelead.checker.profile.MachineProfile;
import truelead.checker.work.NearestOperation;
import truelead.checker.work.ThreadingOperation;

/** {@code truelead plan}: weighs the ways to make a thread and writes the program for the one recommended. */
@Command(name = "plan", description =
		"Weighs forming tap, cutting taps and thread mill for a thread, recommends one, and writes a program for a row of holes along X.",
		footer = {"", "Examples:", "  plan M8 --stock steel --hardness 28HRC --depth 12 --bottom 25 --count 4",
				"  plan '1/4-20 UNC-2B' --through 0.5in --report json", "  plan --from part.nc:42", "",
				"Exit status: 0 planned; 1 no way makes the thread as asked; 2 wrong use."})
public final class PlanCommand implements Callable<Integer> {
	private static final String BESIDE = "given beside --from";

	@Parameters(paramLabel = "CALLOUT", arity = "0..1",
			description = "A thread as drawings write it: M8, M8x1-6H, #10-32, 1/4-20 UNC-2B. With --from it may be left out.")
	private String callout = "";

	@Option(names = "--from", paramLabel = "FILE:LINE",
			description = "What else could make this thread? Takes thread, depth, stock and all else from the threading operation"
			+ " nearest to a line of a program; what is given beside goes before it.")
	private Optional<String> from = Optional.empty();

	@Option(names = "--stock", paramLabel = "NAME",
			description = "What the part is cut from: steel, stainless, cast iron, aluminium, brass...")
	private Optional<String> stock = Optional.empty();

	@Option(names = "--hardness", paramLabel = "28HRC|220HB", description = "Its hardness: HRC, HB or HV.")
	private Optional<String> hardness = Optional.empty();

	@Option(names = "--depth", paramLabel = "LENGTH",
			description = "Full thread; mm or in, bare in the callout's unit. 1.5 diameters when not given.")
	private Optional<String> depth = Optional.empty();

	@Option(names = "--bottom", paramLabel = "LENGTH", description = "Deepest point any tool may reach, drill point included.")
	private Optional<String> bottom = Optional.empty();

	@Option(names = "--through", paramLabel = "LENGTH",
			description = "The hole goes through a wall of this thickness, and is threaded all the way where --depth says no less.")
	private Optional<String> through = Optional.empty();

	@Option(names = "--count", paramLabel = "N", description = "Holes, 3 diameters apart from X0 Y0; 1 when not given.")
	private Optional<String> count = Optional.empty();

	@Option(names = "--machine", paramLabel = "FILE|NAME", description = "Machine profile.")
	private Optional<String> machine = Optional.empty();

	@Option(names = "--tools", paramLabel = "FILE", description = "Tool list, as check takes it: tools on hand come first.")
	private Optional<String> tools = Optional.empty();

	@Option(names = "--feed", paramLabel = "per-minute|per-rev",
			description = "How F is programmed; as the machine profile has it when not given.")
	private Optional<String> feed = Optional.empty();

	@Option(names = "--compensation",
			description = "Thread mills: program the wall and let the control take the cutter's radius off (G41 with D).")
	private boolean compensation;

	@Option(names = "--report", paramLabel = "FORMAT[:FILE]",
			description = "text, html or json. Without a file it goes to standard output. Default: text.")
	private String report = "text";

	private final Terminal terminal;

	/** The command, writing to a terminal. */
	public PlanCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		TextRequest asked = TextRequest.of(report, "text", "html", "json");
		Spared spared = new Spared(Stream.of(machine, tools, from.map(ProgramLine::file)).flatMap(Optional::stream).toList());
		Job job = tools.map(file -> JobOptions.withTools(Job.EMPTY, file)).orElse(Job.EMPTY);
		Optional<Existing> existing = from.map(place -> existing(place, job));
		Request request = written(existing.map(Existing::request).orElseGet(() -> understood(wish().on(Machines.find(machine)))));
		Plan plan = tools.isPresent() ? Plan.of(request, job) : Plan.of(request);
		asked.write(switch (asked.format()) {
			case "text" -> PlanText.write(plan, existing);
			case "html" -> PlanPage.write(plan, PlanText.asked(plan.request()), weighing -> PlanText.figures(weighing, plan.request(),
					existing), existing.map(PlanText::taken).orElse(""), existing.map(Existing::numbers).orElse(List.of()));
			default -> PlanJson.write(plan, existing);
		}, terminal, spared);
		return plan.chosen().isPresent() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	/** What the program makes, changed by what is given beside it. */
	private Existing existing(String place, Job job) {
		ProgramLine at = ProgramLine.of(place, job, Machines.find(machine));
		ThreadingOperation operation = NearestOperation.to(at.result().work(), at.line()).orElseThrow(() -> new Complaint("--from " + place
				+ ": the threads of this program are cut by a single point, and plans are of those that are tapped or milled"));
		MachineProfile profile = machine.isEmpty() ? at.result().work().shop().profile() : Machines.find(machine);
		Existing found = ExistingReader.of(operation, at.result()).orElseGet(() -> {
			if (callout.isBlank()) {
				throw new Complaint("--from " + place + ": nothing names the thread that " + operation.tool().name() + " makes in line "
						+ (operation.block().outermost().line() + 1) + "; give it too, as in: plan M8 --from " + place);
			}
			return ExistingReader.of(operation, at.result(), understood(new Wish(Map.of(Field.CALLOUT, callout)).on(profile)).thread(),
					BESIDE);
		});
		return found.with(understood(wish().on(profile, found.request())), BESIDE);
	}

	private static Request understood(Wish.Understood understood) {
		understood.problems().entrySet().stream().findFirst().ifPresent(problem -> {
			throw new Complaint((problem.getKey() == Field.CALLOUT ? "" : "--" + problem.getKey().name().toLowerCase(Locale.ROOT) + " ")
					+ problem.getValue());
		});
		return understood.request().orElseThrow();
	}

	/** The request, its program written as the options say. */
	private Request written(Request request) {
		if (feed.isPresent() && !feed.get().equals("per-minute") && !feed.get().equals("per-rev")) {
			throw new Complaint("--feed \"" + feed.get() + "\" is no way to program F; per-minute or per-rev is");
		}
		Request fed = feed.map(way -> request.feed(way.equals("per-rev"))).orElse(request);
		return compensation ? fed.with(Request.Option.COMPENSATION) : fed;
	}

	private Wish wish() {
		Map<Field, String> said = new EnumMap<>(Field.class);
		said.put(Field.CALLOUT, callout);
		stock.ifPresent(text -> said.put(Field.STOCK, text));
		hardness.ifPresent(text -> said.put(Field.HARDNESS, text));
		depth.ifPresent(text -> said.put(Field.DEPTH, text));
		bottom.ifPresent(text -> said.put(Field.BOTTOM, text));
		through.ifPresent(text -> said.put(Field.THROUGH, text));
		count.ifPresent(text -> said.put(Field.COUNT, text));
		said.forEach((field, text) -> {
			if (text.isBlank() && field != Field.CALLOUT) {
				throw new Complaint("--" + field.name().toLowerCase(Locale.ROOT) + " is empty");
			}
		});
		return new Wish(said);
	}
}
