package truelead.checker.run;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/**
 * Tells which of some straight moves in a row go round circles in short chords. Their corners lie on a circle by as much as they are
 * rounded, and each goes on the same way round; what leads in or out on another circle is another stretch. Millimetres and radians.
 */
final class ChordPath {

	/** Chords that make a stretch at least. */
	static final int LEAST = 4;
	/** A chord goes round so far at most: a circle in less than six chords is a polygon. */
	static final double MOST_ANGLE = Math.toRadians(62);
	/** A stretch goes round so far at least; all that bends a little is a circle for a short way. */
	private static final double LEAST_ANGLE = Math.toRadians(40);
	/** What is rounded to no written decimal, such as a computed place, is taken as rounded to the third, mm. */
	private static final double FINEST = 0.0005;
	private static final double MOST_RADIUS = 1_000;
	/** A longer chord than the first of a stretch by this factor leads to it. */
	private static final double LONGER = 1.7;

	/** Corners that lie on one circle, the first and the last of them. */
	record Stretch(int from, int to, Circle circle, int sense) {

		Stretch between(int first, int last) {
			return new Stretch(first, last, circle, sense);
		}
	}

	/** The corners along the plane's first axis, along its second, and along the axis across it; one more than moves. */
	private final double[][] corners;
	private final int last;
	private final double resolution;
	/** How far a corner may lie from its circle. */
	private final double round;
	/** How far it may lie from its level. */
	private final double level;
	private final List<Stretch> stretches = new ArrayList<>();

	ChordPath(List<Chords.Chord> chords) {
		this.last = chords.size();
		this.corners = new double[3][last + 1];
		Plane plane = chords.get(0).move().modal().plane();
		double finest = Double.MAX_VALUE;
		int computed = 0;
		for (int i = 0; i <= last; i++) {
			Step.Move move = chords.get(Math.max(0, i - 1)).move();
			corners[0][i] = (i == 0 ? move.from() : move.to()).along(plane.first());
			corners[1][i] = (i == 0 ? move.from() : move.to()).along(plane.second());
			corners[2][i] = (i == 0 ? move.from() : move.to()).along(plane.axis());
			finest = move.resolution() > 0 ? Math.min(finest, Decimals.open(move.modal().unit(), move.resolution())) : finest;
			computed += move.resolution() > 0 ? 0 : 1;
		}
		// what leads in or out may be written among computed corners, and a computed corner stand among written ones
		this.resolution = 2 * computed > last ? 0 : finest;
		this.round = 3 * Math.max(resolution, FINEST) + FINEST;
		this.level = 2 * Math.max(resolution, FINEST) + FINEST / 2;
		find();
		part();
	}

	/** The stretches in order; two of them may meet at a corner. */
	List<Stretch> stretches() {
		return stretches;
	}

	double[][] corners() {
		return corners;
	}

	/** Half of the finest last decimal written; 0 where all is computed. */
	double resolution() {
		return resolution;
	}

	/** How far a corner may lie from its circle. */
	double round() {
		return round;
	}

	/** How far a corner may lie from its level. */
	double level() {
		return level;
	}

	private void find() {
		for (int from = 0; from + LEAST <= last;) {
			int to = reach(from);
			if (to < 0) {
				from++;
				continue;
			}
			Circle circle = circle(from, to);
			if (swept(circle, from, to) >= LEAST_ANGLE && circle.radius() <= MOST_RADIUS) {
				stretches.add(new Stretch(from, to, circle, angle(circle, from) > 0 ? 1 : -1));
			}
			from = to;
		}
	}

	/** The last corner on one circle with those from one on; -1 where no chords enough lie on one. */
	private int reach(int from) {
		if (circle(from, from + LEAST) == null) {
			return -1;
		}
		int good = from + LEAST;
		int bad = last + 1;
		for (int step = LEAST; good < last && bad > last; step *= 2) {
			int next = Math.min(last, good + step);
			if (circle(from, next) != null) {
				good = next;
			} else {
				bad = next;
			}
		}
		while (bad <= last && bad - good > 1) {
			int middle = (good + bad) >>> 1;
			if (circle(from, middle) != null) {
				good = middle;
			} else {
				bad = middle;
			}
		}
		return good;
	}

	/** The circle that corners lie on one after the other the same way round; null where they do not. */
	private Circle circle(int from, int to) {
		Circle circle = Circle.through(corners, from, to, i -> true, false);
		if (circle == null) {
			return null;
		}
		double sense = Math.signum(angle(circle, from));
		for (int i = from; i <= to; i++) {
			double turned = i < to ? sense * angle(circle, i) : MOST_ANGLE;
			if (!(circle.beside(corners[0][i], corners[1][i]) <= round) || !(turned > 0) || !(turned <= MOST_ANGLE)) {
				return null;
			}
		}
		return circle;
	}

	/** The angle that the chord behind a corner goes round. */
	double angle(Circle circle, int corner) {
		return circle.angle(corners[0][corner], corners[1][corner], corners[0][corner + 1], corners[1][corner + 1]);
	}

	private double swept(Circle circle, int from, int to) {
		double swept = 0;
		for (int i = from; i < to; i++) {
			swept += Math.abs(angle(circle, i));
		}
		return swept;
	}

	/** Corners near where two circles touch lie on both: they belong to the longer way round, where they climb with it. */
	private void part() {
		for (int i = 0; i < stretches.size(); i++) {
			Stretch here = stretches.get(i);
			int least = i == 0 ? 0 : stretches.get(i - 1).to() == here.from() ? stretches.get(i - 1).from() + LEAST - 1
					: stretches.get(i - 1).to();
			boolean longer = i == 0 || stretches.get(i - 1).to() < here.from() || turned(here) > turned(stretches.get(i - 1));
			int from = here.from();
			while (longer && from > least && belongs(here, from - 1, from - 1)) {
				from--;
			}
			if (i > 0 && stretches.get(i - 1).to() > from) {
				stretches.set(i - 1, stretches.get(i - 1).between(stretches.get(i - 1).from(), from));
			}
			here = here.between(from, here.to());
			if (i + 1 < stretches.size() && stretches.get(i + 1).to() > here.to() && stretches.get(i + 1).from() == here.to()) {
				Stretch next = stretches.get(i + 1);
				int to = here.to();
				while (to > here.from() + LEAST && !climbs(here, to - 1)
						&& next.circle().beside(corners[0][to - 1], corners[1][to - 1]) <= round) {
					to--;
				}
				here = here.between(here.from(), to);
				stretches.set(i + 1, next.between(to, next.to()));
			}
			stretches.set(i, here);
		}
	}

	private double turned(Stretch stretch) {
		return swept(stretch.circle(), stretch.from(), stretch.to());
	}

	/** Whether a corner before a stretch, and the chord behind it, are of it. */
	private boolean belongs(Stretch stretch, int corner, int chord) {
		double turned = stretch.sense() * angle(stretch.circle(), chord);
		double first = stretch.sense() * angle(stretch.circle(), stretch.from());
		return stretch.circle().beside(corners[0][corner], corners[1][corner]) <= round && turned > 0 && turned <= LONGER * first
				&& climbs(stretch, chord);
	}

	/** Whether a chord climbs as its stretch does, the ends of which are left out. */
	private boolean climbs(Stretch stretch, int chord) {
		int edge = Math.min(3, (stretch.to() - stretch.from()) / 4);
		int from = stretch.from() + edge;
		int to = stretch.to() - edge;
		double slope = (corners[2][to] - corners[2][from]) / swept(stretch.circle(), from, to);
		return Math.abs(corners[2][chord + 1] - corners[2][chord] - slope * Math.abs(angle(stretch.circle(), chord))) <= level;
	}
}
