package truelead.checker.pass;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.machine.Step;
import truelead.checker.program.InOrder;

/**
 * Passes of a thread milling operation one after the other with the numbers of their holes and their kinds; a pass itself is made when it
 * is asked for.
 */
final class PassTable {

	private static final int NONE = -1;

	private final List<PassRow> rows;
	private final Holes holes;
	private final PassShapes shapes;
	/** Number of passes before each row. */
	private final int[] starts;
	/** The hole of each pass; below 0 for one that is at no known place. */
	private final int[] holeOf;
	private volatile PassKinds kinds;
	private PassRange range;

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
		Pass pass = rows.get(row).pass(index - starts[row]);
		return pass.at(holeOf[index] < 0 ? Hole.untouched(pass.place()) : holes.hole(holeOf[index]));
	}

	/** The same, which need not be made where it is the first of its kind. */
	MillPass made(int index) {
		int kind = kind(index);
		return kinds().first(kind) == index ? typical(kind) : pass(index);
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

	/** Hands out the hole of each pass and the number of its first arc. */
	void visits(PassStretches.Visit visit) {
		int pass = 0;
		for (PassRow row : rows) {
			for (int i = 0; i < row.count(); i++) {
				visit.take(holeOf[pass++], row.order(i));
			}
		}
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
		return hole < 0 ? place(index).equals(place) : holes.u(hole) == place.u() && holes.v(hole) == place.v()
				&& holes.place(hole).equals(place);
	}

	/** Whether none of the holes can be at a place, as all lie to one side of it. */
	boolean isBeside(Place place) {
		return range().beside(place);
	}

	/** Where they are, on the part and in the text. */
	private synchronized PassRange range() {
		if (range == null) {
			range = PassRange.of(rows, holeOf, holes);
		}
		return range;
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
		return kinds().of(index);
	}

	/** Number of kinds. */
	int kindCount() {
		return kinds().count();
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
		for (int row = 0; row < starts.length && range().has(arc); row++) {
			if (rows.get(row) instanceof Pass pass && (pass.helix().contains(arc) || pass.entry().contains(arc)
					|| pass.exit().contains(arc))) {
				around.add(pass(starts[row]));
			}
		}
		return around;
	}

	private int row(int index) {
		return InOrder.row(starts, index);
	}

	private PassKinds kinds() {
		PassKinds known = kinds;
		return known != null ? known : sortOnce();
	}

	private synchronized PassKinds sortOnce() {
		if (kinds == null) {
			kinds = new PassKinds(this, holes, shapes);
		}
		return kinds;
	}
}
