package truelead.checker.hole;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import truelead.checker.machine.Step;

/** Gathers cuts by place while they are found, in the order of execution: cuts within the tolerance of each other are of one hole. */
public final class HoleBook {

	/** Positions are never taken for one that are further apart, however coarsely they are written, mm. */
	public static final double FARTHEST = 5.0;
	private static final double COARSEST = 1.0;

	/** From so many cuts at one place on, a cut just like an earlier one tells nothing new: a loop, or parts made one after another. */
	static final int REPEATED = 100;

	/**
	 * From so many cuts on that differ, at one place, those of a tool are taken for alike however deep they go: no hole is pecked that
	 * often.
	 */
	static final int DIFFERENT = 300;

	/** What circles and levels of a mill may differ by and leave no step, mm: less than any shop measures. */
	private static final double SAME = 0.01;

	/** What makes two cuts alike. */
	private record Likeness(Cut.Kind kind, int tool, double start, double tip) {

		Likeness(Cut cut) {
			this(cut.kind(), cut.tool().number(), cut.start(), cut.tip());
		}

		/** Whatever the tool does in this way. */
		Likeness ofAnyDepth() {
			return new Likeness(kind, tool, Double.NaN, Double.NaN);
		}
	}

	private final double tolerance;
	private final HoleGrid grid = new HoleGrid();
	private final CutChains chains = new CutChains();
	private final CutKinds kinds = new CutKinds();
	/**
	 * Of holes with many cuts, by likeness: the last cut, where it came after the many and may give way to another one; -1 where it may
	 * not.
	 */
	private final Map<Integer, Map<Likeness, Integer>> crowded = new HashMap<>();
	private boolean unknownPlaces;

	/** @param tolerance how far two positions of one hole may be apart, mm, at most 1 */
	public HoleBook(double tolerance) {
		this.tolerance = Math.min(tolerance, COARSEST);
	}

	/** A cut by itself. */
	public void add(Cut cut) {
		if (!cut.place().known()) {
			unknownPlaces |= cut.kind().makesHole();
			return;
		}
		int hole = at(grid.frame(cut.place()), cut.place().u(), cut.place().v(), tolerance);
		if (!chains.last(hole).filter(before -> goesOn(before, cut)).isPresent()) {
			put(hole, chains.row(new CutRow(cut, Optional.empty(), kinds.of(cut, false))), 0);
			return;
		}
		Cut whole = merge(chains.last(hole).get(), cut);
		// the level below takes in the steps above it that it is as wide as
		while (!crowded.containsKey(hole) && takesIn(chains.beforeLast(hole), whole)) {
			whole = merge(chains.beforeLast(hole).get(), whole);
			chains.removeLast(hole);
		}
		chains.replaceLast(hole, new CutRow(whole, Optional.empty(), kinds.of(whole, false)));
	}

	private static boolean takesIn(Optional<Cut> before, Cut now) {
		return before.isPresent() && goesOn(before.get(), now);
	}

	/** The cuts at the places of a row, of which the first is given. */
	public void add(Cut first, Step.Row row) {
		int number = chains.row(new CutRow(first, Optional.of(row), kinds.of(first, true)));
		int frame = grid.frame(first.place());
		int known = grid.count();
		for (int i = 0; i < row.count(); i++) {
			put(at(frame, row.x(i), row.y(i), tolerance), number, i);
			if (i == 0 && grid.count() > known) {
				// where the first hole is new, so are the others as a rule
				grid.expect(row.count());
			}
		}
	}

	private void put(int hole, int row, int index) {
		if (chains.length(hole) < REPEATED) {
			chains.add(hole, row, index);
			return;
		}
		Map<Likeness, Integer> known = crowded.computeIfAbsent(hole, h -> {
			Map<Likeness, Integer> likenesses = new HashMap<>();
			chains.cuts(h).forEach(cut -> likenesses.put(new Likeness(cut), -1));
			return likenesses;
		});
		Likeness exact = new Likeness(chains.cut(row, index));
		Likeness likeness = known.size() < DIFFERENT || known.containsKey(exact) ? exact : exact.ofAnyDepth();
		Integer last = known.get(likeness);
		if (last != null && last >= 0) {
			// of cuts alike the last one stays too: it may come behind a thread
			chains.remove(hole, last);
		}
		int link = chains.add(hole, row, index);
		known.put(likeness, last == null ? -1 : link);
	}

	/**
	 * Says that something is done at a place, so that it is a hole even if nothing else is; {@code within} so many mm a hole known there is
	 * the same.
	 */
	public void touch(Place place, double within) {
		if (place.known()) {
			at(grid.frame(place), place.u(), place.v(), Math.max(tolerance, within));
		}
	}

	/**
	 * The same at all places of a row, of which the first is given; gives the numbers of the holes, which stand as long as no further hole
	 * comes.
	 */
	public int[] touch(Place first, Step.Row row) {
		int[] numbers = new int[row.count()];
		int frame = grid.frame(first);
		for (int i = 0; i < numbers.length; i++) {
			numbers[i] = at(frame, row.x(i), row.y(i), tolerance);
		}
		return numbers;
	}

	/** Number of holes so far. */
	public int count() {
		return grid.count();
	}

	/** All holes with their cuts; to be called once, when all cuts are known. */
	public Holes finish() {
		grid.trim();
		chains.trim(grid.count());
		return new Holes(grid, chains, kinds, tolerance, unknownPlaces, !crowded.isEmpty());
	}

	/** How far a hole may be from a place, mm. */
	public static double within(double farthest) {
		return Math.min(farthest, FARTHEST);
	}

	private int at(int frame, double u, double v, double within) {
		int known = grid.nearest(frame, u, v, within(within));
		return known >= 0 ? known : grid.add(frame, u, v);
	}

	/**
	 * Whether another turn of the same mill at a hole goes on where the one before ended, circle by circle, level by level, and leaves no
	 * step.
	 */
	private static boolean goesOn(Cut before, Cut now) {
		return before.kind() == Cut.Kind.MILL && now.kind() == Cut.Kind.MILL && before.tool() == now.tool() && !step(before, now);
	}

	/** Whether two cuts of a mill leave a step, as a bore with a wider counterbore above it; both have to be of a known diameter. */
	private static boolean step(Cut before, Cut now) {
		if (before.diameter().isEmpty() || now.diameter().isEmpty()) {
			return false;
		}
		double wider = now.diameter().get().value() - before.diameter().get().value();
		double deeper = now.direction() * (now.tip() - before.tip());
		return wider > SAME && deeper < -SAME || wider < -SAME && deeper > SAME;
	}

	private static Cut merge(Cut before, Cut now) {
		boolean deeper = now.direction() * now.tip() >= before.direction() * before.tip();
		Cut deep = deeper ? now : before;
		boolean larger = now.diameter().isEmpty() || before.diameter().isPresent()
				&& now.diameter().get().value() >= before.diameter().get().value();
		return new Cut(deep.order(), Cut.Kind.MILL, deep.step(), now.tool(), before.place(), before.start(), deep.tip(), deep.shoulder(),
				larger ? now.diameter() : before.diameter(), Math.max(before.resolution(), now.resolution()));
	}
}
