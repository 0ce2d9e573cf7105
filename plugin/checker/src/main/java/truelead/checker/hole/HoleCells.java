package truelead.checker.hole;

import java.util.Arrays;

/** Which holes are in a cell of each frame: the last one of those whose cells share a slot, and before each the one added before it. */
final class HoleCells {

	private static final long OUTERMOST = 1L << 30;

	/**
	 * Coordinates are round numbers as a rule, and are to lie inside a cell: what is looked for within a tolerance is then in one cell, not
	 * in four.
	 */
	private static final double OFFSET = 0.185;

	private final double size;
	private int[] slots = filled(16);
	private int[] before = new int[16];

	/** @param size of a cell, mm */
	HoleCells(double size) {
		this.size = size;
	}

	/** The cell that a coordinate in mm lies in; all that is further away than any machine reaches lies in the outermost. */
	long cell(double coordinate) {
		double cells = coordinate / size + OFFSET;
		long cell = cells > OUTERMOST ? OUTERMOST : cells < -OUTERMOST ? -OUTERMOST : (long) cells;
		return cells < cell ? cell - 1 : cell;
	}

	/** The last hole of those whose cells share the slot of a cell; -1 where there is none. */
	int last(int frame, long across, long along) {
		return slots[slot(frame, across, along)];
	}

	/** The hole before one in its slot; -1 where there is none. */
	int before(int hole) {
		return before[hole];
	}

	private int slot(int frame, long across, long along) {
		return Place.scatter(across + frame * 31L, along) & slots.length - 1;
	}

	/** Adds a hole, for which there is room. */
	void link(int hole, int frame, double u, double v) {
		int slot = slot(frame, cell(u), cell(v));
		before[hole] = slots[slot];
		slots[slot] = hole;
	}

	/** Makes room for so many; true where all have to be added anew. */
	boolean resize(int room) {
		before = Arrays.copyOf(before, room);
		int many = Integer.highestOneBit(Math.max(16, room - 1)) * 2;
		boolean other = many != slots.length;
		slots = other ? filled(many) : slots;
		return other;
	}

	private static int[] filled(int size) {
		int[] empty = new int[size];
		Arrays.fill(empty, -1);
		return empty;
	}
}
