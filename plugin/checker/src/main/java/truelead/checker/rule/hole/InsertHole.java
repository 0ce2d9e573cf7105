package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.InsertThread;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;

/**
 * A drilled hole that is threaded for a wire insert, bigger than for the plain thread.
 *
 * @param cut    the cut that gave the hole its diameter
 * @param drill  the diameter, mm, and who says so
 * @param thread the thread called out
 * @param right  the drill to take
 * @param milled whether the thread is milled
 */
record InsertHole(Cut cut, Fact<Double> drill, Fact<ThreadSpec> thread, String right, boolean milled) {

	/** Smallest minor diameter of a thread for a wire insert above the nominal diameter, pitches: H / 4 (ASME B18.29.1, from memory). */
	private static final double INSERT_LEAST = 0.21651;
	/** Far more than any class leaves of its minor diameter (M8: 8.54, 0.43 P), and its drill (8.4; M3: 3.2), pitches (from memory). */
	private static final double INSERT_MOST = 0.6;
	private static final double INSERT_DRILL = 0.35;
	/**
	 * The major diameter of the tapped hole is so much above that of the thread, as a part of the pitch (ASME B18.29.1: twice the height of
	 * the wire).
	 */
	private static final double INSERT_MAJOR = 1.29904;

	/** The first hole of an operation, where thread and drill are stated and nothing but drills went in. */
	static Optional<InsertHole> first(ThreadingOperation operation, List<Visit> visits) {
		Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread().filter(t -> operation.wanted().wireInsert());
		if (thread.isEmpty() || visits.isEmpty()) {
			return Optional.empty();
		}
		Visit visit = visits.get(0);
		boolean drilled = visit.hole().makingBefore(visit.order()).stream().allMatch(c -> c.kind().drills());
		Optional<Cut> cut = visit.hole().threadedBefore(visit.order(), thread.get().value().diameter()
				+ INSERT_MAJOR * thread.get().value().pitch()).filter(c -> drilled);
		LengthUnit unit = visit.modal().unit();
		return cut.flatMap(c -> c.diameter().filter(Fact::stated).filter(d -> d.value() < 2 * thread.get().value().diameter())
				.map(d -> insert(c, d, thread.get(), unit, !(operation instanceof Tapping))));
	}

	private static InsertHole insert(Cut cut, Fact<Double> drill, Fact<ThreadSpec> thread, LengthUnit unit, boolean milled) {
		DrillSizes.Drill right = DrillSizes.nearest(thread.value().diameter() + INSERT_DRILL * thread.value().pitch(), unit);
		return new InsertHole(cut, drill, thread, DrilledSize.name(right.name(), right.unit(), right.diameter(), unit), milled);
	}

	/** Whether a drill, mm, makes a hole for a wire insert of a thread. */
	static boolean fits(ThreadSpec thread, double drill) {
		return drill >= least(thread) && drill <= most(thread);
	}

	private double least() {
		return least(thread.value());
	}

	private static double least(ThreadSpec thread) {
		return thread.diameter() + INSERT_LEAST * thread.pitch() - 2 * DrilledSize.WRITTEN;
	}

	private double most() {
		return most(thread.value());
	}

	/** What the widest class lets pass, and decimals that were left out. */
	private static double most(ThreadSpec thread) {
		return InsertThread.largestMinor(thread).orElse(far(thread)) + 2 * DrilledSize.WRITTEN;
	}

	private static double far(ThreadSpec thread) {
		return thread.diameter() + INSERT_MOST * thread.pitch();
	}

	boolean tooSmall() {
		return drill.value() < least();
	}

	boolean tooBig() {
		return drill.value() > most();
	}

	Draft draft(Rule rule, BlockRef block, Figures figures) {
		String message = "the hole is drilled " + figures.fine(drill.value()) + ", too " + (tooSmall() ? "small" : "big")
				+ " for a wire insert " + thread.value().withoutClass().designation() + ": "
				+ (tooSmall() ? milled ? "the cutter cuts far more than its thread" : "the tap cuts far more than its thread and may break"
						: (milled ? "the cutter" : "the tap") + " finds too little to cut, the thread is shallow") + "; drill " + right;
		boolean little = !tooSmall() && drill.value() <= far(thread.value());
		return Draft.of(rule, little ? Severity.WARNING : Severity.ERROR, Location.of(block), message)
				.related(cut.block(), "the drill block").known("drill", figures.fine(drill.value()), drill)
				.known("thread", thread.value().designation(), thread).from(tooSmall() ? "smallest hole let pass" : "largest hole let pass",
						figures.fine(tooSmall() ? least() : most()), "ASME B18.29.1, from memory");
	}
}
