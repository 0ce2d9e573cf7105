package truelead.checker.rule.hole;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.Hand;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.ThreadingOperation;

/**
 * The drilled diameter of a hole against the thread that is wanted in it.
 *
 * @param cut     the cut that gave the hole its diameter
 * @param drill   the diameter, mm, and who says so
 * @param thread  the thread called out
 * @param forming whether the tap forms
 */
record DrilledSize(Cut cut, Fact<Double> drill, Fact<ThreadSpec> thread, boolean forming) {

	/** What written decimals of a drill leave open, mm: half of 0.01. */
	static final double WRITTEN = 0.005;

	/**
	 * The size at a visit; empty where diameter or thread is not stated, the diameter belongs to no hole for this thread, and for taper
	 * threads, whose hole is a cone.
	 */
	static Optional<DrilledSize> of(ThreadingOperation operation, Visit visit) {
		Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread().filter(t -> !t.value().system().taper()
				&& !operation.wanted().wireInsert());
		Optional<Cut> cut = thread.flatMap(t -> visit.hole().threadedBefore(visit.order(), t.value().diameter()));
		return thread.flatMap(t -> cut.flatMap(c -> c.diameter().filter(Fact::stated).filter(d -> d.value() < 2 * t.value().diameter())
				.map(d -> new DrilledSize(c, d, t, ToolName.forms(operation.tool().facts())))));
	}

	/** The different sizes that an operation finds, in the order it comes to them: a pattern of ten thousand holes has one. */
	static List<DrilledSize> all(ThreadingOperation operation, List<Visit> visits) {
		if (visits.isEmpty()) {
			return List.of();
		}
		if (visits.size() == 1) {
			return of(operation, visits.get(0)).map(List::of).orElse(List.of());
		}
		Map<Double, DrilledSize> sizes = new LinkedHashMap<>();
		visits.forEach(visit -> of(operation, visit).ifPresent(size -> sizes.putIfAbsent(size.d(), size)));
		return List.copyOf(sizes.values());
	}

	/** The thread without class and hand, which do not matter to its hole. */
	String threadName() {
		return thread.value().withoutClass().withHand(Hand.RIGHT).designation();
	}

	double d() {
		return drill.value();
	}

	/** The limits of the minor diameter for the class called out, or the usual one. */
	Optional<Limits> limits() {
		return ThreadTable.standard().limits(thread.value());
	}

	/**
	 * Whether no drill for the thread leaves such a hole: it is wider than the thread, or a pitch and more narrower than its minor
	 * diameter.
	 */
	private boolean ofAnother() {
		double least = limits().map(l -> l.minorMinMm().orElse(0)).orElse(0.0);
		return d() >= thread.value().diameter() || d() <= least - thread.value().pitch();
	}

	/** Percent of full thread, 0 where none is left: of 1.299 P for cutting, by the forming formula for forming. */
	double percent() {
		return Math.max(0, forming ? FormHole.percent(thread.value(), d()) : TapDrill.percentOfThread(thread.value(), d()));
	}

	/**
	 * Whether it is the drill of the tables or the nearest made for forming, which is never wrong even where a limit is rounded the other
	 * way.
	 */
	boolean usual() {
		Optional<Double> chart = forming ? FormHole.drill(thread.value()).map(DrillSizes.Drill::diameter)
				: TapDrill.cutting(thread.value()).map(TapDrill::diameter);
		return chart.filter(x -> Math.abs(x - d()) <= 2 * WRITTEN).isPresent();
	}

	/** The name of the limits: {@code 6H, assumed}. */
	String className() {
		String usual = ThreadTable.standard().defaultClass(thread.value());
		return thread.value().threadClass().orElse(usual.isEmpty() ? "" : usual + ", assumed");
	}

	/** How the hole got its diameter: {@code drilled}, {@code bored}. */
	String made() {
		return made(cut);
	}

	/** How a cut makes a hole. */
	static String made(Cut cut) {
		return switch (cut.kind()) {
			case BORE -> "bored";
			case MILL -> "milled";
			case REAM -> "reamed";
			default -> "drilled";
		};
	}

	/** The block of the first visit that finds this size, where others of the operation find another; else that of the operation. */
	BlockRef at(ThreadingOperation operation, Visits visits) {
		return first(visits).map(Visit::block).orElse(operation.block());
	}

	/** How a message names the hole: {@code the hole}, {@code the hole at X4 Y1} where others of the operation have another size. */
	String hole(Visits visits, Figures figures) {
		return "the hole" + first(visits).map(visit -> " at " + HoleRule.at(visit.hole().place(), figures)).orElse("");
	}

	private Optional<Visit> first(Visits visits) {
		return visits.sizes().size() < 2 ? Optional.empty() : visits.typical().stream().filter(visit -> visit.hole()
				.threadedBefore(visit.order(), thread.value().diameter()).filter(cut::equals).isPresent()).findFirst();
	}

	/** What is right: {@code drill 5.0}, or between what limits a hole is to be bored or milled; empty where none is known. */
	String right(Figures figures) {
		Optional<Limits> range = cut.kind() == Cut.Kind.BORE || cut.kind() == Cut.Kind.MILL
				? limits().filter(l -> l.minorMinMm().isPresent() && l.minorMaxMm().isPresent()) : Optional.empty();
		if (range.isPresent() && !forming) {
			return (cut.kind() == Cut.Kind.BORE ? "bore " : "mill ") + figures.fine(range.get().minorMinMm().getAsDouble()) + " to "
					+ figures.fine(range.get().minorMaxMm().getAsDouble());
		}
		return drill(figures.unit());
	}

	/** The drill that is right, as a name. */
	private String drill(LengthUnit unit) {
		if (forming) {
			return FormHole.drill(thread.value()).map(x -> "drill " + name(x.name(), x.unit(), x.diameter(), unit)).orElse("");
		}
		return TapDrill.cutting(thread.value()).map(x -> "drill " + name(x.name(), x.unit(), x.diameter(), unit))
				.orElseGet(() -> "drill " + DrillSizes.nearest(thread.value().diameter() - thread.value().pitch(), unit).name());
	}

	/** A drill's name, with its size in the unit of the program where an inch name says it to few. */
	static String name(String name, LengthUnit made, double diameter, LengthUnit unit) {
		return made == LengthUnit.INCH ? name + " (" + Figures.fixed(diameter / unit.mm(), unit == LengthUnit.MM ? 3 : 4) + ")" : name;
	}

	/** The name of the limits as it stands behind the thread: {@code  (6H, assumed)}; empty for a thread that has no classes. */
	String inClass() {
		return className().isEmpty() ? "" : " (" + className() + ")";
	}

	/** Adds the numbers to a finding. */
	Draft evidence(Draft draft, Figures figures) {
		draft.known("drill", figures.fine(d()), drill).known("thread", thread.value().designation(), thread)
				.related(cut.block(), "the drill block");
		if (ofAnother()) {
			draft.from("hole of another thread", figures.fine(d()), "the drill").tells(Slip.OTHER_THREADS_HOLE);
		}
		if (forming) {
			return draft.from("percent of thread", Figures.number(percent(), 0) + " %",
					"(D - d) / (0.0068 P), Machinery's Handbook, cold form tapping");
		}
		limits().ifPresent(l -> draft.from(("minor diameter " + className()).strip(),
				(l.minorMinMm().isPresent() ? figures.fine(l.minorMinMm().getAsDouble()) : "") + " to " + (l.minorMaxMm().isPresent()
						? figures.fine(l.minorMaxMm().getAsDouble()) : ""), l.source()));
		double depth = 2 * thread.value().system().depthOverPitch();
		return draft.from("percent of thread", Figures.number(percent(), 0) + " %", "(D - d) / (" + Figures.number(depth, 3) + " P)"
				+ (depth > 1.2989 && depth < 1.3 ? ", Machinery's Handbook" : ""));
	}
}
