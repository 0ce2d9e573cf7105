package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the refrains in the prints of a chunk's blocks, by the numbers that the blocks have there: turns that follow each other, each moved
 * as a whole.
 */
final class RefrainFinder {

	/** Fewer turns are not worth it. */
	private static final int WORTH = 6;
	private static final int LONGEST = 500;
	/** Periods that are tried from one line on. */
	private static final int TRIALS = 6;
	/** Differences of decimal fractions are this exact, program units. */
	private static final double EXACT = 1e-6;

	private final BlockPrints prints;
	/** The next arc from a block on, itself counted; beyond all blocks where there is none. */
	private final int[] arcs;
	/** The next block from a block on that has no print, itself counted. */
	private final int[] ends;
	private final List<Refrain.Turn> found = new ArrayList<>();
	private double lastX = Double.NaN;
	private double lastY = Double.NaN;
	private boolean absolute = true;

	private RefrainFinder(BlockPrints prints) {
		this.prints = prints;
		this.arcs = new int[prints.count() + 1];
		this.ends = new int[prints.count() + 1];
		arcs[prints.count()] = Integer.MAX_VALUE - 1;
		ends[prints.count()] = prints.count();
		for (int block = prints.count() - 1; block >= 0; block--) {
			arcs[block] = prints.arc(block) ? block : arcs[block + 1];
			ends[block] = prints.print(block) == BlockPrints.NONE ? block : ends[block + 1];
		}
	}

	/** The first three turns of each refrain, in order. */
	static Refrain.Turn[] find(BlockPrints prints) {
		RefrainFinder finder = new RefrainFinder(prints);
		int block = 0;
		while (block < prints.count()) {
			block = finder.from(block);
		}
		return finder.found.toArray(Refrain.Turn[]::new);
	}

	/** Looks from a block on; gives the block to go on with. */
	private int from(int block) {
		pass(block);
		if (prints.print(block) == BlockPrints.NONE || !prints.placing(block) || !PlainLines.said(lastX) || !PlainLines.said(lastY)) {
			return block + 1;
		}
		Optional<Refrain> refrain = beginning(block);
		if (refrain.isEmpty()) {
			return block + 1;
		}
		for (int turn = 0; turn <= Refrain.Turn.LAST; turn++) {
			found.add(new Refrain.Turn(refrain.get(), turn));
		}
		int behind = block + refrain.get().count() * refrain.get().period();
		for (int passed = block + 1; passed < behind; passed++) {
			pass(passed);
		}
		return behind;
	}

	/** Keeps where the tool stands, as far as the text tells. */
	private void pass(int block) {
		if (prints.print(block) == BlockPrints.NONE) {
			lastX = Double.NaN;
			lastY = Double.NaN;
			absolute = true;
			return;
		}
		absolute = prints.absolute(block) || absolute && !prints.incremental(block);
		double x = prints.word(block, true);
		double y = prints.word(block, false);
		lastX = !PlainLines.said(x) ? lastX : absolute ? x : Double.NaN;
		lastY = !PlainLines.said(y) ? lastY : absolute ? y : Double.NaN;
	}

	private Optional<Refrain> beginning(int block) {
		int trials = 0;
		int behind = Math.min(block + LONGEST, ends[block]);
		// a turn has an arc in it
		for (int next = arcs[block] + 1; next < behind && trials < TRIALS; next++) {
			if (prints.print(next) == prints.print(block) && prints.placing(next)) {
				trials++;
				Optional<Refrain> refrain = again(block, next) ? new Turns(block, next - block).refrain(lastX, lastY) : Optional.empty();
				if (refrain.isPresent()) {
					return refrain;
				}
			}
		}
		return Optional.empty();
	}

	/** Whether the blocks from a block up to the next one come again there. */
	private boolean again(int block, int next) {
		int period = next - block;
		if (next + period > prints.count()) {
			return false;
		}
		for (int i = 1; i < period; i++) {
			if (prints.print(block + i) != prints.print(next + i)) {
				return false;
			}
		}
		return true;
	}

	/** Turns of a period from a block on. */
	private final class Turns {

		private final int from;
		private final int period;
		/** Whether X and Y words of a block are places. */
		private final boolean[] places;
		private boolean allPlaces = true;
		private boolean arc;
		private double[] x = new double[16];
		private double[] y = new double[16];
		private int[] decimals = new int[16];
		private final Map<Long, Integer> decimalNumbers = new HashMap<>();

		Turns(int from, int period) {
			this.from = from;
			this.period = period;
			this.places = new boolean[period];
			boolean now = true;
			for (int i = 0; i < period; i++) {
				now = prints.absolute(from + i) || now && !prints.incremental(from + i);
				places[i] = now;
				allPlaces &= now;
				arc |= prints.arc(from + i);
			}
		}

		Optional<Refrain> refrain(double firstX, double firstY) {
			if (!arc) {
				return Optional.empty();
			}
			x[0] = firstX;
			y[0] = firstY;
			int count = 1;
			decimals[0] = decimalNumber(0);
			while (from + (count + 1) * period <= prints.count() && turn(count)) {
				decimals[count] = decimalNumber(count);
				count++;
			}
			return count < WORTH ? Optional.empty()
					: Optional.of(new Refrain(prints.line(from), period, !PlainLines.said(prints.word(from, true))
							|| !PlainLines.said(prints.word(from, false)), count, x, y, decimals));
		}

		/** Whether a turn is the first one moved as a whole, and not to where the one before it was. */
		private boolean turn(int turn) {
			int block = from + turn * period;
			for (int i = 0; i < period; i++) {
				if (prints.print(block + i) != prints.print(from + i)) {
					return false;
				}
			}
			if (turn == x.length) {
				x = Arrays.copyOf(x, turn * 2);
				y = Arrays.copyOf(y, turn * 2);
				decimals = Arrays.copyOf(decimals, turn * 2);
			}
			return moved(x, turn, true) && moved(y, turn, false) && (x[turn] != x[turn - 1] || y[turn] != y[turn - 1]);
		}

		private boolean moved(double[] begins, int turn, boolean first) {
			int block = from + turn * period;
			double said = prints.word(block, first);
			if (!PlainLines.said(said) && !(allPlaces && end(begins[turn - 1], block - period, first) == begins[turn - 1])) {
				return false;
			}
			begins[turn] = PlainLines.said(said) ? said : begins[turn - 1];
			double by = begins[turn] - begins[0];
			for (int i = 1; i < period; i++) {
				double word = prints.word(block + i, first);
				double before = prints.word(from + i, first);
				boolean same = !PlainLines.said(word) || (places[i] ? Math.abs(word - before - by) <= EXACT : word == before);
				if (!same) {
					return false;
				}
			}
			return true;
		}

		/** Where a turn ends along an axis. */
		private double end(double begin, int block, boolean first) {
			for (int i = period - 1; i > 0; i--) {
				if (PlainLines.said(prints.word(block + i, first))) {
					return prints.word(block + i, first);
				}
			}
			return begin;
		}

		private int decimalNumber(int turn) {
			long all = 7;
			for (int i = 0; i < period; i++) {
				all = (all ^ prints.decimals(from + turn * period + i)) * 0x9E3779B97F4A7C15L;
			}
			return decimalNumbers.computeIfAbsent(all, fresh -> decimalNumbers.size());
		}
	}
}
