package truelead.checker.stroke;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.program.InOrder;

/**
 * The strokes of a tapping operation in the order of execution. Those of a row of places are made when they are asked for, so that a plate
 * of a hundred thousand holes is no more than its numbers; a rule that asks for the {@link #typical()} ones judges it by a few of them.
 */
public final class Strokes extends AbstractList<TapStroke> implements RandomAccess {

	private final Holes holes;
	private final List<StrokeRow> rows;
	/** Number of strokes before each row. */
	private final int[] starts;
	private final int size;
	private final StrokeKinds alike;
	/** How many strokes go into a hole that one before them has gone into; below 0 where it is not known. */
	private int repeats;
	private volatile Kinds kinds;
	private List<Hole> places;

	/** @param known the holes of some of the rows, by number, where they are known already */
	public Strokes(List<Stroke> rows, Holes holes, Map<Stroke, int[]> known) {
		this(rows(rows, holes, known), holes, new StrokeKinds(), -1);
	}

	/** No strokes. */
	public static Strokes none(Holes holes) {
		return new Strokes(List.of(), holes, new StrokeKinds(), 0);
	}

	private Strokes(List<StrokeRow> rows, Holes holes, StrokeKinds alike, int repeats) {
		this.holes = holes;
		this.rows = List.copyOf(rows);
		this.alike = alike;
		this.repeats = repeats;
		this.starts = new int[rows.size()];
		int count = 0;
		for (int row = 0; row < starts.length; row++) {
			starts[row] = count;
			count += rows.get(row).count();
		}
		size = count;
	}

	private static List<StrokeRow> rows(List<Stroke> rows, Holes holes, Map<Stroke, int[]> known) {
		List<StrokeRow> made = new ArrayList<>(rows.size());
		for (Stroke first : rows) {
			int[] numbers = known.get(first);
			made.add(new StrokeRow(first, numbers != null ? numbers : first.row().map(r -> holes.at(first.place(), r)).orElseGet(() ->
					new int[] {holes.at(first.place(), 0)})));
		}
		return made;
	}

	/**
	 * The same with other rows, after an edit.
	 *
	 * @param more how many strokes more go into a hole that one before them has gone into
	 */
	public Strokes with(List<StrokeRow> others, Holes edited, int more) {
		alike.edited();
		return new Strokes(others, edited, alike, repeats() + more);
	}

	/** The rows, in the order of execution. */
	public List<StrokeRow> rows() {
		return rows;
	}

	@Override
	public int size() {
		return size;
	}

	@Override
	public TapStroke get(int index) {
		return index == 0 && size > 0 ? kinds().typical.get(0) : made(index);
	}

	private TapStroke made(int index) {
		int row = row(index);
		return rows.get(row).stroke(index - starts[row], holes);
	}

	/**
	 * One stroke of each kind, the first of it: those of a kind differ in place, block and time alone, and so do the cuts at their holes,
	 * so that what is true of one in all other respects is true of all. In the order of execution.
	 */
	public List<TapStroke> typical() {
		return kinds().typical;
	}

	/** How many strokes there are of the kind of one of the {@link #typical()} ones. */
	public int count(int kind) {
		return kinds().counts[kind];
	}

	/** The strokes of the kinds whose {@link #typical()} stroke is as asked, in the order of execution. */
	public List<TapStroke> where(Predicate<TapStroke> asked) {
		List<TapStroke> all = typical();
		BitSet wanted = new BitSet();
		for (int kind = 0; kind < all.size(); kind++) {
			wanted.set(kind, asked.test(all.get(kind)));
		}
		return ofKinds(wanted);
	}

	/** The strokes of some of the {@link #typical()} kinds, in the order of execution. */
	public List<TapStroke> ofKinds(BitSet wanted) {
		return wanted.isEmpty() ? List.of() : new ChosenStrokes(rows, kinds().keys(wanted), holes);
	}

	/** The holes that are threaded, in the order first reached. */
	public synchronized List<Hole> holes() {
		if (places == null && repeats == 0) {
			places = new AbstractList<>() {

				@Override
				public Hole get(int index) {
					return hole(index);
				}

				@Override
				public int size() {
					return size;
				}
			};
		} else if (places == null) {
			int[] distinct = distinct();
			repeats = distinct == null ? repeats : size - distinct.length;
			places = distinct == null ? unknown() : holes.holes(distinct);
		}
		return places;
	}

	private Hole hole(int index) {
		int row = row(index);
		return holes.hole(rows.get(row).hole(index - starts[row]));
	}

	private int row(int index) {
		return InOrder.row(starts, index);
	}

	/** Whether each is at a known place. */
	public boolean placed() {
		return repeats() >= 0;
	}

	/** How many go into a hole that one before them has gone into; below 0 where the place of one is not known. */
	private int repeats() {
		if (repeats < 0) {
			holes();
		}
		return repeats;
	}

	/** Whether one of them goes into the hole at a place. */
	public boolean at(Place place) {
		int wanted = holes.at(place, 0);
		boolean found = false;
		for (int row = 0; row < starts.length && !found && wanted >= 0; row++) {
			for (int hole : rows.get(row).holes()) {
				found |= hole == wanted;
			}
		}
		return found;
	}

	/** Hands out the number of each stroke's hole; below 0 for one that is at no known place. */
	public void numbers(IntConsumer numbers) {
		for (StrokeRow row : rows) {
			for (int hole : row.holes()) {
				numbers.accept(hole);
			}
		}
	}

	/** Marks the numbers of the holes that are threaded. */
	public void mark(BitSet threaded) {
		numbers(hole -> {
			if (hole != StrokeRow.UNKNOWN) {
				threaded.set(hole);
			}
		});
	}

	/** Each hole once; null where one is at a place that is not known. */
	private int[] distinct() {
		BitSet met = new BitSet();
		int[] distinct = new int[size];
		int count = 0;
		for (StrokeRow row : rows) {
			for (int hole : row.holes()) {
				if (hole == StrokeRow.UNKNOWN) {
					return null;
				}
				if (!met.get(hole)) {
					met.set(hole);
					distinct[count++] = hole;
				}
			}
		}
		return rows.size() == 1 && count == size ? rows.get(0).holes() : Arrays.copyOf(distinct, count);
	}

	private List<Hole> unknown() {
		Map<Place, Hole> met = new LinkedHashMap<>();
		forEach(stroke -> met.putIfAbsent(stroke.place(), stroke.hole()));
		return List.copyOf(met.values());
	}

	private Kinds kinds() {
		Kinds known = kinds;
		return known != null ? known : sortOnce();
	}

	private synchronized Kinds sortOnce() {
		if (kinds == null) {
			synchronized (holes.pairs()) {
				kinds = new Kinds();
			}
		}
		return kinds;
	}

	/** The kinds of strokes. */
	private final class Kinds {

		private final List<TapStroke> typical = new ArrayList<>();
		/** By the numbers that tell them. */
		private final Map<Integer, Integer> numbers = new HashMap<>();
		private int[] counts = new int[4];

		Kinds() {
			int lastKey = -1;
			int last = -1;
			for (StrokeRow row : rows) {
				row.sort(alike, holes);
				for (int i = 0; i < row.kinds(); i++) {
					last = row.key(i) == lastKey ? last : kind(row, i);
					lastKey = row.key(i);
					counts[last] += row.count(i);
				}
			}
		}

		/** The numbers that tell some of them. */
		private Set<Integer> keys(BitSet wanted) {
			Set<Integer> keys = new HashSet<>();
			numbers.forEach((key, kind) -> {
				if (wanted.get(kind)) {
					keys.add(key);
				}
			});
			return keys;
		}

		private int kind(StrokeRow row, int kind) {
			Integer known = numbers.putIfAbsent(row.key(kind), typical.size());
			if (known != null) {
				return known;
			}
			if (typical.size() == counts.length) {
				counts = Arrays.copyOf(counts, counts.length * 2);
			}
			typical.add(row.stroke(row.first(kind), holes));
			return typical.size() - 1;
		}
	}
}
