package truelead.checker.work;

import java.util.Arrays;

/** Finds the row that one of many is in, by how many come before each row. */
final class RowStarts {

	private RowStarts() {
	}

	/** The row of an index, from 0; the starts begin with 0 and never fall. */
	static int row(int[] starts, int index) {
		int found = Arrays.binarySearch(starts, index);
		return found >= 0 ? found : -found - 2;
	}
}
