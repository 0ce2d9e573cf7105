package truelead.checker.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.ToIntFunction;
import truelead.checker.comment.Commentary;
import truelead.checker.hole.Cut;
import truelead.checker.hole.HoleBook;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.hole.Places;
import truelead.checker.pass.PassRow;
import truelead.checker.pass.PassStretches;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Plane;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRun;
import truelead.checker.run.AxisRun;
import truelead.checker.stroke.Stroke;
import truelead.checker.stroke.Strokes;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolUse;
import truelead.checker.turn.BorePass;

/** Sorts what was recorded, in the order of execution, into cuts at holes and threading operations. */
final class Sorting {

	/** What was recorded of one kind, in the order of execution, and what is done with each. */
	private static final class Kind<T> {

		private final List<T> recorded;
		private final ToIntFunction<T> order;
		private final Consumer<T> sort;
		private int at;

		Kind(List<T> recorded, ToIntFunction<T> order, Consumer<T> sort) {
			this.recorded = inOrder(recorded, order);
			this.order = order;
			this.sort = sort;
		}

		/** A run is recorded when it ends, and may have begun before another one. */
		private static <T> List<T> inOrder(List<T> recorded, ToIntFunction<T> order) {
			for (int i = 1; i < recorded.size(); i++) {
				if (order.applyAsInt(recorded.get(i)) < order.applyAsInt(recorded.get(i - 1))) {
					List<T> sorted = new ArrayList<>(recorded);
					sorted.sort((one, other) -> Integer.compare(order.applyAsInt(one), order.applyAsInt(other)));
					return sorted;
				}
			}
			return recorded;
		}

		/** The number of the next one in the order of execution; none behind the last. */
		int next() {
			return at < recorded.size() ? order.applyAsInt(recorded.get(at)) : Integer.MAX_VALUE;
		}

		/** Sorts those up to a number in the order of execution, at least one. */
		void sortUpTo(int last) {
			do {
				sort.accept(recorded.get(at++));
			} while (next() < last);
		}
	}

	private final Recorded recorded;
	private final List<BorePass> bores;
	/** The stays by their numbers. */
	private final List<ToolUse> uses;
	private final HoleBook book;
	private final TapDrafts taps;
	private final MillDrafts mills;
	private final double tolerance;
	private final Map<Stroke, int[]> touched = new IdentityHashMap<>();
	/**
	 * The way along Z, +1 or -1, that a tool last went into the middle in each program of the file: on some machines Z grows towards the
	 * chuck.
	 */
	private final Map<Integer, Integer> ways = new HashMap<>();
	/** The same of each stay of a tool that bores beside the axis. */
	private final Map<Integer, Integer> boring = new HashMap<>();
	private Holes holes;

	Sorting(Recorded recorded, List<BorePass> bores, List<ToolUse> uses, Commentary commentary, Stays stays, MachineProfile profile) {
		this.recorded = recorded;
		this.bores = bores;
		this.uses = uses;
		this.tolerance = profile.positionTolerance();
		this.book = new HoleBook(tolerance);
		this.taps = new TapDrafts(profile, commentary, stays);
		this.mills = new MillDrafts(commentary, stays);
		sort();
	}

	/** All holes. */
	Holes holes() {
		return holes;
	}

	/** All threading operations found, in the order of execution. */
	List<Draft> drafts() {
		List<Draft> drafts = new ArrayList<>(taps.drafts());
		drafts.addAll(mills.drafts());
		drafts.sort((one, other) -> Integer.compare(one.firstOrder(), other.firstOrder()));
		return drafts;
	}

	/** The strokes of a draft with their holes. */
	Strokes strokes(List<Stroke> strokes) {
		return new Strokes(strokes, holes, touched);
	}

	/** The passes of a draft with their holes. */
	PassStretches passes(List<PassRow> passes) {
		return PassStretches.of(passes, holes, this::within);
	}

	private void touch(PassRow row) {
		for (int i = 0; i < row.count(); i++) {
			book.touch(row.place(i), within(row.resolution(i)));
		}
	}

	/** Two positions computed from arcs may be apart by the rounding of their words. */
	private double within(double resolution) {
		return within(tolerance, resolution);
	}

	/** How far a hole may be from a place written to a resolution, mm. */
	static double within(double tolerance, double resolution) {
		return tolerance + 2 * resolution;
	}

	private void sort() {
		mills.markLeads(recorded.arcRuns());
		all(List.of(new Kind<>(recorded.strokes(), TimedStroke::order, this::stroke), new Kind<>(recorded.axisRuns(), AxisRun::order,
				this::run), new Kind<>(recorded.arcRuns(), ArcRun::order, this::arcs), new Kind<>(recorded.arcCopies(), ArcCopies::order,
						this::copies), new Kind<>(bores, BorePass::order, this::bore), new Kind<>(recorded.events(), LoggedEvent::order,
								e -> taps.event(e.event(), e.order(), e.tool()))));
		int made = book.count();
		List<Draft> drafts = drafts();
		for (Draft draft : drafts) {
			draft.strokes.forEach(s -> s.row().ifPresentOrElse(row -> touched.put(s, book.touch(s.place(), row)),
					() -> book.touch(s.place(), 0)));
			draft.passes.forEach(this::touch);
		}
		if (book.count() > made) {
			// one of the new holes may be nearer
			touched.clear();
		}
		holes = book.finish();
	}

	/** Sorts all that was recorded in the order of execution; of two kinds at once the first one. */
	private static void all(List<Kind<?>> kinds) {
		while (true) {
			Kind<?> first = kinds.get(0);
			int next = first.next();
			int then = Integer.MAX_VALUE;
			for (int i = 1; i < kinds.size(); i++) {
				int here = kinds.get(i).next();
				then = Math.min(then, Math.max(here, next));
				if (here < next) {
					first = kinds.get(i);
					next = here;
				}
			}
			if (next == Integer.MAX_VALUE) {
				return;
			}
			first.sortUpTo(then);
		}
	}

	private void stroke(TimedStroke timed) {
		ToolUse use = uses.get(timed.tool().index());
		if (!taps.cycle(timed, use)) {
			taps.otherCycle();
			Cut cut = Cuts.of(timed.order(), timed.stroke(), use, Places.of(timed.tool().part(), timed.stroke()));
			timed.row().ifPresentOrElse(row -> book.add(cut, row), () -> book.add(cut));
			middle(cut);
		}
	}

	private void run(AxisRun run) {
		ToolUse use = uses.get(run.tool().index());
		// along X a lathe faces and grooves; what is called a drill or a tap there is driven, and makes a hole in the side
		boolean turns = run.place().plane() == Plane.YZ && run.in().modal().plane() == Plane.ZX
				&& use.facts().kind().filter(kind -> kind.value() == ToolKind.DRILL || kind.value().tap()).isEmpty();
		if (!turns && !taps.run(run, use) && !run.synchronised() && !use.facts().isThreadMill()) {
			Cut cut = Cuts.of(run, use);
			book.add(cut);
			middle(cut);
		}
	}

	private void middle(Cut cut) {
		boolean along = cut.place().plane() == Plane.XY && Math.hypot(cut.place().u(), cut.place().v()) < AxisRun.CENTRE_LINE
				&& cut.tip() != cut.start();
		if (along && !bores.isEmpty()) {
			ways.put(cut.place().part(), cut.direction());
		}
	}

	private void bore(BorePass pass) {
		ToolUse use = uses.get(pass.tool().index());
		if (!pass.bores(use)) {
			return;
		}
		// the other way a tool feeds back out of its bore; the first pass from before the face goes in, as on a second spindle
		int way = boring.computeIfAbsent(pass.tool().index(), stay -> pass.fromBeforeTheFace() ? pass.way()
				: ways.getOrDefault(pass.tool().part(), -1));
		if (pass.way() == way) {
			book.add(pass.cut(use));
		}
	}

	/** Runs that come again; those that make no threads are each for themselves. */
	private void copies(ArcCopies copies) {
		if (!mills.copies(copies, uses.get(copies.tool().index()))) {
			for (int copy = 0; copy < copies.count(); copy++) {
				List<ArcRun> runs = copies.runs(copy);
				mills.markLeads(runs);
				runs.forEach(this::arcs);
			}
		}
	}

	private void arcs(ArcRun run) {
		ToolUse use = uses.get(run.tool().index());
		if (!mills.run(run, use) && !mills.isLead(run) && !use.facts().isThreadMill() && (!run.inChords() || run.bores())) {
			Place place = Places.of(run.tool().part(), run.arcs().get(0).modal(), run.plane(), run.centre());
			Cuts.of(run, use, place).ifPresent(book::add);
		}
	}
}
