package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.chunk.Contour.Entry;
import truelead.checker.chunk.Contour.FeedWord;
import truelead.grammar.Block;
import truelead.grammar.Chunk;
import truelead.grammar.Element;

/**
 * Finds the contours among the lines of a chunk. Eight moves on either side of a block that is not plain are left as they are: whoever looks for
 * the way into and out of an arc or a cycle finds them there.
 */
final class ContourFinder {

	private static final int AROUND = 8;
	private static final int WORTH = 4;

	private final Chunk chunk;
	private final PlainLines lines;
	/** Lines that are left out as they may be chords of a helix: the first of each stretch and the one behind it. */
	private final int[] chords;
	private List<Contour> found = new ArrayList<>();
	private FeedWord known;

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
		for (int i = 0; i <= lines.others(); i++) {
			finder.stretch(i, before, behind);
		}
		return finder.found.toArray(Contour[]::new);
	}

	/** The same for each answer: for none, before, behind, both. For chunks that are not all plain, whose inner contours are the same each time. */
	static Contour[][] findEach(Chunk chunk, PlainLines lines, int[] chords) {
		ContourFinder finder = new ContourFinder(chunk, lines, chords);
		for (int i = 1; i < lines.others(); i++) {
			finder.stretch(i, false, false);
		}
		List<Contour> inner = finder.found;
		Contour[][] each = new Contour[4][];
		for (int which = 0; which < each.length; which++) {
			finder.found = new ArrayList<>();
			finder.stretch(0, (which & 1) != 0, false);
			finder.found.addAll(inner);
			finder.stretch(lines.others(), false, (which & 2) != 0);
			each[which] = finder.found.toArray(Contour[]::new);
		}
		return each;
	}

	/** The contours between the block that is not plain before a number of them and the next one. */
	private void stretch(int number, boolean before, boolean behind) {
		int start = number == 0 ? 0 : lines.other(number - 1) + 1;
		int end = number < lines.others() ? lines.other(number) : lines.lines();
		int from = number == 0 && before ? start : behindMoves(start, end);
		int to = number == lines.others() && behind ? end : beforeMoves(start, end);
		for (int i = 0; i < chords.length && chords[i] < to; i += 2) {
			if (chords[i + 1] > from) {
				range(from, chords[i]);
				from = chords[i + 1];
			}
		}
		range(from, to);
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

	/** The contours in a range of plain lines: each from a move aside to a move aside, with no plunge between that may come back out. */
	private void range(int from, int to) {
		int first = -1;
		int last = -1;
		// the code before the first one said is not known
		int code = -1;
		int codeBefore = -1;
		// the way along Z of a feed that may be a way into the stock
		byte way = PlainLines.LEVEL;
		boolean mayComeBack = false;
		for (int line = from; line < to; line++) {
			byte kind = lines.kinds[line];
			code = lines.codes[line] < 0 ? code : lines.codes[line];
			if (kind == PlainLines.MOVE) {
				byte level = lines.levels[line];
				mayComeBack |= way != PlainLines.LEVEL && level != PlainLines.LEVEL && (level != way || level == PlainLines.FIRST);
				way = way == PlainLines.LEVEL && leadsIn(level, code, codeBefore) ? level : way;
				codeBefore = code;
			} else if (kind >= PlainLines.ARC) {
				if (mayComeBack && first >= 0) {
					add(first, last + 1);
					first = -1;
				}
				mayComeBack = false;
				way = PlainLines.LEVEL;
				if (kind >= PlainLines.ASIDE) {
					code = first >= 0 ? code : lines.codes[line];
					first = first >= 0 ? first : line;
					last = line;
				}
				codeBefore = code;
			}
		}
		if (first >= 0) {
			add(first, last + 1);
		}
	}

	/** Whether a move along Z may be a feed into the stock: a feed up is a way out, unless a rapid has led below. */
	private static boolean leadsIn(byte level, int code, int codeBefore) {
		return code != 0 && (level != PlainLines.RAISED || codeBefore <= 0);
	}

	private void add(int from, int to) {
		if (to - from < WORTH) {
			return;
		}
		int moves = 0;
		int code = -1;
		int feed = -1;
		double gap = -1;
		Entry entry = new Entry(Double.NaN, Double.NaN, Double.NaN);
		PassageSum afterRapid = new PassageSum(lines);
		PassageSum afterFeed = new PassageSum(lines);
		int word = lines.wordsBefore(from + 1);
		for (int line = from, end; line < to; line = end) {
			// one code and one feed are in force up to the end
			end = Math.min(lines.word(word++), to);
			code = lines.codes[line] < 0 ? code : lines.codes[line];
			feed = PlainLines.said(lines.feeds[line]) ? line : feed;
			int first = -1;
			boolean changed = false;
			boolean level = false;
			for (int move = line; move < end; move++) {
				if (lines.moves(move)) {
					first = first < 0 ? move : first;
					moves++;
					changed |= lines.changesLevel(move);
					level |= lines.levels[move] == PlainLines.FIRST;
					gap = Math.max(gap, lines.gap(move));
					entry = lines.dependsOnEntry(move) ? entry(entry, move) : entry;
				}
			}
			if (first >= 0 && code != 0) {
				afterFeed.cut(first, changed, level, feed);
			}
			if (first >= 0 && code > 0) {
				afterRapid.cut(first, changed, level, feed);
			}
		}
		found.add(new Contour(from, to, moves, lines.codes[from] >= 0, gap, code, last(lines.x, from, to), last(lines.y, from, to), last(lines.z, from, to), entry,
				afterRapid.passage(this::feed), afterFeed.passage(this::feed), feed < 0 ? List.of() : List.of(feed(feed))));
	}

	private Entry entry(Entry before, int line) {
		return new Entry(lines.kinds[line] == PlainLines.ASIDE_BY_X ? lines.x[line] : before.x(),
				lines.kinds[line] == PlainLines.ASIDE_BY_Y ? lines.y[line] : before.y(), lines.levels[line] == PlainLines.FIRST ? lines.z[line] : before.z());
	}

	/** The last word of a range of lines; NaN where there is none. */
	private static double last(double[] words, int from, int to) {
		int line = to - 1;
		while (line > from && !PlainLines.said(words[line])) {
			line--;
		}
		return words[line];
	}

	/** The last F word of a line, which is the one that counts. */
	private FeedWord feed(int line) {
		if (known == null || known.line() != line) {
			Block block = chunk.block(line);
			Element.Word feed = block.words().stream().filter(word -> word.address() == 'F').reduce((one, other) -> other).orElseThrow();
			known = new FeedWord(line, lines.feeds[line], feed, block.text().substring(feed.span().start(), feed.span().end()));
		}
		return known;
	}
}
