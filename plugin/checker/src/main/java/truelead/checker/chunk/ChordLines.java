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

	/** No lines. */
	static final int[] NONE = {};

	private final PlainLines lines;
	private final Looker each = new Looker(1);
	private final Looker few = new Looker(FINE);

	/** Square of the tangent of the smallest turn that is looked at. */
	private static final double STRAIGHT = 5e-5;
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

	private void look() {
		boolean rapid = false;
		int waiting = 0;
		double x = Double.NaN;
		double y = Double.NaN;
		double z = Double.NaN;
		double dx = Double.NaN;
		double dy = Double.NaN;
		for (int line = 0; line < lines.lines(); line++) {
			byte kind = lines.kinds[line];
			int code = lines.codes[line];
			rapid = code < 0 ? rapid : code == 0;
			if (kind == PlainLines.BLANK) {
				continue;
			}
			boolean straight = kind == PlainLines.MOVE || kind >= PlainLines.ASIDE;
			if (!straight || rapid) {
				each.end();
				few.end();
				dx = Double.NaN;
				lastRapid = straight ? line : lastRapid;
			}
			double nextX = PlainLines.said(lines.x[line]) ? lines.x[line] : x;
			double nextY = PlainLines.said(lines.y[line]) ? lines.y[line] : y;
			double nextZ = PlainLines.said(lines.z[line]) ? lines.z[line] : z;
			double nextDx = nextX - x;
			double nextDy = nextY - y;
			double along = dx * nextDx + dy * nextDy;
			double across = dx * nextDy - dy * nextDx;
			if (along > 0 && across * across > STRAIGHT * along * along) {
				each.turns(line, across / along, dx * dx + dy * dy, nextDx * nextDx + nextDy * nextDy, nextZ - z);
			} else if (each.bend != 0) {
				each.report();
			}
			if (++waiting == FINE) {
				waiting = 0;
				few.corner(line, nextX, nextY, nextZ);
			}
			boolean here = straight && !rapid;
			dx = here ? nextDx : Double.NaN;
			dy = nextDy;
			x = straight ? nextX : Double.NaN;
			y = straight ? nextY : Double.NaN;
			z = straight ? nextZ : Double.NaN;
		}
		each.end();
		few.end();
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
		private static final int RISES = 3;
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
			double along = dx * nextDx + dy * nextDy;
			double across = dx * nextDy - dy * nextDx;
			if (along > 0 && across * across > STRAIGHT * along * along) {
				turns(line, across / along, dx * dx + dy * dy, nextDx * nextDx + nextDy * nextDy, nextZ - z);
			} else if (bend != 0) {
				report();
			}
			dx = nextDx;
			dy = nextDy;
			x = nextX;
			y = nextY;
			z = nextZ;
		}

		/** A turn between two chords, of which the squares of the lengths are given. */
		void turns(int line, double turn, double length, double next, double rise) {
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

		void report() {
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
