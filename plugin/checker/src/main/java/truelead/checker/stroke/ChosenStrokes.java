package truelead.checker.stroke;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import java.util.Set;
import truelead.checker.hole.Holes;
import truelead.checker.program.InOrder;

/** The strokes of some kinds among rows of strokes, in the order of execution, made when they are asked for. */
final class ChosenStrokes extends AbstractList<TapStroke> implements RandomAccess {

	private final List<StrokeRow> rows;
	private final Set<Integer> keys;
	private final Holes holes;
	/** The rows that have strokes of them, and how many come before each. */
	private final int[] chosen;
	private final int[] counts;
	private final int all;
	/** The row asked for last: most go through them in order. */
	private Row last = new Row(-1, new StrokeRow.Part(new int[0], new int[0]));

	private record Row(int number, StrokeRow.Part part) {
	}

	/** @param keys the numbers that tell the kinds */
	ChosenStrokes(List<StrokeRow> rows, Set<Integer> keys, Holes holes) {
		this.rows = rows;
		this.keys = keys;
		this.holes = holes;
		int[] some = new int[rows.size()];
		int[] before = new int[rows.size()];
		int found = 0;
		int count = 0;
		for (int row = 0; row < some.length; row++) {
			int here = of(rows.get(row));
			if (here > 0) {
				some[found] = row;
				before[found++] = count;
				count += here;
			}
		}
		chosen = Arrays.copyOf(some, found);
		counts = Arrays.copyOf(before, found);
		all = count;
	}

	private int of(StrokeRow row) {
		int count = 0;
		for (int kind = 0; kind < row.kinds(); kind++) {
			count += keys.contains(row.key(kind)) ? row.count(kind) : 0;
		}
		return count;
	}

	@Override
	public TapStroke get(int index) {
		int at = InOrder.row(counts, index);
		Row here = last;
		if (here.number() != chosen[at]) {
			here = new Row(chosen[at], rows.get(chosen[at]).part(keys::contains));
			last = here;
		}
		return rows.get(chosen[at]).stroke(here.part().index(index - counts[at]), holes);
	}

	@Override
	public int size() {
		return all;
	}
}
