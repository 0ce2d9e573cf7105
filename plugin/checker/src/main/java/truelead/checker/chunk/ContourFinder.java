package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import truelead.grammar.Chunk;

/**
 * Finds the contours among the lines of a chunk. Eight moves on either side of a block that is not plain are left as they are: whoever
 * looks for the way into and out of an arc or a cycle finds them there.
 */
final class ContourFinder {

	private static final int AROUND = 8;

	private final Chunk chunk;
	private final PlainLines lines;
	/** Lines that are left out as they may be chords of a helix: the first of each stretch and the one behind it. */
	private final int[] chords;

	private ContourFinder(Chunk chunk, PlainLines lines, int[] chords) {
		this.chunk = chunk;
		this.lines = lines;
		this.chords = chords;
	}

	/** Whether the first moves are plain ones, as many as have to stand beside a contour. */
	static boolean plainHead(PlainLines lines) {
		return enough(lines, 0, lines.others() == 0 ? lines.lines() : beforeArcs(lines, 0, lines.other(0)));
	}

	/** Whether the last moves are plain ones. */
	static boolean plainTail(PlainLines lines) {
		return enough(lines, lines.others() == 0 ? 0 : lines.other(lines.others() - 1) + 1, lines.lines());
	}

	private static boolean enough(PlainLines lines, int from, int to) {
		int moves = 0;
		for (int line = from; line < to && moves < AROUND; line++) {
			moves += lines.moves(line) ? 1 : 0;
		}
		return moves == AROUND;
	}

	/** The contours; {@code before} and {@code behind} tell whether plain moves enough stand there in the next chunks. */
	static Contour[] find(Chunk chunk, PlainLines lines, int[] chords, boolean before, boolean behind) {
		ContourFinder finder = new ContourFinder(chunk, lines, chords);
		List<Contour> found = new ArrayList<>();
		for (int i = 0; i <= lines.others(); i++) {
			finder.add(i, before, behind, found);
		}
		return found.toArray(Contour[]::new);
	}

	/**
	 * The same for each answer: for none, before, behind, both. What a chunk says once is gone over once; of a chunk that is all plain,
	 * which stands behind another such one as a rule, those for none and for behind alone are left null.
	 */
	static Contour[][] findEach(Chunk chunk, PlainLines lines, int[] chords) {
		ContourFinder finder = new ContourFinder(chunk, lines, chords);
		Contour[][] each = new Contour[4][];
		if (lines.others() == 0) {
			ContourWalk all = finder.walk(0, true);
			each[1] = finder.upTo(0, false, all).toArray(Contour[]::new);
			each[3] = finder.upTo(0, true, all).toArray(Contour[]::new);
			return each;
		}
		List<Contour> inner = new ArrayList<>();
		for (int i = 1; i < lines.others(); i++) {
			finder.add(i, false, false, inner);
		}
		List<Contour> first = finder.upTo(0, false, finder.walk(0, false));
		List<Contour> firstBehind = finder.upTo(0, false, finder.walk(0, true));
		ContourWalk end = finder.walk(lines.others(), false);
		List<Contour> last = finder.upTo(lines.others(), false, end);
		List<Contour> lastBefore = finder.upTo(lines.others(), true, end);
		for (int which = 0; which < each.length; which++) {
			each[which] = Stream.of((which & 1) == 0 ? first : firstBehind, inner, (which & 2) == 0 ? last : lastBefore)
					.flatMap(List::stream).toArray(Contour[]::new);
		}
		return each;
	}

	/** Adds the contours of a stretch to others; most stretches between blocks that are not plain are too short for any. */
	private void add(int number, boolean before, boolean behind, List<Contour> found) {
		int from = start(number, before);
		int to = end(number, behind);
		if (to - from >= ContourWalk.WORTH) {
			ContourWalk walk = new ContourWalk(chunk, lines, chords, from);
			walk.to(to);
			found.addAll(walk.contours());
		}
	}

	/** The contours of a stretch, the walk along which is where an answer before has left it. */
	private List<Contour> upTo(int number, boolean behind, ContourWalk walk) {
		walk.to(end(number, behind));
		return walk.contours();
	}

	/** Along the stretch behind a number of blocks that are not plain, from where contours may begin. */
	private ContourWalk walk(int number, boolean before) {
		return new ContourWalk(chunk, lines, chords, start(number, before));
	}

	/** Where contours may begin in a stretch. */
	private int start(int number, boolean before) {
		return number == 0 && before ? 0 : behindMoves(first(number), behind(number));
	}

	/** Where contours end in a stretch. */
	private int end(int number, boolean behind) {
		return number == lines.others() && behind ? lines.lines() : beforeMoves(first(number), behind(number));
	}

	private int first(int number) {
		return number == 0 ? 0 : lines.other(number - 1) + 1;
	}

	private int behind(int number) {
		return number < lines.others() ? lines.other(number) : lines.lines();
	}

	private int behindMoves(int from, int to) {
		int line = from;
		for (int moves = 0; line < to && moves < AROUND; line++) {
			moves += lines.moves(line) ? 1 : 0;
		}
		return line;
	}

	private int beforeMoves(int from, int to) {
		int line = beforeArcs(lines, from, to);
		for (int moves = 0; line > from && moves < AROUND; line--) {
			moves += lines.moves(line - 1) ? 1 : 0;
		}
		return line;
	}

	/** The line from which on there are nothing but arcs up to a block that is not plain: they may be of one circle with it. */
	private static int beforeArcs(PlainLines lines, int from, int to) {
		int line = to;
		while (line > from && lines.kinds[line - 1] != PlainLines.MOVE && lines.kinds[line - 1] < PlainLines.ASIDE) {
			line--;
		}
		return line;
	}
}
