package truelead.checker.chunk;

/** The straight moves with a Z of a chunk in order, and where something else than straight moves stands between them. */
final class LevelRuns {

	/** In place of a line: what stands before does not go on behind. */
	private static final int BREAK = -1;

	private final int[] moves;
	private int count;

	/** @param lines how many the chunk has */
	LevelRuns(int lines) {
		// a break may stand behind the last one
		moves = new int[lines + 1];
	}

	/** A straight move; without a Z it changes nothing. */
	void straight(int line, boolean sayZ) {
		// written in any case, and taken back: whether Z is there is anybody's guess to the processor
		moves[count] = line;
		count += sayZ ? 1 : 0;
	}

	/** An arc, or a block that is no plain move. */
	void interrupt() {
		if (count > 0 && moves[count - 1] != BREAK) {
			moves[count++] = BREAK;
		}
	}

	/** The most moves that follow each other and all lead up, or all lead down; {@code z} has the Z words by lines. */
	int mostOneWay(double[] z) {
		int most = 0;
		int run = 0;
		double way = 0;
		double level = Double.NaN;
		for (int i = 0; i < count; i++) {
			if (moves[i] == BREAK) {
				run = 0;
				level = Double.NaN;
				continue;
			}
			double next = z[moves[i]];
			double step = next - level;
			run = step * way < 0 ? 1 : run + 1;
			most = Math.max(most, run);
			way = step == 0 ? way : step;
			level = next;
		}
		return most;
	}
}
