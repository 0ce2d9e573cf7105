package truelead.checker.program;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;

/** Finds places in what stands in order. */
public final class InOrder {

	private InOrder() {
	}

	/**
	 * The row that one of many is in, by how many come before each row: the starts begin with 0 and never fall, rows and what is in them
	 * count from 0.
	 */
	public static int row(int[] starts, int index) {
		int found = Arrays.binarySearch(starts, index);
		return found >= 0 ? found : -found - 2;
	}

	/** How many of a list sorted by a number have a smaller one than a limit. */
	public static <T> int before(List<T> list, ToIntFunction<T> number, int limit) {
		int low = 0;
		int high = list.size();
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (number.applyAsInt(list.get(middle)) < limit) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}
}
