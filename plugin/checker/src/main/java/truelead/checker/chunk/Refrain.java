package truelead.checker.chunk;

import java.util.Arrays;

/**
 * Blocks of a chunk that come again and again, the same but for where they begin: what a helix is written with, hole after hole. Told from
 * the text alone; lines count from the start of the chunk. Absolute distances are taken to be in force where it begins.
 */
public final class Refrain {

	private final int from;
	private final int period;
	/** Where each turn begins, program units. */
	private final double[] x;
	private final double[] y;
	/** A number for the decimals that a turn is written with. */
	private final int[] decimals;
	private final boolean stands;

	/**
	 * @param stands whether the first turn leaves X or Y as it stands
	 * @param count how many of the places are taken
	 */
	Refrain(int from, int period, boolean stands, int count, double[] x, double[] y, int[] decimals) {
		this.from = from;
		this.period = period;
		this.stands = stands;
		this.x = Arrays.copyOf(x, count);
		this.y = Arrays.copyOf(y, count);
		this.decimals = Arrays.copyOf(decimals, count);
	}

	/** First line of the first turn. */
	public int from() {
		return from;
	}

	/** Number of lines of a turn. */
	public int period() {
		return period;
	}

	/** Number of turns. */
	public int count() {
		return x.length;
	}

	/** First line of a turn. */
	public int line(int turn) {
		return from + turn * period;
	}

	/** The X that a turn begins at, program units. */
	public double x(int turn) {
		return x[turn];
	}

	/** The Y that a turn begins at, program units. */
	public double y(int turn) {
		return y[turn];
	}

	/** Whether the first turn begins at the X or Y where the tool stands. */
	public boolean stands() {
		return stands;
	}

	/** A number that turns have in common that are written with as many decimals, block by block. */
	public int decimals(int turn) {
		return decimals[turn];
	}

	/** One of the first three turns, after which it is known whether the machine does the same each time. */
	public record Turn(Refrain refrain, int number) {

		public static final int LAST = 2;

		/** First line of the turn. */
		public int from() {
			return refrain.line(number);
		}
	}
}
