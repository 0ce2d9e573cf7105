package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Blocks of a chunk in a row that say nothing but X and Y, or the same canned cycle beside them in each, so that under the cycle one step
 * can stand for the strokes at all of them. Told from the text alone; lines count from the start of the chunk.
 */
public final class PlaceRun {

	/** Blocks that are worth a step of their own. */
	static final int WORTH = 4;

	private final int from;
	/** In program units; NaN until the first block of the run that says it. */
	private final double[] x;
	private final double[] y;
	private final byte[] decimals;
	private final boolean says;

	private PlaceRun(int from, double[] x, double[] y, byte[] decimals, boolean says) {
		this.from = from;
		this.x = standing(x);
		this.y = standing(y);
		this.decimals = decimals;
		this.says = says;
	}

	/** Blocks that say the cycle anew, as the two blocks before them do; NaN for a word that is not written. */
	static PlaceRun saying(int from, double[] x, double[] y, byte[] decimals) {
		return new PlaceRun(from, x, y, decimals, true);
	}

	/** The runs in the blocks of a chunk, in order. */
	static PlaceRun[] find(PlainLines lines, CycleBlocks cycles) {
		List<PlaceRun> runs = new ArrayList<>();
		int from = 0;
		for (int line = 0; line <= lines.behindPlaces(); line++) {
			if (line == lines.behindPlaces() || lines.places[line] == PlainLines.NO_PLACE) {
				if (line - from >= WORTH) {
					runs.add(new PlaceRun(from, Arrays.copyOfRange(lines.x, from, line), Arrays.copyOfRange(lines.y, from, line),
							Arrays.copyOfRange(lines.places, from, line), false));
				}
				from = line + 1;
			}
		}
		if (runs.addAll(cycles.found())) {
			runs.sort(Comparator.comparingInt(PlaceRun::from));
		}
		return runs.toArray(PlaceRun[]::new);
	}

	/** What each block finds said, by itself or before it. */
	private static double[] standing(double[] words) {
		for (int i = 1; i < words.length; i++) {
			words[i] = PlainLines.said(words[i]) ? words[i] : words[i - 1];
		}
		return words;
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof PlaceRun run && from == run.from && says == run.says && Arrays.equals(x, run.x)
				&& Arrays.equals(y, run.y) && Arrays.equals(decimals, run.decimals);
	}

	@Override
	public int hashCode() {
		return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
	}

	/** First line. */
	public int from() {
		return from;
	}

	/** Number of lines. */
	public int count() {
		return x.length;
	}

	/** The X in force at a block, program units; NaN where the run has not said it yet. */
	public double x(int index) {
		return x[index];
	}

	/** The Y in force at a block, program units; NaN where the run has not said it yet. */
	public double y(int index) {
		return y[index];
	}

	/** The most decimals that a word of a block is written with which says a place or a level. */
	public int decimals(int index) {
		return decimals[index];
	}

	/** Whether each block says the cycle and its words too, as the two blocks before the first one do. */
	public boolean says() {
		return says;
	}
}
