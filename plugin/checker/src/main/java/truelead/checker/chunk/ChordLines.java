package truelead.checker.chunk;

import java.util.Arrays;

/**
 * Finds lines that may be a helix written in straight chords: feeds that turn one way evenly, by chords about as long, while Z goes one way. They are
 * left out of contours, with what leads in and out, so that they are followed block by block. A rough look, which costs little and takes some bends
 * of a surface along; whoever follows them tells circles. Lengths in program units.
 */
final class ChordLines {

	/** What is left out before and behind at most: lines back to a rapid, and moves beyond that. */
	private static final int LEAD = 300;
	private static final int AROUND = 8;
	/** Very short chords are looked at so many at a time, since rounding turns each of them by more than the circle does. */
	private static final int FINE = 8;
	/** Moves along which Z goes the same way, at least. */
	private static final int RISES = 3;

	/** No lines. */
	static final int[] NONE = {};

	private final PlainLines lines;
	private final Looker each = new Looker(1);
	private final Looker few = new Looker(FINE);
	/** First line and line behind the last one, in pairs. */
	private int[] areas = new int[8];
	private int count;
	private int lastRapid = -1;

	private ChordLines(PlainLines lines) {
		this.lines = lines;
	}

	/** The lines of a chunk that may be chords with what leads to them: the first of each stretch and the one behind it, in pairs. */
	static int[] find(PlainLines lines, boolean before, boolean behind) {
		ChordLines chords = new ChordLines(lines);
		chords.look();
		if (before) {
			chords.area(0, chords.forward(0));
		}
		if (behind) {
			chords.area(chords.back(lines.lines() - 1, chords.lastRapid), lines.lines());
		}
		return chords.count == 0 ? NONE : chords.sorted();
	}

	/** Only where Z goes one way for some moves the corners are looked at. */
	private void look() {
		boolean rapid = false;
		double z = Double.NaN;
		double way = 0;
		int rises = 0;
		int from = 0;
		int before = 0;
		for (int line = 0; line < lines.lines(); line++) {
			byte kind = lines.kinds[line];
			rapid = lines.codes[line] < 0 ? rapid : lines.codes[line] == 0;
			if (kind == PlainLines.BLANK) {
				continue;
			}
			boolean straight = kind == PlainLines.MOVE || kind >= PlainLines.ASIDE;
			if (!straight || rapid) {
				corners(from, line, rises);
				from = straight ? line : line + 1;
				rises = 0;
				way = 0;
				z = !straight ? Double.NaN : PlainLines.said(lines.z[line]) ? lines.z[line] : z;
				lastRapid = straight ? line : lastRapid;
			} else if (PlainLines.said(lines.z[line])) {
				double rise = lines.z[line] - z;
				if (rise * way < 0) {
					corners(from, line, rises);
					from = before;
					rises = 0;
				}
				if (rise != 0 && PlainLines.said(rise)) {
					way = rise;
					rises++;
				}
				z = lines.z[line];
			}
			before = line;
		}
		corners(from, lines.lines(), rises);
	}

	/** Goes from corner to corner of a stretch of feeds along which Z goes one way, the first of which may be a rapid. */
	private void corners(int from, int to, int rises) {
		if (rises < RISES) {
			return;
		}
		double x = standing(lines.x, from);
		double y = standing(lines.y, from);
		double z = standing(lines.z, from);
		for (int line = from; line < to; line++) {
			if (lines.kinds[line] != PlainLines.BLANK) {
				x = PlainLines.said(lines.x[line]) ? lines.x[line] : x;
				y = PlainLines.said(lines.y[line]) ? lines.y[line] : y;
				z = PlainLines.said(lines.z[line]) ? lines.z[line] : z;
				each.corner(line, x, y, z);
				few.corner(line, x, y, z);
			}
		}
		each.end();
		few.end();
	}

	/** Where the tool stands along an axis at a line, by words not far before it; NaN where none is. */
	private double standing(double[] words, int line) {
		for (int at = line; at >= Math.max(0, line - LEAD) && lines.kinds[at] != PlainLines.OTHER && lines.kinds[at] != PlainLines.ARC; at--) {
			if (PlainLines.said(words[at])) {
				return words[at];
			}
		}
		return Double.NaN;
	}

	/** A stretch of chords, to which its leads are added. */
	private void found(int from, int to, int rapidBefore) {
		area(back(from, rapidBefore), forward(to));
	}

	private void area(int from, int to) {
		areas = count + 2 > areas.length ? Arrays.copyOf(areas, 2 * areas.length) : areas;
		areas[count++] = from;
		areas[count++] = to;
	}

	private int back(int from, int rapidBefore) {
		int line = Math.max(Math.max(rapidBefore, from - LEAD), 0);
		for (int moves = 0; line > 0 && moves < AROUND; line--) {
			moves += lines.moves(line - 1) ? 1 : 0;
		}
		return line;
	}

	private int forward(int to) {
		int line = to;
		boolean rapid = false;
		for (int most = Math.min(to + LEAD, lines.lines()); line < most && !rapid && lines.kinds[line] != PlainLines.OTHER; line++) {
			rapid = lines.codes[line] == 0;
		}
		for (int moves = 0; line < lines.lines() && moves < AROUND; line++) {
			moves += lines.moves(line) ? 1 : 0;
		}
		return line;
	}

	private int[] sorted() {
		// stretches of both lookers come by their ends
		long[] pairs = new long[count / 2];
		for (int i = 0; i < pairs.length; i++) {
			pairs[i] = ((long) areas[2 * i] << 32) + areas[2 * i + 1];
		}
		Arrays.sort(pairs);
		int[] sorted = new int[count];
		int at = 0;
		for (long pair : pairs) {
			int from = (int) (pair >> 32);
			int to = (int) pair;
			if (at > 0 && from <= sorted[at - 1]) {
				sorted[at - 1] = Math.max(sorted[at - 1], to);
			} else {
				sorted[at++] = from;
				sorted[at++] = to;
			}
		}
		return Arrays.copyOf(sorted, at);
	}

	/** Goes from corner to corner, and takes one of so many. */
	private final class Looker {

		/** Sum of the tangents of the turns from which on it may be a helix, some hundred degrees. */
		private static final double ENOUGH = 1.75;
		/** Square of how much longer or shorter the next chord may be. */
		private static final double EVEN = 9;
		/** How much more or less it may turn for its length. */
		private static final double BEND = 2;
		/** The largest tangent of a turn. */
		private static final double TURN = 2;

		private final int stride;
		private int waiting;
		private double x = Double.NaN;
		private double y;
		private double z;
		private double dx = Double.NaN;
		private double dy;
		private double length;
		/** Square of the bend of the chord before, with its sign. */
		private double before;
		private double turned;
		private double way;
		private int rises;
		private int from;
		private int to;
		private int rapidBefore;

		Looker(int stride) {
			this.stride = stride;
		}

		void corner(int line, double nextX, double nextY, double nextZ) {
			if (++waiting < stride && x == x) {
				return;
			}
			waiting = 0;
			double nextDx = nextX - x;
			double nextDy = nextY - y;
			double next = nextDx * nextDx + nextDy * nextDy;
			double along = dx * nextDx + dy * nextDy;
			double turn = (dx * nextDy - dy * nextDx) / along;
			double bend = turn * Math.abs(turn) / next;
			double more = bend / before;
			double rise = nextZ - z;
			boolean even = next <= EVEN * length && length <= EVEN * next && along > 0 && turn <= TURN && turn >= -TURN && turn != 0
					&& (before == 0 || more <= BEND * BEND && more >= 1 / (BEND * BEND));
			boolean level = !(rise * way < 0);
			if (even && level) {
				if (turned == 0) {
					from = line - stride - 1;
					rapidBefore = lastRapid;
				}
				turned += turn < 0 ? -turn : turn;
				rises += rise != 0 && rise == rise ? 1 : 0;
				before = bend;
				to = line + 1;
			} else {
				report();
				before = 0;
			}
			way = rise != 0 && rise == rise ? rise : even && level ? way : 0;
			dx = nextDx;
			dy = nextDy;
			length = next;
			x = nextX;
			y = nextY;
			z = nextZ;
		}

		private void report() {
			if (turned >= ENOUGH && rises >= RISES) {
				found(Math.max(0, from), to, rapidBefore);
			}
			turned = 0;
			rises = 0;
		}

		void end() {
			report();
			before = 0;
			way = 0;
			x = Double.NaN;
			dx = Double.NaN;
			waiting = 0;
		}
	}
}
