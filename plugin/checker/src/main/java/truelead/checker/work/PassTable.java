package truelead.checker.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.PairNumbers;
import truelead.checker.hole.Place;
import truelead.checker.machine.Step;

/** Passes of a thread milling operation one after the other with the numbers of their holes and their kinds; a pass itself is made when it is asked for. */
final class PassTable {

	private static final int NONE = -1;
	/** The key of a kind that nobody has asked for. */
	private static final int NOT_YET = 0;

	private final List<PassRow> rows;
	private final Holes holes;
	private final PassShapes shapes;
	/** Number of passes before each row. */
	private final int[] starts;
	/** The hole of each pass; below 0 for one that is at no known place. */
	private final int[] holeOf;
	private Kinds kinds;
	private WrittenLines lines;
	private Range range;

	/**
	 * @param holeOf the number of the hole of each pass; below 0 for one that is at no known place
	 * @param shapes those of the operation; used by who holds the monitor of {@link Holes#pairs} alone
	 */
	PassTable(List<PassRow> rows, int[] holeOf, Holes holes, PassShapes shapes) {
		this.rows = List.copyOf(rows);
		this.holes = holes;
		this.shapes = shapes;
		this.starts = new int[rows.size()];
		int count = 0;
		for (int row = 0; row < starts.length; row++) {
			starts[row] = count;
			count += rows.get(row).count();
		}
		this.holeOf = holeOf;
	}

	int size() {
		return holeOf.length;
	}

	/** The rows that they are made in. */
	List<PassRow> rows() {
		return rows;
	}

	/** A pass, from 0, in its hole. */
	MillPass pass(int index) {
		int row = row(index);
		Draft.Pass pass = rows.get(row).pass(index - starts[row]);
		return pass.at(holeOf[index] < 0 ? Hole.untouched(pass.place()) : holes.hole(holeOf[index]));
	}

	/** The same, which need not be made where it is the first of its kind. */
	MillPass made(int index) {
		int kind = kind(index);
		return kinds().firsts[kind] == index ? typical(kind) : pass(index);
	}

	/** The number of the hole of a pass; below 0 where its place is not known. */
	int hole(int index) {
		return holeOf[index];
	}

	/** The numbers of the holes, not to be changed. */
	int[] holes() {
		return holeOf;
	}

	/** The hole of a pass. */
	Hole holeAt(int index) {
		return holeOf[index] < 0 ? Hole.untouched(place(index)) : holes.hole(holeOf[index]);
	}

	/** Where a pass is, by itself. */
	Place place(int index) {
		int row = row(index);
		return rows.get(row).place(index - starts[row]);
	}

	/** Half of the coarsest last decimal written in the blocks of a pass, mm. */
	double resolution(int index) {
		int row = row(index);
		return rows.get(row).resolution(index - starts[row]);
	}

	/** Whether the hole of a pass is at a place. */
	boolean isAt(int index, Place place) {
		int hole = holeOf[index];
		return hole < 0 ? place(index).equals(place) : holes.u(hole) == place.u() && holes.v(hole) == place.v() && holes.place(hole).equals(place);
	}

	/** Whether none of the holes can be at a place, as all lie to one side of it. */
	boolean isBeside(Place place) {
		return range().beside(place);
	}

	private synchronized Range range() {
		if (range == null) {
			range = Range.of(this);
		}
		return range;
	}

	/** Between what positions in the plane the holes lie, mm; of no use where the place of one is not known. */
	private record Range(double left, double right, double front, double back) {

		static Range of(PassTable table) {
			double left = Double.POSITIVE_INFINITY;
			double right = Double.NEGATIVE_INFINITY;
			double front = left;
			double back = right;
			for (int i = 0; i < table.size(); i++) {
				double u = table.holeOf[i] < 0 ? Double.NaN : table.holes.u(table.holeOf[i]);
				double v = table.holeOf[i] < 0 ? Double.NaN : table.holes.v(table.holeOf[i]);
				left = Math.min(left, u);
				right = Math.max(right, u);
				front = Math.min(front, v);
				back = Math.max(back, v);
			}
			return new Range(left, right, front, back);
		}

		boolean beside(Place place) {
			return place.u() < left || place.u() > right || place.v() < front || place.v() > back;
		}
	}

	/** Half of the coarsest last decimal in the blocks of any pass, mm. */
	double coarsest() {
		double coarsest = 0;
		for (PassRow row : rows) {
			for (int i = 0; i < row.count(); i++) {
				coarsest = Math.max(coarsest, row.resolution(i));
			}
		}
		return coarsest;
	}

	/** Number of the first arc of a pass in the order of execution. */
	int order(int index) {
		int row = row(index);
		return rows.get(row).order(index - starts[row]);
	}

	/** The pass whose first arc has a number in the order of execution; below 0 for none. */
	int at(int order) {
		int low = 0;
		int high = size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			int here = order(middle);
			if (here == order) {
				return middle;
			}
			low = here < order ? middle + 1 : low;
			high = here < order ? high : middle - 1;
		}
		return NONE;
	}

	/** The kind of a pass: those of one kind differ in place, block and time alone, and so do the cuts at their holes. */
	int kind(int index) {
		return kinds().of[index];
	}

	/** Number of kinds. */
	int kindCount() {
		return kinds().count;
	}

	/** The number that tells a kind among all of the operation. */
	int key(int kind) {
		return kinds().key(kind);
	}

	/** The first pass of a kind. */
	MillPass typical(int kind) {
		return kinds().typical(kind);
	}

	/** Passes that stand by themselves, and the first and the last of those that come again: between them lie all others. */
	List<MillPass> outermost() {
		List<MillPass> outermost = new ArrayList<>();
		for (int row = 0; row < starts.length; row++) {
			outermost.add(pass(starts[row]));
			if (rows.get(row).count() > 1) {
				outermost.add(pass(starts[row] + rows.get(row).count() - 1));
			}
		}
		return outermost;
	}

	/** The passes that stand by themselves which an arc is of, or leads to or away from. */
	List<MillPass> around(Step.Arc arc) {
		List<MillPass> around = new ArrayList<>();
		for (int row = 0; row < starts.length && lines().has(arc); row++) {
			if (rows.get(row) instanceof Draft.Pass pass && (pass.helix().contains(arc) || pass.entry().contains(arc) || pass.exit().contains(arc))) {
				around.add(pass(starts[row]));
			}
		}
		return around;
	}

	private synchronized WrittenLines lines() {
		if (lines == null) {
			lines = WrittenLines.of(rows);
		}
		return lines;
	}

	private int row(int index) {
		return RowStarts.row(starts, index);
	}

	private synchronized Kinds kinds() {
		if (kinds == null) {
			kinds = new Kinds();
		}
		return kinds;
	}

	/** The lines that passes by themselves are written in: none stands before the first or behind the last one. */
	private record WrittenLines(int first, int last) {

		static WrittenLines of(List<PassRow> rows) {
			int first = Integer.MAX_VALUE;
			int last = -1;
			for (PassRow row : rows) {
				if (row instanceof Draft.Pass pass) {
					for (List<? extends Step> steps : List.of(pass.entry(), pass.helix(), pass.exit())) {
						for (Step step : steps) {
							first = Math.min(first, step.block().line());
							last = Math.max(last, step.block().line());
						}
					}
				}
			}
			return new WrittenLines(first, last);
		}

		boolean has(Step.Arc arc) {
			return arc.block().line() >= first && arc.block().line() <= last;
		}
	}

	private final class Kinds {

		private final int[] of = new int[size()];
		private int count;
		private int[] firsts = new int[2];
		private int[] keys = new int[2];
		private MillPass[] typical = new MillPass[2];

		Kinds() {
			if (of.length == 1) {
				add(0, NOT_YET);
				return;
			}
			synchronized (holes.pairs()) {
				sort(holes.pairs());
			}
		}

		private void sort(PairNumbers pairs) {
			Map<Integer, Integer> numbers = new HashMap<>();
			int last = NOT_YET;
			int at = 0;
			for (PassRow row : rows) {
				for (int i = 0; i < row.count(); i++, at++) {
					int key = key(row, i, at, pairs);
					if (key == last) {
						of[at] = of[at - 1];
						continue;
					}
					Integer known = numbers.putIfAbsent(key, count);
					of[at] = known == null ? count : known;
					if (known == null) {
						add(at, key);
					}
					last = key;
				}
			}
		}

		private int key(PassRow row, int index, int at, PairNumbers pairs) {
			if (holeOf[at] < 0) {
				return shapes.another();
			}
			Place place = row.place(index);
			return pairs.of(row.shape(index, shapes), pairs.of(holes.history(holeOf[at], row.order(index)),
					shapes.offset(holes.u(holeOf[at]) - place.u(), holes.v(holeOf[at]) - place.v())));
		}

		private void add(int at, int key) {
			if (count == firsts.length) {
				firsts = Arrays.copyOf(firsts, count * 2);
				keys = Arrays.copyOf(keys, count * 2);
				typical = Arrays.copyOf(typical, count * 2);
			}
			firsts[count] = at;
			keys[count++] = key;
		}

		/** A pass by itself has its key when somebody asks for it: most operations of one pass are compared with nothing. */
		int key(int kind) {
			if (keys[kind] == NOT_YET) {
				synchronized (holes.pairs()) {
					keys[kind] = key(rows.get(0), 0, 0, holes.pairs());
				}
			}
			return keys[kind];
		}

		MillPass typical(int kind) {
			if (typical[kind] == null) {
				typical[kind] = pass(firsts[kind]);
			}
			return typical[kind];
		}
	}
}
