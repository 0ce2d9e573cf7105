package truelead.checker.chunk;

import java.util.Arrays;

/**
 * Finds lines that may be a helix written in straight chords: feeds that turn one way evenly, by chords about as long, while Z goes one
 * way. They are left out of contours, with what leads in and out, so that they are followed block by block. A rough look, which costs
 * little and takes some bends of a surface along; whoever follows them tells circles. Lengths in program units.
 */
final class ChordLines {

	/** What is left out before and behind at most: lines back to a rapid, and moves beyond that. */
	private static final int LEAD = 300;
	private static final int AROUND = 8;
	/** Very short chords are looked at so many at a time, since rounding turns each of them by more than the circle does. */
	private static final int FINE = 8;

	/** Moves along which Z goes the same way, at least: a turn is made of more chords. */
	private static final int RISES = 7;
	/** Square of the tangent of the smallest turn that is looked at. */
	private static final double STRAIGHT = 5e-5;

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
		if (behind || lines.mostOneWay() >= RISES) {
			chords.look();
		}
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

	/**
	 * Goes from corner to corner of a stretch of feeds along which Z goes one way, the first of which may be a rapid. Surfaces are made of
	 * such stretches: what is asked of every corner stays here at hand, and a looker of its own keeps one of so many.
	 */
	private void corners(int first, int behind, int rises) {
		if (rises < RISES) {
			return;
		}
		int waiting = 0;
		double x = standing(lines.x, first);
		double y = standing(lines.y, first);
		double z = standing(lines.z, first);
		double dx = Double.NaN;
		double dy = Double.NaN;
		for (int line = first; line < behind; line++) {
			if (lines.kinds[line] == PlainLines.BLANK) {
				continue;
			}
			double nextX = PlainLines.said(lines.x[line]) ? lines.x[line] : x;
			double nextY = PlainLines.said(lines.y[line]) ? lines.y[line] : y;
			double nextZ = PlainLines.said(lines.z[line]) ? lines.z[line] : z;
			double nextDx = nextX - x;
			double nextDy = nextY - y;
			each.chords(line, dx, dy, nextDx, nextDy, nextZ - z);
			if (++waiting == FINE) {
				waiting = 0;
				few.corner(line, nextX, nextY, nextZ);
			}
			// from a rapid, or to where the stretch begins, there is no chord
			dx = line == first ? Double.NaN : nextDx;
			dy = nextDy;
			x = nextX;
			y = nextY;
			z = nextZ;
		}
		each.end();
		few.end();
	}

	/** Where the tool stands along an axis at a line, by words not far before it; NaN where none is. */
	private double standing(double[] words, int line) {
		for (int at = line; at >= Math.max(0, line - LEAD) && lines.kinds[at] != PlainLines.OTHER
				&& lines.kinds[at] != PlainLines.ARC; at--) {
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

	/** Goes on from turn to turn, of every corner or of one of so many. */
	private final class Looker {

		/** Sum of the tangents of the turns from which on it may be a helix, some hundred and fifty degrees. */
		private static final double ENOUGH = 2.7;
		/** Square of how much longer or shorter the next chord may be. */
		private static final double EVEN = 9;
		/** Square of how much more or less a chord may bend than the first one. */
		private static final double BEND = 2;
		/** The largest tangent of a turn. */
		private static final double TURN = 2;

		private final int stride;
		private double x = Double.NaN;
		private double y;
		private double z;
		private double dx = Double.NaN;
		private double dy;
		/** Square of the bend of the first chord, with its sign; 0 before it. */
		private double bend;
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
			double nextDx = nextX - x;
			double nextDy = nextY - y;
			chords(line, dx, dy, nextDx, nextDy, nextZ - z);
			dx = nextDx;
			dy = nextDy;
			x = nextX;
			y = nextY;
			z = nextZ;
		}

		/** Two chords behind each other, and how far Z goes along the second one. */
		void chords(int line, double firstX, double firstY, double nextX, double nextY, double rise) {
			double along = firstX * nextX + firstY * nextY;
			double across = firstX * nextY - firstY * nextX;
			if (along > 0 && across * across > STRAIGHT * along * along) {
				turns(line, across / along, firstX * firstX + firstY * firstY, nextX * nextX + nextY * nextY, rise);
			} else if (bend != 0) {
				report();
			}
		}

		/** A turn between two chords, of which the squares of the lengths are given. */
		private void turns(int line, double turn, double length, double next, double rise) {
			double size = turn < 0 ? -turn : turn;
			double here = turn * size / next;
			double more = here / bend;
			boolean even = next <= EVEN * length && length <= EVEN * next && size <= TURN;
			if (bend != 0 && !(even && rise * way >= 0 && more <= BEND && more >= 1 / BEND)) {
				report();
			}
			if (bend == 0) {
				if (!even || rise == 0) {
					return;
				}
				bend = here;
				way = rise;
				from = line - stride - 1;
				rapidBefore = lastRapid;
			}
			turned += size;
			rises += rise != 0 ? 1 : 0;
			to = line + 1;
		}

		private void report() {
			if (turned >= ENOUGH && rises >= RISES) {
				found(Math.max(0, from), to, rapidBefore);
			}
			turned = 0;
			rises = 0;
			bend = 0;
		}

		void end() {
			report();
			x = Double.NaN;
			dx = Double.NaN;
		}
	}
}
