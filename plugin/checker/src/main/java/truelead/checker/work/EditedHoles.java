package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import truelead.checker.hole.Cut;
import truelead.checker.hole.CutRow;
import truelead.checker.hole.Hole;
import truelead.checker.hole.HoleBook;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.hole.Places;
import truelead.checker.hole.Resorting;
import truelead.checker.hole.Spot;
import truelead.checker.machine.Cycle;
import truelead.checker.tool.ToolUse;

/** The holes and threading operations of a program of few operations, as edits of single blocks in the stays of their tools leave them. */
final class EditedHoles {

	/** With more operations it takes longer to judge them all than to follow a stay. */
	private static final int MOST = 64;

	/** Where the strokes of a cycle go: into an operation, or below 0 into holes. */
	private record Target(int operation, Cycle.Kind kind) {
	}

	private final WorkReader.Reading reading;
	private final Visitors visitors;
	private final int sorted;
	private final double farthest;
	private final BitSet milled = new BitSet();
	private final List<Draft> drafts;
	private List<ThreadingOperation> operations;
	private Holes holes;
	private BitSet unthreaded;

	private EditedHoles(Work work, WorkReader.Reading reading) {
		this.reading = reading;
		this.holes = work.everyHole();
		this.sorted = holes.count();
		this.operations = work.operations();
		this.drafts = new ArrayList<>(reading.drafts());
		this.visitors = new Visitors(holes, work.tappings());
		this.farthest = work.threadMillings().isEmpty() ? holes.tolerance() : HoleBook.FARTHEST;
		work.threadMillings().forEach(milling -> milling.mark(milled));
		this.unthreaded = work.unthreadedNumbers();
		holes.kinds().edited();
	}

	/** The holes of a work as it is after it was followed from its beginning; empty where an edit may change more than the holes near it. */
	static Optional<EditedHoles> of(Work work, WorkReader.Reading reading) {
		List<ThreadingOperation> operations = work.operations();
		boolean apart = !operations.isEmpty() && operations.size() <= MOST && work.shop().unit().stated() && work.evaluated() && !work.everyHole().unknownPlaces()
				&& !work.everyHole().crowded();
		for (int i = 0; apart && i < operations.size(); i++) {
			apart = sorted(operations.get(i)) && (i == 0 || operations.get(i - 1).lastOrder() < operations.get(i).firstOrder());
		}
		return apart ? Optional.of(new EditedHoles(work, reading)) : Optional.empty();
	}

	/** Whether all of an operation is known, and each of its strokes at a place that is known. */
	private static boolean sorted(ThreadingOperation operation) {
		return operation.notEvaluated().isEmpty() && (!(operation instanceof Tapping tapping) || tapping.strays().isEmpty() && tapping.strokes().placed());
	}

	/** The operations. */
	List<ThreadingOperation> operations() {
		return operations;
	}

	/** The holes. */
	Holes holes() {
		return holes;
	}

	/** The holes that are made and never threaded, in the order first reached. */
	List<Hole> unthreaded() {
		return holes.holes(unthreaded.stream().boxed().sorted(holes.firstReached()).mapToInt(Integer::intValue).toArray());
	}

	/**
	 * Takes strokes of a tool's stay in place of others; false, and nothing done, where more depends on it than its holes.
	 *
	 * @param before what was recorded there before
	 * @param now    what is recorded now, different in strokes alone
	 */
	boolean change(Recorded before, Recorded now, ToolUse use) {
		Optional<Map<Integer, Target>> targets = targets(before.strokes());
		if (targets.isEmpty() || !now.strokes().stream().allMatch(timed -> goesOn(timed, use, targets.get()))) {
			return false;
		}
		List<StrokeWalk.Made> made = made(now.strokes(), use, targets.get());
		List<Resorting.Doing> removed = new ArrayList<>();
		List<Resorting.Doing> added = new ArrayList<>();
		differ(new StrokeWalk(made(before.strokes(), use, targets.get())), new StrokeWalk(made), removed, added);
		Resorting resorting = new Resorting(holes, this::visits, this::place, farthest);
		boolean near = resorting.change(removed, added) && resorting.touched().stream().noneMatch(milled::get);
		return near && take(made, before.strokes(), resorting);
	}

	private Optional<Map<Integer, Target>> targets(List<Recorder.TimedStroke> strokes) {
		Map<Integer, Target> targets = new HashMap<>();
		for (Recorder.TimedStroke timed : strokes) {
			Target target = new Target(operation(timed.order()), timed.stroke().cycle().kind());
			Target other = targets.putIfAbsent(timed.stroke().cycle().start().line(), target);
			if (other != null && !other.equals(target)) {
				return Optional.empty();
			}
		}
		return targets.isEmpty() ? Optional.empty() : Optional.of(targets);
	}

	/** Whether strokes go where those of their cycle went before. */
	private boolean goesOn(Recorder.TimedStroke timed, ToolUse use, Map<Integer, Target> targets) {
		Target target = targets.get(timed.stroke().cycle().start().line());
		boolean threads = target != null && (target.kind().taps() || use.facts().isTap() || TapDrafts.turnsLikeATap(TapDrafts.stroke(timed, use)));
		return target != null && target.kind() == timed.stroke().cycle().kind() && (threads || target.operation() < 0);
	}

	/** The number of the operation that a stroke is of; below 0 for none. */
	private int operation(int order) {
		int found = Recorded.before(operations, ThreadingOperation::firstOrder, order + 1) - 1;
		return found >= 0 && operations.get(found) instanceof Tapping tapping && row(tapping.strokes().rows(), order) >= 0 ? found : -1;
	}

	/** The row that a stroke is in; below 0 for none. */
	private static int row(List<StrokeRow> rows, int order) {
		int found = Recorded.before(rows, row -> row.first().order(), order + 1) - 1;
		return found >= 0 && order <= rows.get(found).first().lastOrder() ? found : -1;
	}

	private List<StrokeWalk.Made> made(List<Recorder.TimedStroke> strokes, ToolUse use, Map<Integer, Target> targets) {
		List<StrokeWalk.Made> made = new ArrayList<>();
		for (Recorder.TimedStroke timed : strokes) {
			int operation = targets.get(timed.stroke().cycle().start().line()).operation();
			Place first = Places.of(timed.tool().part(), timed.stroke());
			Optional<CutRow> cut = Optional.empty();
			if (operation < 0) {
				Cut one = Cuts.of(timed.order(), timed.stroke(), use, first);
				cut = Optional.of(new CutRow(one, timed.row(), holes.kinds().of(one, timed.row().isPresent())));
			}
			made.add(new StrokeWalk.Made(timed, first, cut, operation));
		}
		return made;
	}

	private static void differ(StrokeWalk before, StrokeWalk now, List<Resorting.Doing> removed, List<Resorting.Doing> added) {
		while (!before.done() || !now.done()) {
			boolean gone = now.done() || !before.done() && before.order() < now.order();
			boolean fresh = before.done() || !now.done() && now.order() < before.order();
			if (gone || !fresh && !before.same(now)) {
				removed.add(new Resorting.Doing(before.order(), before.place(), before.cut()));
			}
			if (fresh || !gone && !before.same(now)) {
				added.add(new Resorting.Doing(now.order(), now.place(), now.cut()));
			}
			if (!fresh) {
				before.next();
			}
			if (!gone) {
				now.next();
			}
		}
	}

	private List<Integer> visits(int hole) {
		Spot spot = holes.edited(hole);
		return spot != null ? spot.visits() : hole < sorted ? visitors.of(hole) : List.of();
	}

	private Place place(int order) {
		List<StrokeRow> rows = ((Tapping) operations.get(operation(order))).strokes().rows();
		StrokeRow row = rows.get(row(rows, order));
		return row.place(order - row.first().order());
	}

	/** Makes the operations anew whose strokes have moved, or are at holes that are others now. */
	private boolean take(List<StrokeWalk.Made> made, List<Recorder.TimedStroke> before, Resorting resorting) {
		List<ThreadingOperation> all = new ArrayList<>(operations);
		List<Draft> others = new ArrayList<>(drafts);
		Operations again = reading.again();
		TreeMap<Integer, Integer> moved = new TreeMap<>(resorting.moved());
		Map<Integer, Integer> repeats = repeats(made, resorting);
		for (int i = 0; i < all.size(); i++) {
			int number = i;
			List<StrokeWalk.Made> own = made.stream().filter(one -> one.operation() == number).toList();
			if (all.get(i) instanceof Tapping tapping && (!own.isEmpty() || !moved.subMap(tapping.firstOrder(), true, tapping.lastOrder(), true).isEmpty())) {
				List<StrokeRow> rows = rows(tapping, own, before, moved);
				others.set(i, drafts.get(i).with(rows.stream().map(StrokeRow::first).toList()));
				Strokes strokes = tapping.strokes().with(rows, resorting.holes(), repeats.getOrDefault(i, 0));
				all.set(i, again.operation(i, -1, others.get(i), sameToolBefore(others, i), strokes, PassStretches.of(List.of(), resorting.holes(), resolution -> 0)));
				if (all.get(i).group() != tapping.group() || !sorted(all.get(i))) {
					return false;
				}
			}
		}
		BitSet open = (BitSet) unthreaded.clone();
		resorting.touched().forEach(open::clear);
		resorting.numbers().forEach(hole -> open.set(hole, resorting.holes().made(hole) && resorting.holes().edited(hole).visits().isEmpty()));
		unthreaded = open;
		holes = resorting.holes();
		operations = List.copyOf(all);
		drafts.clear();
		drafts.addAll(others);
		return true;
	}

	private static Optional<Draft> sameToolBefore(List<Draft> drafts, int number) {
		for (int i = number - 1; i >= 0; i--) {
			if (drafts.get(i).log == drafts.get(number).log) {
				return Optional.of(drafts.get(i));
			}
		}
		return Optional.empty();
	}

	/** The rows of an operation, those recorded anew among them, and those with strokes at holes that are others now made anew. */
	private static List<StrokeRow> rows(Tapping tapping, List<StrokeWalk.Made> own, List<Recorder.TimedStroke> before, TreeMap<Integer, Integer> moved) {
		List<StrokeRow> known = tapping.strokes().rows();
		List<StrokeRow> rows = new ArrayList<>(known);
		Integer order = moved.isEmpty() ? null : moved.firstKey();
		while (order != null) {
			int row = row(known, order);
			if (row >= 0) {
				rows.set(row, row(known.get(row).first(), known, moved));
			}
			order = moved.higherKey(row >= 0 ? Integer.valueOf(known.get(row).first().lastOrder()) : order);
		}
		if (!own.isEmpty()) {
			List<StrokeRow> place = rows.subList(Recorded.before(known, row -> row.first().order(), before.get(0).order()),
					Recorded.before(known, row -> row.first().order(), before.get(before.size() - 1).order() + 1));
			place.clear();
			own.forEach(one -> place.add(row(TapDrafts.stroke(one.timed(), tapping.tool()), known, moved)));
		}
		return rows;
	}

	private static StrokeRow row(Draft.Stroke first, List<StrokeRow> known, Map<Integer, Integer> moved) {
		int[] holes = new int[first.count()];
		for (int i = 0; i < holes.length; i++) {
			int order = first.order() + i;
			Integer now = moved.get(order);
			int row = now == null ? row(known, order) : -1;
			holes[i] = now != null ? now : known.get(row).hole(order - known.get(row).first().order());
		}
		return new StrokeRow(first, holes);
	}

	/** How many strokes of each operation more go into a hole that one before them has gone into. */
	private Map<Integer, Integer> repeats(List<StrokeWalk.Made> made, Resorting resorting) {
		Map<Integer, Integer> more = new HashMap<>();
		for (int hole : resorting.touched()) {
			count(visits(hole), order -> operation(order), -1, more);
		}
		for (int hole : resorting.numbers()) {
			count(resorting.holes().edited(hole).visits(), order -> operation(made, order), 1, more);
		}
		return more;
	}

	private int operation(List<StrokeWalk.Made> made, int order) {
		int found = Recorded.before(made, one -> one.timed().order(), order + 1) - 1;
		return found >= 0 && order < made.get(found).timed().order() + made.get(found).count() ? made.get(found).operation() : operation(order);
	}

	private static void count(List<Integer> visits, IntUnaryOperator operation, int times, Map<Integer, Integer> more) {
		Set<Integer> met = new HashSet<>();
		for (int order : visits) {
			if (!met.add(operation.applyAsInt(order))) {
				more.merge(operation.applyAsInt(order), times, Integer::sum);
			}
		}
	}
}
