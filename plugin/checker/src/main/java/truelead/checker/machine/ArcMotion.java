package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Plane;

/** Makes arcs and helices of a block's words. */
final class ArcMotion {

	private final MachineState state;
	private final Place place;
	private final Motion motion;
	private final Output out;
	private final boolean turnsByP;

	ArcMotion(MachineState state, Motion motion, Output out) {
		this.state = state;
		this.place = state.place;
		this.motion = motion;
		this.out = out;
		this.turnsByP = state.profile.is(ProfileKey.ARC_TURNS, "p");
	}

	/** The arc or helix that a block says about its centre or by its radius, to where its axis words lead. */
	void make(Words words, boolean clockwise) {
		Plane plane = state.plane;
		Point from = place.here();
		Point start = place.programmed();
		Point end = motion.target(words);
		char c1 = Motion.CENTRES[plane.first()];
		char c2 = Motion.CENTRES[plane.second()];
		boolean centred = words.has(c1) || words.has(c2);
		if (!centred && !words.has('R')) {
			out.notFollowed(words.block(), words.gCount() > 0 ? "an arc has neither centre nor radius in this block" : (clockwise ? "G2"
					: "G3") + " is still in force, and an arc has neither centre nor radius in this block", Optional.empty());
			place.moveTo(place.frame().apply(end));
			return;
		}
		double s1 = start.along(plane.first());
		double s2 = start.along(plane.second());
		double e1 = end.along(plane.first());
		double e2 = end.along(plane.second());
		boolean byRadius = words.has('R') && !centred;
		ArcGeometry geometry;
		if (byRadius) {
			motion.checkKnown(words, 'R');
			geometry = ArcGeometry.withRadius(state.mm(words, 'R'), s1, s2, e1, e2, clockwise, state.profile.arcTolerance(state.unit));
		} else {
			geometry = ArcGeometry.about(centre(words, plane.first(), s1), centre(words, plane.second(), s2), s1, s2, e1, e2, clockwise,
					turns(words));
		}
		Point centre = start.with(plane.first(), geometry.first()).with(plane.second(), geometry.second());
		Point to = place.frame().apply(end);
		Point centreHere = place.frame().apply(centre).with(plane.axis(), from.along(plane.axis()));
		double factor = Math.abs(place.frame().same() ? 1 : place.frame().factor(plane.axis()));
		double size = place.frame().scaled() ? ratio(from, centreHere, plane, geometry.startRadius(), factor) : 1;
		double sweep = place.frame().same() || !place.frame().flips(plane) ? geometry.sweep() : -geometry.sweep();
		place.moveTo(to);
		double resolution = Motion.finer(motion.resolution(words), Motion.finer(motion.resolution(words, Motion.CENTRES), words.has('R')
				? state.resolution(words, 'R') : 0));
		out.step(new Step.Arc(words.block(), state.modal(), from, to, centreHere, sweep, geometry.startRadius() * size,
				geometry.endRadius() * size, rise(words, plane.axis(), to.along(plane.axis()) - from.along(plane.axis())), byRadius,
				resolution, false));
	}

	/** What an arc advances along an axis; an increment is known where the level that it starts from is not. */
	private double rise(Words words, int axis, double between) {
		return !Double.isNaN(between) || !place.frame().same() ? between : motion.increment(words, axis);
	}

	private static double ratio(Point from, Point centre, Plane plane, double radius, double otherwise) {
		double scaled = from.distanceInPlane(centre, plane) / radius;
		return Double.isNaN(scaled) || Double.isInfinite(scaled) ? otherwise : scaled;
	}

	private double centre(Words words, int axis, double start) {
		char letter = Motion.CENTRES[axis];
		if (!words.has(letter)) {
			return state.arcCentreAbsolute ? 0 : start;
		}
		motion.checkKnown(words, letter);
		double value = state.mm(words, letter);
		return words.incremental(letter, !state.arcCentreAbsolute) ? start + value : value;
	}

	/** Whole turns beyond the first: P2 is one more, and so is TURN=1. */
	private int turns(Words words) {
		double turns = words.turns() > 0 ? words.turns() + 1 : turnsByP && words.has('P') ? words.value('P') : 1;
		return turns > 1 && turns < 10_000 && turns == Math.rint(turns) ? (int) turns - 1 : 0;
	}
}
