package truelead.checker.stroke;

import java.util.function.IntPredicate;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.machine.Step;
import truelead.checker.program.InOrder;

/** A stroke of a tapping operation, or a row of them, with their holes and kinds. */
public final class StrokeRow {

	static final int UNKNOWN = -1;

	private final Stroke first;
	/** The hole of each, by number; {@link #UNKNOWN} for one that is at no known place. */
	private final int[] holes;
	private boolean sorted;
	/** The number that tells the kind of all of them, where they are of one. */
	private int key;
	/** The kinds where they are of several; null where they are not. */
	private RowKinds kinds;

	/** @param holes the number of the hole of each; below 0 for one that is at no known place */
	public StrokeRow(Stroke first, int[] holes) {
		this.first = first;
		this.holes = holes;
	}

	/** The first of the strokes. */
	public Stroke first() {
		return first;
	}

	/** How many they are. */
	public int count() {
		return holes.length;
	}

	/** The number of the hole of one, from 0. */
	public int hole(int index) {
		return holes[index];
	}

	/** The numbers of the holes, not to be changed. */
	int[] holes() {
		return holes;
	}

	/** Where one is. */
	public Place place(int index) {
		return first.row().map(row -> first.place().at(row.x(index), row.y(index))).orElse(first.place());
	}

	/** One of them, from 0, in its hole. */
	TapStroke stroke(int index, Holes all) {
		return first.at(index, holes[index] == UNKNOWN ? Hole.untouched(first.place()) : all.hole(holes[index]));
	}

	/**
	 * Tells the kinds apart, once, by numbers that the rows of an operation have in common; whoever asks holds the monitor of
	 * {@link Holes#pairs}.
	 */
	void sort(StrokeKinds alike, Holes all) {
		if (sorted) {
			return;
		}
		int kind = alike.of(first);
		int now = 0;
		for (int i = 0; i < holes.length; i++) {
			now = i > 0 && asBefore(i, all) ? now : holes[i] == UNKNOWN ? all.pairs().of(alike.another(), 0)
					: all.pairs().of(kind, all.pairs().of(all.history(holes[i], first.order() + i), decimals(i)));
			if (i == 0) {
				key = now;
			} else if (kinds != null || now != key) {
				kinds = kinds == null ? new RowKinds(key, holes.length) : kinds;
				kinds.add(i, now);
			}
		}
		sorted = true;
	}

	/** Whether one is sure to be of the kind of the one before it. */
	private boolean asBefore(int index, Holes all) {
		int order = first.order() + index;
		return holes[index] != UNKNOWN && holes[index - 1] != UNKNOWN && decimals(index) == decimals(index - 1)
				&& all.alike(holes[index], order, holes[index - 1], order - 1);
	}

	private int decimals(int index) {
		return first.row().isPresent() ? first.row().get().decimals(index) : first.step() instanceof Step.Stroke stroke
				? Math.max(0, stroke.decimals()) : 0;
	}

	/** Number of kinds; below they are told in the order of their first strokes. */
	int kinds() {
		return kinds == null ? 1 : kinds.count();
	}

	/** The number that tells a kind. */
	int key(int kind) {
		return kinds == null ? key : kinds.key(kind);
	}

	/** The first stroke of a kind. */
	int first(int kind) {
		return kinds == null ? 0 : kinds.first(kind);
	}

	/** How many strokes are of a kind. */
	int count(int kind) {
		return kinds == null ? holes.length : kinds.strokes(kind);
	}

	/** The strokes of the kinds whose numbers are as wanted. */
	Part part(IntPredicate wanted) {
		return kinds == null ? new Part(new int[] {0}, new int[] {0}) : kinds.part(wanted);
	}

	/**
	 * Some stretches of the strokes.
	 *
	 * @param from   where each begins
	 * @param before how many strokes come before each
	 */
	record Part(int[] from, int[] before) {

		/** One of them among all. */
		int index(int index) {
			int at = InOrder.row(before, index);
			return from[at] + index - before[at];
		}
	}
}
