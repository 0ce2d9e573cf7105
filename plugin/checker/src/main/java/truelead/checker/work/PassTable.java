package truelead.checker.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.PairNumbers;
import truelead.checker.hole.Place;

/** All passes of a thread milling operation with the numbers of their holes and their kinds; a pass itself is made when it is asked for. */
final class PassTable {

	private static final int UNKNOWN = -1;

	private final List<PassRow> rows;
	private final Holes holes;
	/** Number of passes before each row. */
	private final int[] starts;
	/** The hole of each pass; {@link #UNKNOWN} for one that is at no known place. */
	private final int[] holeOf;
	private Kinds kinds;

	/** @param within how far a hole may be from a place written to a resolution, mm */
	PassTable(List<PassRow> rows, Holes holes, DoubleUnaryOperator within) {
		this.rows = List.copyOf(rows);
		this.holes = holes;
		this.starts = new int[rows.size()];
		int count = 0;
		for (int row = 0; row < starts.length; row++) {
			starts[row] = count;
			count += rows.get(row).count();
		}
		this.holeOf = new int[count];
		int at = 0;
		for (PassRow row : rows) {
			for (int i = 0; i < row.count(); i++) {
				holeOf[at++] = holes.at(row.place(i), within.applyAsDouble(row.resolution(i)));
			}
		}
	}

	int size() {
		return holeOf.length;
	}

	/** A pass, from 0, in its hole. */
	MillPass pass(int index) {
		int row = row(index);
		Draft.Pass pass = rows.get(row).pass(index - starts[row]);
		return pass.at(holeOf[index] == UNKNOWN ? Hole.untouched(pass.place()) : holes.hole(holeOf[index]));
	}

	/** The same, which need not be made where it is the first of its kind. */
	MillPass made(int index) {
		int kind = kind(index);
		return kinds().first[kind] == index ? kinds().typical.get(kind) : pass(index);
	}

	/** All passes. */
	MillPasses all() {
		return new MillPasses(this, IntStream.range(0, size()).toArray());
	}

	/** The number of the hole of a pass; below 0 where its place is not known. */
	int hole(int index) {
		return holeOf[index];
	}

	/** All holes. */
	Holes holes() {
		return holes;
	}

	/** Where a pass is, by itself. */
	Place place(int index) {
		int row = row(index);
		return rows.get(row).place(index - starts[row]);
	}

	/** The kind of a pass: those of one kind differ in place, block and time alone, and so do the cuts at their holes. */
	int kind(int index) {
		return kinds().of[index];
	}

	/** Number of kinds. */
	int kindCount() {
		return kinds().typical.size();
	}

	/** The first pass of a kind. */
	MillPass typical(int kind) {
		return kinds().typical.get(kind);
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

	private int row(int index) {
		return RowStarts.row(starts, index);
	}

	private synchronized Kinds kinds() {
		if (kinds == null) {
			kinds = new Kinds();
		}
		return kinds;
	}

	private final class Kinds {

		private final int[] of = new int[size()];
		private final List<MillPass> typical = new ArrayList<>();
		private int[] first = new int[4];

		Kinds() {
			if (of.length == 1) {
				add(0);
				return;
			}
			synchronized (holes.pairs()) {
				sort(holes.pairs());
			}
		}

		private void sort(PairNumbers pairs) {
			PassShapes shapes = new PassShapes();
			Map<Integer, Integer> numbers = new HashMap<>();
			int at = 0;
			for (PassRow row : rows) {
				for (int i = 0; i < row.count(); i++, at++) {
					int number = holeOf[at] == UNKNOWN ? -1 - at
							: pairs.of(row.shape(i, shapes), pairs.of(holes.history(holeOf[at], row.order(i)), offset(row.place(i), at, shapes)));
					Integer known = numbers.get(number);
					of[at] = known == null ? typical.size() : known;
					if (known == null) {
						add(at);
						numbers.put(number, of[at]);
					}
				}
			}
		}

		private void add(int at) {
			if (typical.size() == first.length) {
				first = Arrays.copyOf(first, first.length * 2);
			}
			first[typical.size()] = at;
			typical.add(pass(at));
		}

		private int offset(Place place, int at, PassShapes shapes) {
			return shapes.offset(holes.u(holeOf[at]) - place.u(), holes.v(holeOf[at]) - place.v());
		}
	}
}
