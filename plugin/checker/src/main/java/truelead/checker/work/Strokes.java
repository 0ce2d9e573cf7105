package truelead.checker.work;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.PairNumbers;
import truelead.checker.hole.Place;

/**
 * The strokes of a tapping operation in the order of execution. Those of a row of places are made when they are asked for, so that a plate of a
 * hundred thousand holes is no more than its numbers; a rule that asks for the {@link #typical()} ones judges it by a few of them.
 */
public final class Strokes extends AbstractList<TapStroke> implements RandomAccess {

	private static final int UNKNOWN = -1;

	private final Holes holes;
	private final List<Draft.Stroke> rows;
	/** The holes of each row, by number; -1 for one that is at no known place. */
	private final int[][] holesOf;
	/** Number of strokes before each row. */
	private final int[] starts;
	private final int size;
	private Kinds kinds;
	private List<Hole> places;

	/** @param known the holes of some of the rows, by number, where they are known already */
	Strokes(List<Draft.Stroke> rows, Holes holes, Map<Draft.Stroke, int[]> known) {
		this.holes = holes;
		this.rows = List.copyOf(rows);
		this.holesOf = new int[rows.size()][];
		this.starts = new int[rows.size()];
		int count = 0;
		for (int row = 0; row < starts.length; row++) {
			Draft.Stroke first = rows.get(row);
			starts[row] = count;
			count += first.count();
			int[] numbers = known.get(first);
			holesOf[row] = numbers != null ? numbers : first.row().map(r -> holes.at(first.place(), r)).orElseGet(() -> new int[] {holes.at(first.place(), 0)});
		}
		size = count;
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
		int found = Arrays.binarySearch(starts, index);
		int row = found >= 0 ? found : -found - 2;
		int hole = holesOf[row][index - starts[row]];
		return rows.get(row).at(index - starts[row], hole == UNKNOWN ? Hole.untouched(rows.get(row).place()) : holes.hole(hole));
	}

	/**
	 * One stroke of each kind, the first of it: those of a kind differ in place, block and time alone, and so do the cuts at their holes, so that what
	 * is true of one in all other respects is true of all. In the order of execution.
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
		return wanted.isEmpty() ? List.of() : new Chosen(kinds(), wanted);
	}

	/** The holes that are threaded, in the order first reached. */
	public synchronized List<Hole> holes() {
		if (places == null) {
			int[] distinct = distinct();
			places = distinct == null ? unknown() : holes.holes(distinct);
		}
		return places;
	}

	/** Hands out the number of each stroke's hole; below 0 for one that is at no known place. */
	void numbers(IntConsumer numbers) {
		for (int[] row : holesOf) {
			for (int hole : row) {
				numbers.accept(hole);
			}
		}
	}

	/** Marks the numbers of the holes that are threaded. */
	void mark(BitSet threaded) {
		numbers(hole -> {
			if (hole != UNKNOWN) {
				threaded.set(hole);
			}
		});
	}

	/** Each hole once; null where one is at a place that is not known. */
	private int[] distinct() {
		BitSet met = new BitSet();
		int[] distinct = new int[size];
		int count = 0;
		for (int[] row : holesOf) {
			for (int hole : row) {
				if (hole == UNKNOWN) {
					return null;
				}
				if (!met.get(hole)) {
					met.set(hole);
					distinct[count++] = hole;
				}
			}
		}
		return holesOf.length == 1 && count == size ? holesOf[0] : Arrays.copyOf(distinct, count);
	}

	private List<Hole> unknown() {
		Map<Place, Hole> met = new LinkedHashMap<>();
		forEach(stroke -> met.putIfAbsent(stroke.place(), stroke.hole()));
		return List.copyOf(met.values());
	}

	private synchronized Kinds kinds() {
		if (kinds == null) {
			kinds = new Kinds();
		}
		return kinds;
	}

	/** The kinds of strokes, and which stretches of the strokes are of which. */
	private final class Kinds {

		private final List<TapStroke> typical = new ArrayList<>();
		private final Map<Integer, Integer> numbers = new LinkedHashMap<>();
		private int[] from = new int[4];
		private int[] kindFrom = new int[4];
		private int stretches;
		private int lastNumber;
		private final int[] counts;

		Kinds() {
			synchronized (holes.pairs()) {
				sort(holes.pairs());
			}
			from = Arrays.copyOf(from, stretches);
			kindFrom = Arrays.copyOf(kindFrom, stretches);
			numbers.clear();
			counts = new int[typical.size()];
			for (int stretch = 0; stretch < stretches; stretch++) {
				counts[kindFrom[stretch]] += end(stretch) - from[stretch];
			}
		}

		/** Behind the last stroke of a stretch. */
		private int end(int stretch) {
			return stretch + 1 < stretches ? from[stretch + 1] : size;
		}

		private void sort(PairNumbers pairs) {
			StrokeKinds alike = new StrokeKinds();
			int at = 0;
			for (int row = 0; row < holesOf.length; row++) {
				Draft.Stroke first = rows.get(row);
				int kind = alike.of(first);
				for (int i = 0; i < holesOf[row].length; i++, at++) {
					int hole = holesOf[row][i];
					int decimals = first.row().isEmpty() ? 0 : first.row().get().decimals(i);
					add(at, hole == UNKNOWN ? pairs.of(alike.another(), 0) : pairs.of(kind, pairs.of(holes.history(hole, first.order() + i), decimals)));
				}
			}
		}

		private void add(int at, int number) {
			if (stretches > 0 && number == lastNumber) {
				return;
			}
			lastNumber = number;
			Integer known = numbers.get(number);
			int kind = known == null ? typical.size() : known;
			if (known == null) {
				numbers.put(number, kind);
				typical.add(made(at));
			}
			if (stretches == 0 || kindFrom[stretches - 1] != kind) {
				if (stretches == from.length) {
					from = Arrays.copyOf(from, stretches * 2);
					kindFrom = Arrays.copyOf(kindFrom, stretches * 2);
				}
				from[stretches] = at;
				kindFrom[stretches++] = kind;
			}
		}
	}

	/** The strokes of some kinds. */
	private final class Chosen extends AbstractList<TapStroke> implements RandomAccess {

		/** Numbers of the stretches that are of these kinds, and how many strokes come before each. */
		private final int[] chosen;
		private final int[] counts;
		private final Kinds known;
		private final int all;

		Chosen(Kinds known, BitSet wanted) {
			this.known = known;
			int[] stretches = new int[known.stretches];
			int[] before = new int[known.stretches];
			int found = 0;
			int count = 0;
			for (int stretch = 0; stretch < stretches.length; stretch++) {
				if (wanted.get(known.kindFrom[stretch])) {
					stretches[found] = stretch;
					before[found++] = count;
					count += known.end(stretch) - known.from[stretch];
				}
			}
			chosen = Arrays.copyOf(stretches, found);
			counts = Arrays.copyOf(before, found);
			all = count;
		}

		@Override
		public TapStroke get(int index) {
			int found = Arrays.binarySearch(counts, index);
			int at = found >= 0 ? found : -found - 2;
			return Strokes.this.get(known.from[chosen[at]] + index - counts[at]);
		}

		@Override
		public int size() {
			return all;
		}
	}
}
