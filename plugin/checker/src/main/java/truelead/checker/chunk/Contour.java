package truelead.checker.chunk;

import java.util.List;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * Blocks of a chunk in a row that only move straight or in flat arcs, so that one step can stand for all of them under absolute distance:
 * its first and its last move go straight aside, and no two moves along Z alone follow each other of which the first may cut, so that no
 * plunge in it comes back out. Told from the text alone; lines count from the start of the chunk.
 *
 * @param from       first line
 * @param to         line behind the last one
 * @param moves      number of blocks that move
 * @param starts     whether the first block has a motion code
 * @param gap        largest difference of an arc's radii at its ends, program units; -1 where it has no arc
 * @param code       0 for G0, 1 for G1, the last one said; -1 where none is
 * @param x          last X word, program units; NaN where none is said
 * @param y          last Y word, program units; the same
 * @param z          last Z word, program units; the same
 * @param turned     last words of the rotary axes
 * @param entry      what must be true of the place it begins at
 * @param afterRapid what it does where G0 is in force at its beginning
 * @param afterFeed  what it does where G1 is
 * @param feed       the last F word; none or one
 */
public record Contour(int from, int to, int moves, boolean starts, double gap, int code, double x, double y, double z, Turned turned,
		Entry entry, Passage afterRapid, Passage afterFeed, List<FeedWord> feed) {

	/**
	 * Words whose axis no block before them in the chunk has said, in program units; NaN where nothing depends on the place before.
	 *
	 * @param x must differ from the place before, or else the block may not move aside
	 * @param y the same
	 * @param z changes the level where it differs from the place before
	 */
	public record Entry(double x, double y, double z) {
	}

	/** Last words of the rotary axes, degrees; NaN where none is said. */
	public record Turned(double a, double b, double c) {

		/** No rotary axis is turned. */
		public static final Turned NONE = new Turned(Double.NaN, Double.NaN, Double.NaN);
	}

	/**
	 * What the moves do under one motion code at the beginning.
	 *
	 * @param cuts        line of the first move that is no rapid; -1 where all are
	 * @param levels      whether a move that is no rapid changes Z, {@link Entry#z()} left out
	 * @param entryLevels whether the move with {@link Entry#z()} is no rapid
	 * @param entryFeed   whether it cuts under the feed it begins with
	 * @param feeds       the smallest and the largest feed word it cuts under, each where it stands first; none, one or two
	 */
	public record Passage(int cuts, boolean levels, boolean entryLevels, boolean entryFeed, List<FeedWord> feeds) {
	}

	/**
	 * An F word.
	 *
	 * @param line    it stands in, from the start of the chunk
	 * @param value   program units by the feed mode in force
	 * @param written its text
	 */
	public record FeedWord(int line, double value, Element.Word word, String written) {

		/** As what is in force behind its block. */
		public Setting setting(BlockRef block) {
			int decimals = word.value() instanceof Expression.Number number ? number.decimals() : 0;
			return Setting.of(value, new WordRef(block, 'F', word.span(), decimals, true, written));
		}
	}
}
