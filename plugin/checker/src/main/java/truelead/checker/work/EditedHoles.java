package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import truelead.checker.hole.Hole;
import truelead.checker.hole.HoleBook;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Resorting;
import truelead.checker.hole.Spot;
import truelead.checker.pass.PassStretches;
import truelead.checker.program.InOrder;
import truelead.checker.stroke.StrokeRow;
import truelead.checker.stroke.Strokes;

/** The holes and threading operations of a program of few operations, as edits of single blocks in the stays of their tools leave them. */
final class EditedHoles {

	/** With more operations it takes longer to judge them all than to follow a stay. */
	private static final int MOST = 64;

	private final WorkReader.Reading reading;
	private final Visitors visitors;
	private final int sorted;
	private final List<Draft> drafts;
	private List<ThreadingOperation> operations;
	private Holes holes;
	private BitSet unthreaded;
	/** How far any thread may be from its hole, mm. */
	private double farthest;

	private EditedHoles(Work work, WorkReader.Reading reading) {
		this.reading = reading;
		this.holes = work.everyHole();
		this.sorted = holes.count();
		this.operations = work.operations();
		this.drafts = new ArrayList<>(reading.drafts());
		this.visitors = new Visitors(holes, operations);
		this.farthest = holes.tolerance();
		work.threadMillings().forEach(milling -> farthest = Math.max(farthest,
				HoleBook.within(reading.within(milling.stretches().coarsest()))));
		this.unthreaded = Unthreaded.numbers(holes, operations);
	}

	/**
	 * The holes of a work as it is after it was followed from its beginning; empty where an edit may change more than the holes near it.
	 */
	static Optional<EditedHoles> of(Work work, WorkReader.Reading reading) {
		boolean apart = suits(work) && !work.everyHole().unknownPlaces() && !work.everyHole().crowded();
		return apart ? Optional.of(new EditedHoles(work, reading)) : Optional.empty();
	}

	/** Whether the operations of a work are few, known and one behind the other. */
	static boolean suits(Work work) {
		List<ThreadingOperation> operations = work.operations();
		boolean suits = !operations.isEmpty() && operations.size() <= MOST && work.evaluated();
		for (int i = 0; suits && i < operations.size(); i++) {
			suits = sorted(operations.get(i)) && (i == 0 || operations.get(i - 1).lastOrder() < operations.get(i).firstOrder());
		}
		return suits;
	}

	/** Whether all of an operation is known, and each of its strokes and passes at a place that is known. */
	private static boolean sorted(ThreadingOperation operation) {
		boolean placed = operation instanceof Tapping tapping ? tapping.strays().isEmpty() && tapping.strokes().placed()
				: operation instanceof ThreadMilling milling && milling.stretches().placed();
		return operation.notEvaluated().isEmpty() && placed;
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
	 * Takes strokes and passes of a part of a tool's stay in place of others; false, and nothing done, where more depends on it than its
	 * holes.
	 *
	 * @param part what differs in strokes, runs of arcs and what goes with them alone
	 * @param all  all that was recorded before
	 */
	boolean change(EditedPasses.Part part, Recorded all) {
		Optional<EditedStrokes> strokes = EditedStrokes.of(part, holes.kinds(), this::operation);
		Optional<EditedPasses> passes = EditedPasses.of(part, all, reading, operations, this::operation);
		if (strokes.isEmpty() || passes.isEmpty()) {
			return false;
		}
		List<Resorting.Doing> removed = new ArrayList<>();
		List<Resorting.Doing> added = new ArrayList<>();
		strokes.get().differ(removed, added);
		passes.get().differ(reading::within, removed, added);
		added.forEach(doing -> farthest = Math.max(farthest, HoleBook.within(doing.within())));
		Resorting resorting = new Resorting(holes, this::visits, this::threadAt, farthest);
		return resorting.change(removed, added) && take(strokes.get(), passes.get(), resorting);
	}

	/** The number of the operation that a step threads in; below 0 for none. */
	private int operation(int order) {
		int found = InOrder.before(operations, ThreadingOperation::firstOrder, order + 1) - 1;
		return found >= 0 && threads(operations.get(found), order) ? found : -1;
	}

	private static boolean threads(ThreadingOperation operation, int order) {
		return operation instanceof Tapping tapping ? EditedStrokes.row(tapping.strokes().rows(), order) >= 0
				: operation instanceof ThreadMilling milling && milling.stretches().has(order);
	}

	private List<Integer> visits(int hole) {
		Spot spot = holes.edited(hole);
		return spot != null ? spot.visits() : hole < sorted ? visitors.of(hole) : List.of();
	}

	private Resorting.Doing threadAt(int order) {
		ThreadingOperation operation = operations.get(operation(order));
		if (operation instanceof ThreadMilling milling) {
			return milling.stretches().doing(order, reading::within);
		}
		List<StrokeRow> rows = ((Tapping) operation).strokes().rows();
		StrokeRow row = rows.get(EditedStrokes.row(rows, order));
		return new Resorting.Doing(order, row.place(order - row.first().order()), 0, Optional.empty());
	}

	/** Makes the operations anew whose strokes or passes have moved, or are at holes that are others now. */
	private boolean take(EditedStrokes strokes, EditedPasses passes, Resorting resorting) {
		List<ThreadingOperation> all = new ArrayList<>(operations);
		List<Draft> others = new ArrayList<>(drafts);
		Operations again = reading.again();
		TreeMap<Integer, Integer> moved = new TreeMap<>(resorting.moved());
		Map<Integer, Integer> repeats = repeats(strokes, resorting);
		Holes now = resorting.holes();
		for (int i = 0; i < all.size(); i++) {
			ThreadingOperation known = all.get(i);
			Collection<Integer> here = moved.subMap(known.firstOrder(), true, known.lastOrder(), true).keySet();
			if (known instanceof Tapping tapping && (strokes.has(i) || !here.isEmpty())) {
				List<StrokeRow> rows = strokes.rows(tapping, moved, here);
				Strokes made = tapping.strokes().with(rows, now, repeats.getOrDefault(i, 0));
				others.set(i, drafts.get(i).with(rows.stream().map(StrokeRow::first).toList()));
				all.set(i, rows.isEmpty() ? known : again.operation(i, -1, others.get(i), sameToolBefore(others, i), made,
						PassStretches.none(now)));
			} else if (known instanceof ThreadMilling milling && (passes.operation() == i || !here.isEmpty())) {
				Optional<PassStretches> made = passes.of(i).into(milling.stretches(), moved, resorting);
				made.ifPresent(stretches -> others.set(milling.index(), drafts.get(milling.index()).between(stretches.first(),
						stretches.last())));
				all.set(i, made.isEmpty() ? known : again.operation(i, -1, others.get(i), sameToolBefore(others, i),
						Strokes.none(now), made.get()));
			} else {
				continue;
			}
			if (all.get(i) == known || all.get(i).group() != known.group() || !sorted(all.get(i))) {
				return false;
			}
		}
		BitSet open = (BitSet) unthreaded.clone();
		resorting.touched().forEach(open::clear);
		resorting.numbers().forEach(hole -> open.set(hole, now.made(hole) && now.edited(hole).visits().isEmpty()));
		unthreaded = open;
		holes = now;
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

	/** How many strokes of each operation more go into a hole that one before them has gone into. */
	private Map<Integer, Integer> repeats(EditedStrokes strokes, Resorting resorting) {
		Map<Integer, Integer> more = new HashMap<>();
		for (int hole : resorting.touched()) {
			count(visits(hole), this::operation, -1, more);
		}
		for (int hole : resorting.numbers()) {
			count(resorting.holes().edited(hole).visits(), order -> strokes.operation(order, this::operation), 1, more);
		}
		return more;
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
