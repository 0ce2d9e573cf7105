package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import truelead.grammar.BlockCursor;

/**
 * Finds the blocks of a chunk in a row that say a canned cycle and all of its words anew at another X and Y, as some systems write one at
 * every hole. Told from the text alone.
 */
final class CycleBlocks {

	/** The first block says the cycle, the second shows that saying it again changes nothing. */
	private static final int BEFORE = 2;
	private static final int WORTH = BEFORE + PlaceRun.WORTH;
	/** G73 to G89 are the canned cycles; G80 ends them, and G98 and G99 say where they come back to. */
	private static final int FIRST_CYCLE = 73;
	private static final int LAST_CYCLE = 89;
	private static final int END = 80;
	private static final int ABSOLUTE = 90;
	private static final int TO_INITIAL = 98;
	private static final int TO_R = 99;

	private final List<PlaceRun> runs = new ArrayList<>();
	private int from;
	private int lines;
	private double[] x = new double[16];
	private double[] y = new double[16];
	private byte[] decimals = new byte[16];
	/** What the blocks of the run have in common, places and block numbers left out: addresses, numbers and how they are written. */
	private String marks = "";
	private double[] numbers = new double[8];
	private int[] places = new int[8];

	/** Takes a plain block that is no plain motion. */
	void read(BlockCursor block) {
		if (!cycle(block)) {
			end();
			return;
		}
		if (block.line() != from + lines || !asBefore(block)) {
			end();
			begin(block);
		}
		add(block);
	}

	/** The runs, in order. */
	List<PlaceRun> found() {
		end();
		return runs;
	}

	private void end() {
		if (lines >= WORTH) {
			runs.add(PlaceRun.saying(from + BEFORE, Arrays.copyOfRange(x, BEFORE, lines), Arrays.copyOfRange(y, BEFORE, lines),
					Arrays.copyOfRange(decimals, BEFORE, lines)));
		}
		lines = 0;
	}

	/** Whether a block says one canned cycle, nothing twice, and nothing that means more than where and how. */
	private static boolean cycle(BlockCursor block) {
		int cycles = 0;
		int met = 0;
		boolean fits = true;
		for (int part = 0; fits && part < block.parts(); part++) {
			char mark = block.mark(part);
			if (mark == 'G') {
				double code = block.number(part);
				boolean cycle = code >= FIRST_CYCLE && code <= LAST_CYCLE && code != END && code == Math.rint(code);
				cycles += cycle ? 1 : 0;
				fits = cycle || code == ABSOLUTE || code == TO_INITIAL || code == TO_R;
			} else {
				fits = "NXYZRQPF".indexOf(mark) >= 0 && (met & bit(mark)) == 0;
				met |= bit(mark);
			}
		}
		return fits && cycles == 1 && (met & (bit('X') | bit('Y'))) != 0;
	}

	private static int bit(char mark) {
		return 1 << mark - 'A';
	}

	private static boolean isPlace(char mark) {
		return mark == 'X' || mark == 'Y' || mark == 'N';
	}

	private boolean asBefore(BlockCursor block) {
		int at = 0;
		boolean same = true;
		for (int part = 0; same && part < block.parts(); part++) {
			if (!isPlace(block.mark(part))) {
				same = at < marks.length() && marks.charAt(at) == block.mark(part) && numbers[at] == block.number(part)
						&& places[at] == block.decimals(part);
				at++;
			}
		}
		return same && at == marks.length();
	}

	private void begin(BlockCursor block) {
		from = block.line();
		StringBuilder said = new StringBuilder();
		for (int part = 0; part < block.parts(); part++) {
			if (!isPlace(block.mark(part))) {
				if (said.length() == numbers.length) {
					numbers = Arrays.copyOf(numbers, said.length() * 2);
					places = Arrays.copyOf(places, said.length() * 2);
				}
				numbers[said.length()] = block.number(part);
				places[said.length()] = block.decimals(part);
				said.append(block.mark(part));
			}
		}
		marks = said.toString();
	}

	private void add(BlockCursor block) {
		if (lines == x.length) {
			x = Arrays.copyOf(x, lines * 2);
			y = Arrays.copyOf(y, lines * 2);
			decimals = Arrays.copyOf(decimals, lines * 2);
		}
		x[lines] = Double.NaN;
		y[lines] = Double.NaN;
		int most = 0;
		for (int part = 0; part < block.parts(); part++) {
			switch (block.mark(part)) {
				case 'X' -> x[lines] = block.number(part);
				case 'Y' -> y[lines] = block.number(part);
				default -> {
					// the same in all of them
				}
			}
			most = "XYZR".indexOf(block.mark(part)) < 0 ? most : Math.max(most, block.decimals(part));
		}
		decimals[lines++] = (byte) most;
	}
}
