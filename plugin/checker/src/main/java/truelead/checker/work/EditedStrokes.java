package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import truelead.checker.hole.Cut;
import truelead.checker.hole.CutKinds;
import truelead.checker.hole.CutRow;
import truelead.checker.hole.Place;
import truelead.checker.hole.Places;
import truelead.checker.hole.Resorting;
import truelead.checker.machine.Cycle;
import truelead.checker.program.InOrder;
import truelead.checker.stroke.Stroke;
import truelead.checker.stroke.StrokeRow;
import truelead.checker.tool.ToolUse;

/** The strokes of cycles in a part of a tool's stay, as they were before an edit and as they are now. */
final class EditedStrokes {

	/**
	 * Where the strokes of a cycle go: into an operation, or below 0 into holes.
	 *
	 * @param lastLine the last of the lines that say the cycle
	 */
	private record Target(int operation, Cycle.Kind kind, int code, int lastLine) {

		static Target of(TimedStroke timed, int operation) {
			Cycle cycle = timed.stroke().cycle();
			int last = timed.row().filter(row -> row.run().says()).map(row -> row.block().line()).orElse(cycle.start().line());
			return new Target(operation, cycle.kind(), cycle.code(), last);
		}
	}

	private final List<TimedStroke> before;
	private final List<StrokeWalk.Made> was;
	private final List<StrokeWalk.Made> now;

	private EditedStrokes(List<TimedStroke> before, List<StrokeWalk.Made> was, List<StrokeWalk.Made> now) {
		this.before = before;
		this.was = was;
		this.now = now;
	}

	/**
	 * The strokes of a part; empty where those of a cycle may go elsewhere than before.
	 *
	 * @param operation the number of the operation that a step threads in; below 0 for none
	 */
	static Optional<EditedStrokes> of(EditedPasses.Part part, CutKinds kinds, IntUnaryOperator operation) {
		List<TimedStroke> before = part.before().strokes();
		List<TimedStroke> now = part.now().strokes();
		Optional<NavigableMap<Integer, Target>> targets = targets(before, operation);
		if (targets.isEmpty() || !now.stream().allMatch(timed -> goesOn(timed, part.tool(), targets.get()))) {
			return Optional.empty();
		}
		return Optional.of(new EditedStrokes(before, made(before, part.tool(), targets.get(), kinds),
				made(now, part.tool(), targets.get(), kinds)));
	}

	/** By the first of the lines that say the cycle. */
	private static Optional<NavigableMap<Integer, Target>> targets(List<TimedStroke> strokes, IntUnaryOperator operation) {
		NavigableMap<Integer, Target> targets = new TreeMap<>();
		for (TimedStroke timed : strokes) {
			Target target = Target.of(timed, operation.applyAsInt(timed.order()));
			Target other = targets.putIfAbsent(timed.stroke().cycle().start().line(), target);
			if (other != null && !other.equals(target)) {
				return Optional.empty();
			}
		}
		return Optional.of(targets);
	}

	/** Whether strokes go where those of their cycle went before. */
	private static boolean goesOn(TimedStroke timed, ToolUse use, NavigableMap<Integer, Target> targets) {
		Cycle cycle = timed.stroke().cycle();
		Target target = at(targets, cycle);
		boolean threads = target != null && (target.kind().taps() || use.facts().isTap()
				|| TapDrafts.turnsLikeATap(TapDrafts.stroke(timed, use)));
		return target != null && target.kind() == cycle.kind() && target.code() == cycle.code() && (threads || target.operation() < 0);
	}

	/** Where the strokes of a cycle went; null where none was said in its line. */
	private static Target at(NavigableMap<Integer, Target> targets, Cycle cycle) {
		Map.Entry<Integer, Target> found = targets.floorEntry(cycle.start().line());
		return found != null && cycle.start().line() <= found.getValue().lastLine() ? found.getValue() : null;
	}

	private static List<StrokeWalk.Made> made(List<TimedStroke> strokes, ToolUse use, NavigableMap<Integer, Target> targets,
			CutKinds kinds) {
		List<StrokeWalk.Made> made = new ArrayList<>();
		for (TimedStroke timed : strokes) {
			int operation = at(targets, timed.stroke().cycle()).operation();
			Place first = Places.of(timed.tool().part(), timed.stroke());
			Optional<CutRow> cut = Optional.empty();
			if (operation < 0) {
				Cut one = Cuts.of(timed.order(), timed.stroke(), use, first);
				cut = Optional.of(new CutRow(one, timed.row(), kinds.of(one, timed.row().isPresent())));
			}
			made.add(new StrokeWalk.Made(timed, first, cut, operation));
		}
		return made;
	}

	/** Hands out what is done elsewhere now, or otherwise, or at another time. */
	void differ(List<Resorting.Doing> removed, List<Resorting.Doing> added) {
		StrokeWalk old = new StrokeWalk(was);
		StrokeWalk fresh = new StrokeWalk(now);
		while (!old.done() || !fresh.done()) {
			boolean gone = fresh.done() || !old.done() && old.order() < fresh.order();
			boolean more = old.done() || !fresh.done() && fresh.order() < old.order();
			boolean other = !gone && !more && !old.same(fresh);
			if (gone || other) {
				removed.add(new Resorting.Doing(old.order(), old.place(), 0, old.cut()));
			}
			if (more || other) {
				added.add(new Resorting.Doing(fresh.order(), fresh.place(), 0, fresh.cut()));
			}
			if (!more) {
				old.next();
			}
			if (!gone) {
				fresh.next();
			}
		}
	}

	/** The operation that a stroke is of now; that of a step elsewhere as it was. */
	int operation(int order, IntUnaryOperator known) {
		int found = InOrder.before(now, one -> one.timed().order(), order + 1) - 1;
		return found >= 0 && order < now.get(found).timed().order() + now.get(found).count() ? now.get(found).operation()
				: known.applyAsInt(order);
	}

	/** Whether some were or are of an operation. */
	boolean has(int operation) {
		return was.stream().anyMatch(one -> one.operation() == operation) || now.stream().anyMatch(one -> one.operation() == operation);
	}

	/**
	 * The rows of an operation, those recorded anew among them, and those with strokes at holes that are others now made anew.
	 *
	 * @param moved the holes that steps are at now, where they or their holes are others, by the numbers of the steps
	 * @param here  those of the steps that may be of the operation
	 */
	List<StrokeRow> rows(Tapping tapping, Map<Integer, Integer> moved, Iterable<Integer> here) {
		List<StrokeRow> known = tapping.strokes().rows();
		List<StrokeRow> rows = new ArrayList<>(known);
		int done = -1;
		for (int order : here) {
			int row = row(known, order);
			if (row >= 0 && row != done) {
				rows.set(row, row(known.get(row).first(), known, moved));
				done = row;
			}
		}
		if (has(tapping.index())) {
			List<StrokeRow> place = rows.subList(InOrder.before(known, row -> row.first().order(), before.get(0).order()),
					InOrder.before(known, row -> row.first().order(), before.get(before.size() - 1).order() + 1));
			place.clear();
			now.stream().filter(one -> one.operation() == tapping.index())
					.forEach(one -> place.add(row(TapDrafts.stroke(one.timed(), tapping.tool()), known, moved)));
		}
		return rows;
	}

	private static StrokeRow row(Stroke first, List<StrokeRow> known, Map<Integer, Integer> moved) {
		int[] holes = new int[first.count()];
		for (int i = 0; i < holes.length; i++) {
			int order = first.order() + i;
			Integer now = moved.get(order);
			int row = now == null ? row(known, order) : -1;
			holes[i] = now != null ? now : known.get(row).hole(order - known.get(row).first().order());
		}
		return new StrokeRow(first, holes);
	}

	/** The row that a stroke is in; below 0 for none. */
	static int row(List<StrokeRow> rows, int order) {
		int found = InOrder.before(rows, row -> row.first().order(), order + 1) - 1;
		return found >= 0 && order <= rows.get(found).first().lastOrder() ? found : -1;
	}
}
