package truelead.audit.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import truelead.audit.Complaint;
import truelead.audit.ExitStatus;
import truelead.audit.Terminal;
import truelead.audit.html.PlanPage;
import truelead.audit.run.JobOptions;
import truelead.audit.run.Machines;
import truelead.checker.job.Fact;
import truelead.checker.job.Job;
import truelead.checker.job.Stock;
import truelead.checker.machine.LengthUnit;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Request;
import truelead.checker.thread.Callout;
import truelead.checker.thread.CalloutReader;
import truelead.checker.thread.NearestSpelling;
import truelead.checker.thread.ThreadSpec;

/** {@code truelead plan}: weighs the ways to make a thread and writes the program for the one recommended. */
@Command(name = "plan", description = "Weighs forming tap, cutting taps and thread mill for a thread, recommends one, and writes a program for a row of holes along X.",
		footer = {"", "Examples:", "  plan M8 --stock steel --hardness 28HRC --depth 12 --bottom 25 --count 4", "  plan '1/4-20 UNC-2B' --through 0.5in --report json", "",
				"Exit status: 0 planned; 1 no way makes the thread as asked; 2 wrong use."})
public final class PlanCommand implements Callable<Integer> {
	private static final int SUGGESTIONS = 3;
	private static final int MOST_HOLES = 10_000;
	private static final double USUAL_DEPTH = 1.5;

	/** How the result is written. */
	enum Report {
		TEXT, HTML, JSON
	}

	@Parameters(paramLabel = "CALLOUT", description = "A thread as drawings write it: M8, M8x1-6H, #10-32, 1/4-20 UNC-2B.")
	private String callout;

	@Option(names = "--stock", paramLabel = "NAME", description = "What the part is cut from: steel, stainless, cast iron, aluminium, brass...")
	private Optional<String> stock = Optional.empty();

	@Option(names = "--hardness", paramLabel = "28HRC|220HB", description = "Its hardness: HRC, HB or HV.")
	private Optional<String> hardness = Optional.empty();

	@Option(names = "--depth", paramLabel = "LENGTH", description = "Full thread; mm or in, bare in the callout's unit. 1.5 diameters when not given.")
	private Optional<String> depth = Optional.empty();

	@Option(names = "--bottom", paramLabel = "LENGTH", description = "Deepest point any tool may reach, drill point included.")
	private Optional<String> bottom = Optional.empty();

	@Option(names = "--through", paramLabel = "LENGTH", description = "The hole goes through a wall of this thickness, and is threaded all the way.")
	private Optional<String> through = Optional.empty();

	@Option(names = "--count", paramLabel = "N", defaultValue = "1", description = "Holes, 3 diameters apart from X0 Y0; 1 when not given.")
	private int count;

	@Option(names = "--machine", paramLabel = "FILE|NAME", defaultValue = "", description = "Machine profile.")
	private String machine;

	@Option(names = "--tools", paramLabel = "FILE", description = "Tool list, as check takes it: taps on hand come first.")
	private Optional<String> tools = Optional.empty();

	@Option(names = "--report", paramLabel = "text|html|json", defaultValue = "TEXT", description = "How to write the result; text when not given.")
	private Report report;

	private final Terminal terminal;

	/** The command, writing to a terminal. */
	public PlanCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		Request request = request();
		Plan plan = tools.map(file -> Plan.of(request, JobOptions.withTools(Job.EMPTY, file))).orElseGet(() -> Plan.of(request));
		terminal.out().print(switch (report) {
			case TEXT -> PlanText.write(plan);
			case HTML -> PlanPage.write(plan, PlanText.asked(plan.request()), weighing -> PlanText.figures(weighing, plan.request()));
			case JSON -> PlanJson.write(plan);
		});
		return plan.chosen().isPresent() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private Request request() {
		Callout read = CalloutReader.readExactly(callout).orElseThrow(() -> new Complaint("\"" + callout + "\" is no thread that is known here; the nearest spellings: "
				+ String.join(", ", NearestSpelling.of(callout, SUGGESTIONS))));
		ThreadSpec thread = read.spec();
		if (thread.system().taper()) {
			throw new Complaint(thread.designation() + " is a taper thread; plan makes parallel threads only");
		}
		if (count < 1 || count > MOST_HOLES) {
			throw new Complaint("--count " + count + " is no number of holes from 1 to " + MOST_HOLES);
		}
		if (bottom.isPresent() && through.isPresent()) {
			throw new Complaint("--bottom and --through: a hole is blind or goes through; give one");
		}
		LengthUnit unit = thread.unit();
		Optional<Double> wall = through.map(t -> Lengths.mm("--through", t, unit));
		double asked = depth.map(d -> Lengths.mm("--depth", d, unit)).orElseGet(() -> read.depth().map(d -> d.mm(unit)).orElse(USUAL_DEPTH * thread.diameter()));
		if (depth.isPresent() && wall.isPresent() && asked > wall.get() + 1e-9) {
			throw new Complaint("--depth " + depth.get() + " is more than the wall, --through " + through.orElseThrow());
		}
		OptionalDouble limit = bottom.map(b -> OptionalDouble.of(Lengths.mm("--bottom", b, unit))).orElse(OptionalDouble.empty());
		return new Request(thread, stock(), wall.orElse(asked), limit, wall.isPresent(), count, Machines.find(machine));
	}

	private Optional<Stock> stock() {
		if (stock.isEmpty() && hardness.isEmpty()) {
			return Optional.empty();
		}
		hardness.ifPresent(PlanCommand::examine);
		String words = stock.map(PlanCommand::examineName).orElse("");
		String note = words + (stock.isPresent() && hardness.isPresent() ? ", " : "") + hardness.map(h -> spaced(h.strip())).orElse("");
		Job job = Job.EMPTY.withStock(note);
		Stock known = job.stock().map(Fact::value).orElseThrow(() -> new Complaint("--stock \"" + stock.orElse("") + "\" is no stock that is known here; steel, stainless,"
				+ " cast iron, aluminium, brass, bronze, copper, titanium, nickel, magnesium, zinc or plastic"));
		return Optional.of(new Stock(known.group(), note.toUpperCase(Locale.ROOT), known.hardness()));
	}

	/** Only what can stand in a comment of the program that is written. */
	private static String examineName(String name) {
		boolean plain = name.length() <= 60 && name.chars().allMatch(c -> c < 128 && (Character.isLetterOrDigit(c) || " .-".indexOf(c) >= 0));
		if (!plain || name.isBlank()) {
			throw new Complaint("--stock takes a name of letters, digits, spaces, dots and dashes, up to 60 characters");
		}
		return name.strip();
	}

	private static void examine(String written) {
		String text = written.strip().toUpperCase(Locale.ROOT);
		int scale = text.endsWith("HRC") ? 3 : text.endsWith("HB") || text.endsWith("HV") ? 2 : 0;
		double value = scale == 0 ? Double.NaN : Lengths.number(text.substring(0, text.length() - scale).strip());
		if (!(value > 0 && value <= (scale == 3 ? 70 : 1000))) {
			throw new Complaint("--hardness \"" + written + "\" is no hardness; 28HRC, 220HB or 230HV is");
		}
	}

	private static String spaced(String written) {
		String text = written.toUpperCase(Locale.ROOT);
		int scale = text.endsWith("HRC") ? 3 : 2;
		return text.substring(0, text.length() - scale).strip() + " " + text.substring(text.length() - scale);
	}
}
