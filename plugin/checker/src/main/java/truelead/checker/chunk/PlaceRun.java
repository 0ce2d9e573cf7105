package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Blocks of a chunk in a row that say nothing but X and Y, so that under a canned cycle one step can stand for the strokes at all of them. Told from
 * the text alone; lines count from the start of the chunk.
 */
public final class PlaceRun {

	private static final int WORTH = 4;

	private final int from;
	/** In program units; NaN until the first block of the run that says it. */
	private final double[] x;
	private final double[] y;
	private final byte[] decimals;

	private PlaceRun(PlainLines lines, int from, int to) {
		this.from = from;
		this.x = standing(lines.x, from, to);
		this.y = standing(lines.y, from, to);
		this.decimals = Arrays.copyOfRange(lines.places, from, to);
	}

	/** The runs in the blocks of a chunk, in order. */
	static PlaceRun[] find(PlainLines lines) {
		List<PlaceRun> runs = new ArrayList<>();
		int from = 0;
		for (int line = 0; line <= lines.behindPlaces(); line++) {
			if (line == lines.behindPlaces() || lines.places[line] == PlainLines.NO_PLACE) {
				if (line - from >= WORTH) {
					runs.add(new PlaceRun(lines, from, line));
				}
				from = line + 1;
			}
		}
		return runs.toArray(PlaceRun[]::new);
	}

	/** What each block of a range finds said, by itself or before it in the range. */
	private static double[] standing(double[] words, int from, int to) {
		double[] standing = Arrays.copyOfRange(words, from, to);
		for (int i = 1; i < standing.length; i++) {
			standing[i] = PlainLines.said(standing[i]) ? standing[i] : standing[i - 1];
		}
		return standing;
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof PlaceRun run && from == run.from && Arrays.equals(x, run.x) && Arrays.equals(y, run.y)
				&& Arrays.equals(decimals, run.decimals);
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

	/** The most decimals that a word of a block is written with. */
	public int decimals(int index) {
		return decimals[index];
	}
}
