package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;

/**
 * A drilled hole that is parallel, for a taper thread, tapped or milled; a mill takes a narrower hole than a tap. It can be right between
 * the thread's minor diameter at the gauge plane and the one at the end of what is screwed in, a sixteenth of that length less (ASME
 * B1.20.1, ISO 7-1).
 *
 * @param cut       the cut that gave the hole its diameter
 * @param drill     the diameter, mm, and who says so
 * @param thread    the thread called out
 * @param gauge     minor diameter at the gauge plane, mm
 * @param end       minor diameter at the end of the length that is screwed in, mm
 * @param height    height of the thread on one side, mm
 */
record TaperHole(Cut cut, Fact<Double> drill, Fact<ThreadSpec> thread, double gauge, double end, double height) {

	/** Height of the American taper thread in pitches (ASME B1.20.1), and of the Whitworth form (ISO 7-1). */
	private static final double AMERICAN = 0.8;
	private static final double WHITWORTH = 0.640327;
	/** Threads of NPT beyond hand-tight that a wrench makes up (ASME B1.20.1, L3). */
	private static final double WRENCH = 3;
	/** Too small is a drill this many pitches below the end's minor diameter: a warning, and an error (common practice, no source). */
	private static final double SMALL = 0.05;
	private static final double FAR = 0.25;
	/** A thread that vanishes in its taper may end so many pitches behind its hole. */
	private static final double VANISHES = 1;
	/** Percent of the height left at the gauge plane: a warning below it, and an error (common practice, no source). */
	private static final double LOW = 75;
	private static final double TOO_LOW = 45;

	/**
	 * The hole of the first visit whose diameter is stated; empty for parallel threads and for holes that are reamed or milled, which may
	 * be a cone.
	 */
	static Optional<TaperHole> of(ThreadingOperation operation, List<Visit> visits) {
		Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread().filter(t -> t.value().system().taper());
		return thread.flatMap(t -> visits.stream().filter(v -> v.hole().makingBefore(v.order()).stream().noneMatch(TaperHole::mayBeCone))
				.flatMap(v -> v.hole().threadedBefore(v.order(), t.value().diameter()).stream())
				.filter(c -> c.diameter().filter(Fact::stated).isPresent()).findFirst().flatMap(c -> of(c, t)));
	}

	/** The bore that a lathe's point is to cut the thread in; empty for parallel threads and for what is reamed or milled. */
	static Optional<TaperHole> of(SinglePoint turned) {
		return turned.bore().filter(bore -> !mayBeCone(bore.cut()))
				.flatMap(bore -> turned.thread().filter(t -> t.stated() && t.value().system().taper())
						.flatMap(thread -> of(bore.cut(), thread)));
	}

	/** The finding of a thread that goes on where its hole has ended; empty where it does not. */
	static Optional<Draft> shallow(HoleRule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(t -> t.stated() && t.value().system().taper());
		if (thread.isEmpty() || turned.bore().isEmpty()) {
			return Optional.empty();
		}
		SinglePoint.Bore bore = turned.bore().get();
		double beyond = turned.behindBore();
		if (beyond <= VANISHES * thread.get().value().pitch()) {
			return Optional.empty();
		}
		Figures figures = new Figures(turned.pass().modal().unit());
		return Optional.of(Draft.of(rule, Severity.ERROR, Location.of(turned.pass().block()), "the hole ends at Z"
				+ figures.coordinate(bore.floor()) + ", the thread at Z" + figures.coordinate(bore.end()) + ": " + figures.length(beyond)
				+ " of it are cut into the full, and the point breaks; drill on behind the thread, or end it before")
				.known("thread", thread.get().value().designation(), thread.get()).related(bore.cut().block(), "the block that bores it"));
	}

	private static boolean mayBeCone(Cut cut) {
		return cut.kind() == Cut.Kind.REAM || cut.kind() == Cut.Kind.MILL;
	}

	private static Optional<TaperHole> of(Cut cut, Fact<ThreadSpec> thread) {
		ThreadSpec spec = thread.value();
		ThreadTable table = ThreadTable.standard();
		boolean american = spec.system() == ThreadSystem.NPT || spec.system() == ThreadSystem.NPTF;
		OptionalDouble pitchDiameter = table.limits(spec).map(Limits::pitchMinMm).orElse(OptionalDouble.empty());
		OptionalDouble length = american ? table.gaugeLength(spec) : table.usefulLength(spec);
		double drill = cut.diameter().orElseThrow().value();
		if (pitchDiameter.isEmpty() || length.isEmpty() || drill > 2 * spec.diameter()) {
			return Optional.empty();
		}
		double height = (american ? AMERICAN : WHITWORTH) * spec.pitch();
		double gauge = pitchDiameter.getAsDouble() - height;
		double in = length.getAsDouble() + (american ? WRENCH * spec.pitch() : 0);
		return Optional.of(new TaperHole(cut, cut.diameter().get(), thread, gauge, gauge - in * ThreadSpec.PIPE_TAPER, height));
	}

	/** The finding of a drill that is too small; empty where it is not. */
	Optional<Draft> small(HoleRule rule, ThreadingOperation operation, Figures figures) {
		return small(rule, operation.block(), operation instanceof Tapping, figures);
	}

	/** The same for a thread that a lathe's point is to cut. */
	Optional<Draft> small(HoleRule rule, SinglePoint turned) {
		return small(rule, turned.pass().block(), false, new Figures(turned.pass().modal().unit()));
	}

	private Optional<Draft> small(HoleRule rule, BlockRef at, boolean tapped, Figures figures) {
		double missing = end - drill.value();
		double pitch = thread.value().pitch();
		if (missing <= (tapped ? SMALL : FAR) * pitch) {
			return Optional.empty();
		}
		return Optional.of(draft(rule, at, missing > FAR * pitch, "the smallest minor diameter of " + thread.value().designation()
				+ ", at the end of what is screwed in, is " + figures.fine(end) + ": " + figures.fine(missing) + " too small, and "
				+ (tapped ? "the tap may break" : "the crests are not cut"), figures));
	}

	/** The finding of a drill that is too big; empty where it is not. */
	Optional<Draft> big(HoleRule rule, ThreadingOperation operation, Figures figures) {
		return big(rule, operation.block(), figures);
	}

	/** The same for a thread that a lathe's point is to cut. */
	Optional<Draft> big(HoleRule rule, SinglePoint turned) {
		return big(rule, turned.pass().block(), new Figures(turned.pass().modal().unit()));
	}

	private Optional<Draft> big(HoleRule rule, BlockRef at, Figures figures) {
		double percent = 100 * (gauge + 2 * height - drill.value()) / (2 * height);
		if (percent >= LOW) {
			return Optional.empty();
		}
		return Optional.of(draft(rule, at, percent < TOO_LOW, "the minor diameter of " + thread.value().designation()
				+ " at the gauge plane is " + figures.fine(gauge) + ": " + figures.fine(drill.value() - gauge) + " too big, "
				+ Figures.number(Math.max(0, percent), 0) + " % of thread left there, and the joint leaks", figures));
	}

	private Draft draft(HoleRule rule, BlockRef at, boolean error, String what, Figures figures) {
		boolean bored = cut.kind() == Cut.Kind.BORE;
		String right = bored ? "; bore " + figures.fine(end) + " to " + figures.fine(gauge)
				: TapDrill.cutting(thread.value()).map(x -> "; drill " + DrilledSize.name(x.name(), x.unit(), x.diameter(),
						figures.unit())).orElse("");
		return Draft.of(rule, error ? Severity.ERROR : Severity.WARNING, Location.of(at), "the hole is " + DrilledSize.made(cut) + " "
				+ figures.fine(drill.value()) + ", " + what + right).known("drill", figures.fine(drill.value()), drill)
				.known("thread", thread.value().designation(), thread).related(cut.block(), "the drill block")
				.from("minor diameter of the taper thread", figures.fine(end) + " to " + figures.fine(gauge),
						ThreadTable.standard().limits(thread.value()).map(Limits::source).orElse("")
						+ "; pitch diameter at the gauge plane less the height of the thread, a sixteenth of the length that is screwed in "
						+ "less at its end");
	}
}
