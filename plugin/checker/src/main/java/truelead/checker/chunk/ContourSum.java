package truelead.checker.chunk;

import java.util.List;
import truelead.checker.chunk.Contour.Entry;
import truelead.checker.chunk.Contour.FeedWord;
import truelead.checker.chunk.Contour.Turned;
import truelead.grammar.Block;
import truelead.grammar.Chunk;
import truelead.grammar.Element;

/** Adds up the moves of a contour, whose end may be put further on. */
final class ContourSum {

	private final Chunk chunk;
	private final PlainLines lines;
	private final int from;
	/** The line behind the last one added. */
	private int at;
	private int pace;
	/** The first line that says a motion code: what is in force before it, nobody knows. */
	private final int coded;
	private int moves;
	/** That of the last change between rapids and feeds. */
	private int code = -1;
	private int feed = -1;
	private double gap = -1;
	private Entry entry = new Entry(Double.NaN, Double.NaN, Double.NaN);
	private final PassageSum afterRapid;
	private final PassageSum afterFeed;
	private FeedWord known;

	/** @param from the first line */
	ContourSum(Chunk chunk, PlainLines lines, int from) {
		this.chunk = chunk;
		this.lines = lines;
		this.from = from;
		this.at = from;
		this.pace = lines.pacesBefore(from + 1);
		this.coded = lines.coded(from);
		this.afterRapid = new PassageSum(lines);
		this.afterFeed = new PassageSum(lines);
	}

	/** Adds the lines up to one that is left out; none where they are in it. */
	void add(int to) {
		while (at < to) {
			code = lines.codes[at] < 0 ? code : lines.codes[at];
			feed = PlainLines.said(lines.feeds[at]) ? at : feed;
			// all are rapids or none is, and one feed is in force, up to there
			int next = lines.pace(pace);
			int end = Math.min(at < coded ? Math.min(next, coded) : next, to);
			pace += end == next ? 1 : 0;
			alike(end);
		}
	}

	/** Adds the lines up to one that is left out, which are all rapids or none, and have one feed. */
	private void alike(int end) {
		int first = -1;
		boolean changed = false;
		boolean level = false;
		for (int move = at; move < end; move++) {
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
		at = end;
	}

	/** The contour of the lines added, of which there is one at least. */
	Contour contour() {
		return new Contour(from, at, moves, lines.codes[from] >= 0, gap, coded < at ? lastCode() : -1, last(lines.x), last(lines.y),
				last(lines.z), turned(), entry, afterRapid.passage(this::feed), afterFeed.passage(this::feed), feed < 0 ? List.of()
				: List.of(feed(feed)));
	}

	private Entry entry(Entry before, int line) {
		return new Entry(lines.kinds[line] == PlainLines.ASIDE_BY_X ? lines.x[line] : before.x(), lines.kinds[line] == PlainLines.ASIDE_BY_Y
				? lines.y[line] : before.y(), lines.levels[line] == PlainLines.FIRST ? lines.z[line] : before.z());
	}

	private Turned turned() {
		if (lines.turned(0) == null && lines.turned(1) == null && lines.turned(2) == null) {
			return Turned.NONE;
		}
		return new Turned(turned(0), turned(1), turned(2));
	}

	private double turned(int axis) {
		return lines.turned(axis) == null ? Double.NaN : last(lines.turned(axis));
	}

	private int lastCode() {
		int line = at - 1;
		while (lines.codes[line] < 0) {
			line--;
		}
		return lines.codes[line];
	}

	/** The last one of words that the lines added say; NaN where there is none. */
	private double last(double[] words) {
		int line = at - 1;
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
