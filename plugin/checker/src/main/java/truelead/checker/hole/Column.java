package truelead.checker.hole;

import java.util.Arrays;

/**
 * Values by numbers from 0, most of them missing; one more or another one makes a new column at the cost of a block of them, and leaves
 * this as it is.
 */
final class Column<T> {

	private static final int BITS = 10;
	private static final int BLOCK = 1 << BITS;

	private final Object[][] blocks;

	/** No values. */
	Column() {
		this(new Object[0][]);
	}

	private Column(Object[][] blocks) {
		this.blocks = blocks;
	}

	/** The value of a number; null where it is missing. */
	@SuppressWarnings("unchecked")
	T get(int number) {
		int block = number >> BITS;
		return block >= blocks.length || blocks[block] == null ? null : (T) blocks[block][number & BLOCK - 1];
	}

	/** The same with a value for a number. */
	Column<T> with(int number, T value) {
		int block = number >> BITS;
		Object[][] all = Arrays.copyOf(blocks, Math.max(blocks.length, block + 1));
		all[block] = all[block] == null ? new Object[BLOCK] : all[block].clone();
		all[block][number & BLOCK - 1] = value;
		return new Column<>(all);
	}
}
