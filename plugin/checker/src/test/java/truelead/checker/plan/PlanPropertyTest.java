package truelead.checker.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.job.Stock;
import truelead.checker.job.StockGroup;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Hand;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.grammar.ProgramText;

/**
 * Every thread of the tables by every way that can be, with options drawn from a seed: the program is followed by {@link PlainMachine},
 * held to arithmetic of its own, and our check finds nothing in it. More by {@code -Dplan.rounds=N}; one in the build.
 */
class PlanPropertyTest {
	private static final StockGroup[] STOCKS = StockGroup.values();
	private static final int ROUNDS = Integer.getInteger("plan.rounds", 1);
	private static final int EVERY = Integer.getInteger("plan.every", 11);

	@Test
	void whatIsPlannedIsMade() {
		List<String> faults = new ArrayList<>();
		Map<String, Integer> made = new TreeMap<>();
		Random random = new Random(8);
		List<ThreadSpec> threads = ThreadTable.standard().all();
		for (int round = 0; round < ROUNDS; round++) {
			for (int i = round % EVERY; i < threads.size(); i += EVERY) {
				Request request = request(threads.get(i), random);
				for (Weighing weighing : Plan.of(request).weighings()) {
					if (weighing.possible()) {
						made.merge(weighing.method().title(), 1, Integer::sum);
						faults(weighing, request).forEach(f -> faults.add(request.thread() + " " + weighing.method() + " "
								+ asked(request) + ": " + f));
					}
				}
			}
		}
		if (ROUNDS > 1) {
			System.out.println("planned: " + made);
		}
		assertThat(faults).as(made.toString()).isEmpty();
		assertThat(made).hasSize(Method.values().length);
	}

	@Test
	void whereTheRoomIsTooLittleWhatItGivesCanBeMade() {
		List<String> faults = new ArrayList<>();
		int said = 0;
		Random random = new Random(3);
		for (ThreadSpec thread : ThreadTable.standard().all()) {
			double depth = (0.8 + random.nextDouble()) * thread.diameter();
			Request request = new Request(thread, stock(random), depth, OptionalDouble.of(depth * (0.7 + 0.5 * random.nextDouble())), false,
					1, MachineProfile.generic());
			Optional<Weighing> deepest = Plan.of(request).deepest();
			if (deepest.isPresent()) {
				said++;
				if (!Plan.of(request.to(deepest.get().deepest())).weighings().get(deepest.get().method().ordinal()).possible()) {
					faults.add(thread + " " + deepest.get().method() + " " + deepest.get().deepest());
				}
			}
		}
		assertThat(faults).isEmpty();
		assertThat(said).isGreaterThan(200);
	}

	private static Request request(ThreadSpec table, Random random) {
		ThreadSpec thread = random.nextInt(8) == 0 && !table.system().taper() ? table.withHand(Hand.LEFT) : table;
		boolean lathe = random.nextInt(5) == 0;
		MachineProfile profile = MachineProfile.named(lathe ? "turning"
				: List.of("milling-metric", "milling-inch", "rs274").get(random.nextInt(3)));
		boolean through = random.nextBoolean();
		double depth = thread.system().taper() ? Request.usualDepth(thread) : (0.6 + 1.9 * random.nextDouble()) * thread.diameter();
		depth = Math.max(depth, 2 * thread.pitch());
		double unit = thread.unit() == LengthUnit.MM ? 0.1 : 0.01 * 25.4;
		depth = thread.system().taper() ? depth : Math.ceil(depth / unit) * unit;
		OptionalDouble bottom = through || random.nextBoolean() ? OptionalDouble.empty()
				: OptionalDouble.of(depth + 8 * thread.pitch() + thread.diameter());
		Request request = new Request(thread, stock(random), depth, bottom, through, lathe ? 1 : 1 + random.nextInt(5), profile);
		if (through && random.nextBoolean()) {
			request = request.inWall(depth + random.nextDouble() * thread.diameter());
		}
		for (Request.Option option : Request.Option.values()) {
			request = random.nextInt(3) == 0 ? request.with(option) : request;
		}
		return request;
	}

	private static Optional<Stock> stock(Random random) {
		StockGroup group = STOCKS[random.nextInt(STOCKS.length)];
		double hardness = group == StockGroup.STEEL && random.nextBoolean() ? 15 + random.nextInt(45) : 0;
		return group == StockGroup.OTHER ? Optional.empty()
				: Optional.of(new Stock(group, group.name().replace('_', ' ') + (hardness > 0 ? ", " + (int) hardness + " HRC" : ""),
						hardness > 0 ? OptionalDouble.of(hardness) : OptionalDouble.empty()));
	}

	private static String asked(Request request) {
		return request.depth() + " " + request.bottom() + (request.through() ? " through " + request.wall() : " blind") + " x"
				+ request.count() + " " + request.profile().name() + " " + request.options() + " "
				+ request.stock().map(Stock::words).orElse("");
	}

	private static List<String> faults(Weighing weighing, Request request) {
		List<String> program = Plan.program(weighing.method(), request);
		List<String> faults = new ArrayList<>(alarms(program, request.profile()));
		try {
			PlainMachine machine = new PlainMachine(program, request.lathe());
			measure(machine, weighing, request, faults);
		} catch (IllegalStateException fault) {
			faults.add(fault.getMessage());
		}
		if (!faults.isEmpty()) {
			faults.add("\n" + String.join("\n", program));
		}
		return faults;
	}

	private static void measure(PlainMachine machine, Weighing weighing, Request request, List<String> faults) {
		ThreadSpec thread = request.thread();
		double unit = machine.inch ? 25.4 : 1;
		double open = machine.inch ? 0.0051 : 0.0011;
		expect(faults, machine.inch == (thread.unit() == LengthUnit.INCH), "unit");
		expect(faults, machine.ended, "end");
		PlainMachine.Use last = machine.tools.get(machine.tools.size() - 1);
		PlainMachine.Use drill = machine.tools.stream().filter(t -> t.comment.startsWith("DRILL")).findFirst().orElseThrow();
		double size = Double.parseDouble(drill.comment.split("DIA ")[1].split(" ")[0]) * unit;
		for (PlainMachine.Use tool : machine.tools) {
			expect(faults, tool.places.size() == request.count(), tool.comment + ": places " + tool.places);
			int i = 0;
			for (double place : tool.places) {
				expect(faults, Math.abs(place * unit - 3 * thread.diameter() * i++) < open + 0.002, tool.comment + ": at " + place);
			}
			expect(faults, request.bottom().isEmpty() || -tool.deepest * unit <= request.bottom().getAsDouble() + open,
					tool.comment + ": below the bottom");
		}
		hole(faults, size, weighing.method(), thread);
		double cone = size / 2 / Math.tan(Math.toRadians(59));
		double full = -drill.deepest * unit - cone;
		double tip = -last.deepest * unit;
		if (request.through()) {
			expect(faults, full >= request.wall(), "drill not through: " + full);
			expect(faults, full <= request.wall() + 0.6 + 0.5 * thread.pitch(), "drill far below the wall: " + full);
		} else {
			expect(faults, full >= tip + 0.5 * thread.pitch() - open, "drill " + full + " for " + tip);
		}
		if (weighing.method().tap()) {
			tapped(faults, machine, last, weighing.method(), request, tip);
		} else {
			milled(faults, last, request, tip, unit);
		}
	}

	private static void hole(List<String> faults, double size, Method method, ThreadSpec thread) {
		Optional<Limits> limits = ThreadTable.standard().limits(thread);
		double least = limits.map(l -> l.minorMinMm().orElse(0)).orElse(0.0);
		double most = limits.map(l -> l.minorMaxMm().orElse(thread.diameter())).orElse(thread.diameter());
		if (method.forming()) {
			expect(faults, size < thread.diameter() - 0.3 * thread.pitch() && size > thread.diameter() - 0.55 * thread.pitch(),
					"drill for forming: " + size);
		} else if (!thread.system().pipe()) {
			expect(faults, size >= least - 0.08 * thread.pitch() && size <= most + 0.1 * thread.pitch(), "drill " + size + " for " + least
					+ " to " + most);
		}
	}

	private static void tapped(List<String> faults, PlainMachine machine, PlainMachine.Use tap, Method method,
			Request request, double tip) {
		ThreadSpec thread = request.thread();
		double unit = machine.inch ? 25.4 : 1;
		double lead = method == Method.SPIRAL_POINT ? 5.5 : method == Method.FORM_TAP ? 2 : 3;
		expect(faults, tip >= request.depth() + (thread.system().taper() ? 2 : lead) * thread.pitch() - 0.002 || thread.system().taper()
				&& tip > request.depth() + thread.pitch(), "tap to " + tip);
		expect(faults, tap.perRev == request.feedPerRev(), "feed mode");
		double advance = tap.feed * unit / (tap.perRev ? 1 : tap.speed);
		expect(faults, Math.abs(advance / thread.lead() - 1) < 5e-5, "advance " + advance + ", lead " + thread.lead());
		expect(faults, tap.level * unit >= 2.99 * thread.lead() && tap.level * unit < 4 * thread.lead() + 0.2, "R " + tap.level);
		expect(faults, tap.leftHand == (thread.hand() == Hand.LEFT), "hand");
		expect(faults, tap.speed * Math.PI * thread.diameter() / 1000 < 60, "S " + tap.speed);
	}

	private static void milled(List<String> faults, PlainMachine.Use mill, Request request, double tip, double unit) {
		ThreadSpec thread = request.thread();
		double cutter = Double.parseDouble(mill.comment.split("DIA ")[1].split(" ")[0]) * unit;
		boolean compensated = request.options().contains(Request.Option.COMPENSATION);
		expect(faults, tip >= request.depth() + 0.5 * thread.pitch(), "mill to " + tip);
		expect(faults, cutter < 0.7 * thread.diameter() && cutter > 0.3 * thread.diameter() - 0.2, "cutter " + cutter);
		double widest = 0;
		double top = -1e9;
		for (double[] arc : mill.arcs) {
			boolean turn = Math.abs(arc[1] - arc[2]) < 1e-9;
			expect(faults, arc[0] == (thread.hand() == Hand.LEFT ? -1 : 1), "direction");
			double climb = (arc[5] - arc[4]) * unit;
			expect(faults, Math.abs(climb - thread.pitch() * (turn ? 1 : 0.25)) < 0.006, "climb " + climb);
			if (turn) {
				widest = Math.max(widest, 2 * Math.abs(arc[3] - arc[1]) * unit + (compensated ? 0 : cutter));
				top = Math.max(top, arc[5] * unit);
			}
		}
		expect(faults, widest > thread.diameter() - 0.002 && widest < thread.diameter() + 0.015, "cuts " + widest);
		expect(faults, top >= 0 || mill.comment.startsWith("COMB"), "the helix ends at " + top);
	}

	private static void expect(List<String> faults, boolean right, String what) {
		if (!right && faults.size() < 6) {
			faults.add(what);
		}
	}

	private static List<String> alarms(List<String> program, MachineProfile machine) {
		ProgramFile file = new ProgramFile("plan.nc", ProgramText.of(String.join("\n", program) + "\n"));
		var result = Checker.check(file, ProgramFolder.EMPTY, Job.EMPTY, machine, RuleSettings.DEFAULT);
		List<String> alarms = new ArrayList<>(result.findings().stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> f.rule() + ": " + f.message()).toList());
		if (result.work().operations().size() != 1 || result.work().operations().get(0).wanted().statedThread().isEmpty()) {
			alarms.add("operations " + result.work().operations().size());
		}
		return alarms;
	}
}
