package truelead.checker.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/**
 * Makes arcs of chords that go round circles: of as many chords as climb evenly, one turn at most. A corner beside the circle of those
 * before and behind stays in, as two arcs that do not close.
 */
final class ChordArcs {

	/** Chords between stretches of one circle that a wrong corner takes out at most. */
	private static final int SPOILT = 2;
	/** Circles are one where corners of either lie so near the other, in radii: a taper thread grows by less a turn. */
	private static final double ONE = 0.025;
	/** From so far round on the corners tell whether the way becomes wider. */
	private static final double TELLS = 1.5 * Math.PI;
	private static final double FULL = 2 * Math.PI;

	/** Steps with the numbers of the first and the last of those that they stand for. */
	record Part(Step step, int first, int last) {
	}

	private final List<Chords.Chord> chords;
	private final ChordPath path;
	private final double[][] corners;
	private final List<Part> parts = new ArrayList<>();

	private ChordArcs(List<Chords.Chord> chords) {
		this.chords = chords;
		this.path = new ChordPath(chords);
		this.corners = path.corners();
	}

	/** The chords, in order, with arcs in place of those that go round circles. */
	static List<Part> of(List<Chords.Chord> chords) {
		ChordArcs arcs = new ChordArcs(chords);
		arcs.make();
		return arcs.parts;
	}

	private void make() {
		List<ChordPath.Stretch> stretches = path.stretches();
		int at = 0;
		for (int i = 0; i < stretches.size();) {
			int next = i + 1;
			while (next < stretches.size() && joins(stretches.get(next - 1), stretches.get(next))) {
				next++;
			}
			straight(at, stretches.get(i).from());
			at = round(stretches.subList(i, next), next < stretches.size() ? stretches.get(next).from() : chords.size());
			i = next;
		}
		straight(at, chords.size());
	}

	private void straight(int from, int to) {
		for (int i = from; i < to; i++) {
			parts.add(new Part(chords.get(i).move(), chords.get(i).number(), chords.get(i).number()));
		}
	}

	private boolean joins(ChordPath.Stretch one, ChordPath.Stretch next) {
		return next.from() - one.to() <= SPOILT && one.sense() == next.sense() && (near(one, next.circle()) || near(next, one.circle()));
	}

	private boolean near(ChordPath.Stretch stretch, Circle circle) {
		for (int i = stretch.from(); i <= stretch.to(); i++) {
			if (!(circle.beside(corners[0][i], corners[1][i]) <= ONE * circle.radius())) {
				return false;
			}
		}
		return true;
	}

	/** Makes arcs of stretches of one circle or cone, and tells the last corner of them, which is no further than a limit. */
	private int round(List<ChordPath.Stretch> stretches, int limit) {
		int from = stretches.get(0).from();
		int to = stretches.get(stretches.size() - 1).to();
		IntPredicate on = corner -> stretches.stream().anyMatch(stretch -> corner >= stretch.from() && corner <= stretch.to());
		Circle circle = stretches.get(0).circle();
		boolean[] wrong = new boolean[to - from + 1];
		if (stretches.size() > 1) {
			for (int i = from; i <= to; i++) {
				wrong[i - from] = !on.test(i);
			}
			IntPredicate right = corner -> !wrong[corner - from];
			Circle even = Circle.through(corners, from, to, right, false);
			circle = even == null ? circle : even;
			Circle cone = corners[2][from] == corners[2][to] || !(turned(circle, from, to) > TELLS) ? null
					: Circle.through(corners, from, to, right, true);
			circle = cone == null ? circle : cone;
		}
		int last = stretches.size() > 1 ? goesOn(circle, from, to, limit, stretches.get(0).sense()) : to;
		boolean[] beside = Arrays.copyOf(wrong, last - from + 1);
		for (int i = from; i < last;) {
			int end = beside[i - from] || beside[i + 1 - from] ? i + 1 : even(circle, i, last, beside, from);
			arc(circle, i, end, stretches.get(0).sense());
			i = end;
		}
		return last;
	}

	/**
	 * The last corner up to which a cone goes on behind its stretches: chords too few for one of their own, which turn and climb as it
	 * does.
	 */
	private int goesOn(Circle circle, int from, int to, int limit, int sense) {
		double slope = (corners[2][to] - corners[2][from]) / turned(circle, from, to);
		int last = to;
		while (last < limit && last - to < ChordPath.LEAST) {
			double turned = sense * path.angle(circle, last);
			boolean on = turned > 0 && turned <= ChordPath.MOST_ANGLE
					&& circle.beside(corners[0][last + 1], corners[1][last + 1]) <= ONE * circle.radius();
			if (!on || Math.abs(corners[2][last + 1] - corners[2][last] - slope * turned) > path.level()) {
				return last;
			}
			last++;
		}
		return last;
	}

	private double turned(Circle circle, int from, int to) {
		double turned = 0;
		for (int i = from; i < to; i++) {
			turned += Math.abs(path.angle(circle, i));
		}
		return turned;
	}

	/** The last corner up to which chords climb evenly under one state, of one turn at most. */
	private int even(Circle circle, int from, int to, boolean[] wrong, int offset) {
		Modal modal = chords.get(from).move().modal();
		double least = Double.NEGATIVE_INFINITY;
		double most = Double.POSITIVE_INFINITY;
		double turned = 0;
		int end = from + 1;
		for (int i = from; i < to && !wrong[i + 1 - offset] && alike(chords.get(i).move().modal(), modal); i++) {
			double chord = Math.abs(path.angle(circle, i));
			turned += chord;
			double rise = corners[2][i + 1] - corners[2][from];
			if (turned > FULL + chord / 3 || !(least <= most)) {
				break;
			}
			if (rise / turned >= least && rise / turned <= most) {
				end = i + 1;
			}
			least = Math.max(least, (rise - path.level()) / turned);
			most = Math.min(most, (rise + path.level()) / turned);
		}
		return end;
	}

	/** Whether two states are the same for what a cutter does: each chord may say its feed again. */
	private static boolean alike(Modal one, Modal other) {
		return one == other || one.unit() == other.unit() && one.absolute() == other.absolute() && one.feedMode() == other.feedMode()
				&& one.spindle() == other.spindle() && one.compensation() == other.compensation() && Double.compare(one.feed().value(),
						other.feed().value()) == 0 && Double.compare(one.speed().value(), other.speed().value()) == 0;
	}

	private void arc(Circle circle, int from, int to, int sense) {
		Step.Move first = chords.get(from).move();
		Plane plane = first.modal().plane();
		Point end = chords.get(to - 1).move().to();
		Point centre = first.from().with(plane.first(), circle.u()).with(plane.second(), circle.v());
		Step.Arc arc = new Step.Arc(first.block(), first.modal(), first.from(), end, centre, sense * turned(circle, from, to),
				radius(circle, from), radius(circle, to), corners[2][to] - corners[2][from], false, path.resolution(), true);
		parts.add(new Part(arc, chords.get(from).number(), chords.get(to - 1).number()));
	}

	/** Distance of a corner from the centre: on the circle of all others but for rounding that of all. */
	private double radius(Circle circle, int corner) {
		double own = circle.distance(corners[0][corner], corners[1][corner]);
		return Math.abs(own - circle.radius()) <= path.round() ? circle.radius() : own;
	}
}
