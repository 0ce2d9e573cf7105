package truelead.checker.comment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** What stands in the lines of a file, in their order, so that what is in a few of them is found without going through all. */
final class ByLine<T> {

	private final List<T> items = new ArrayList<>();
	private int[] lines = new int[4];

	/** Adds what stands behind all before. */
	void add(int line, T item) {
		if (items.size() == lines.length) {
			lines = Arrays.copyOf(lines, lines.length * 2);
		}
		lines[items.size()] = line;
		items.add(item);
	}

	/** All of it. */
	List<T> all() {
		return Collections.unmodifiableList(items);
	}

	/** What stands in a range of lines, both included. */
	List<T> between(int from, int to) {
		int first = before(from);
		return all().subList(first, Math.max(first, to == Integer.MAX_VALUE ? items.size() : before(to + 1)));
	}

	private int before(int line) {
		int low = 0;
		int high = items.size();
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (lines[middle] < line) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}
}
