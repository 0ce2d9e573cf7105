package truelead.checker.stroke;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;

/** The kinds of a row's strokes, which of its stretches are of which, and how many strokes. */
final class RowKinds {

	private final int size;
	private int[] from = new int[4];
	private int[] kindFrom = new int[4];
	private int stretches;
	private final Map<Integer, Integer> numbers = new HashMap<>();
	private int[] keys = new int[2];
	private int[] firsts = new int[2];
	private int[] counts = new int[2];
	private int kinds;

	/** @param first the number that tells the kind of the first stroke, and of all that are not added otherwise */
	RowKinds(int first, int size) {
		this.size = size;
		begin(0, first);
	}

	/** A stroke behind those before is of a kind. */
	void add(int index, int key) {
		if (keys[kindFrom[stretches - 1]] != key) {
			begin(index, key);
		}
	}

	private void begin(int index, int key) {
		if (stretches > 0) {
			counts[kindFrom[stretches - 1]] += index - from[stretches - 1];
		}
		if (stretches == from.length) {
			from = Arrays.copyOf(from, stretches * 2);
			kindFrom = Arrays.copyOf(kindFrom, stretches * 2);
		}
		from[stretches] = index;
		kindFrom[stretches++] = kind(index, key);
	}

	private int kind(int index, int key) {
		Integer known = numbers.putIfAbsent(key, kinds);
		if (known != null) {
			return known;
		}
		if (kinds == keys.length) {
			keys = Arrays.copyOf(keys, kinds * 2);
			firsts = Arrays.copyOf(firsts, kinds * 2);
			counts = Arrays.copyOf(counts, kinds * 2);
		}
		keys[kinds] = key;
		firsts[kinds] = index;
		return kinds++;
	}

	int count() {
		return kinds;
	}

	int key(int kind) {
		return keys[kind];
	}

	int first(int kind) {
		return firsts[kind];
	}

	int strokes(int kind) {
		return counts[kind] + (kind == kindFrom[stretches - 1] ? size - from[stretches - 1] : 0);
	}

	StrokeRow.Part part(IntPredicate wanted) {
		int[] some = new int[stretches];
		int[] before = new int[stretches];
		int found = 0;
		int count = 0;
		for (int stretch = 0; stretch < stretches; stretch++) {
			if (wanted.test(keys[kindFrom[stretch]])) {
				some[found] = from[stretch];
				before[found++] = count;
				count += (stretch + 1 < stretches ? from[stretch + 1] : size) - from[stretch];
			}
		}
		return new StrokeRow.Part(Arrays.copyOf(some, found), Arrays.copyOf(before, found));
	}
}
