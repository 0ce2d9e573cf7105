package truelead.checker.work;

import java.util.List;
import truelead.checker.machine.Plane;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;

/**
 * Arcs one after another about one centre at one radius: a helix, a full circle, or a lead-in of half a turn.
 *
 * @param order  number of the first arc's step
 * @param last   number of the last arc's step
 * @param before the motions before it, nearest last; at most 8
 * @param arcs   in order, never empty
 * @param after  the motions after it, nearest first; at most 8, up to a move along the axis that clears the run
 */
record ArcRun(int order, int last, ToolLog tool, List<Step> before, List<Step.Arc> arcs, List<Step> after) {

	ArcRun {
		before = List.copyOf(before);
		arcs = List.copyOf(arcs);
		after = List.copyOf(after);
	}

	Plane plane() {
		return arcs.get(0).modal().plane();
	}

	/** Sum of the sweeps, radians, without sign. */
	double sweep() {
		return arcs.stream().mapToDouble(a -> Math.abs(a.sweep())).sum();
	}

	/** Mean radius weighted by sweep, mm. */
	double radius() {
		return arcs.stream().mapToDouble(a -> (a.startRadius() + a.endRadius()) / 2 * Math.abs(a.sweep())).sum() / sweep();
	}

	/** The centre in the plane: the mean of the arcs' own centres, weighted by sweep, so that arcs a hair off still give the hole's place. */
	Point centre() {
		double x = 0;
		double y = 0;
		double z = 0;
		for (Step.Arc arc : arcs) {
			double weight = Math.abs(arc.sweep()) / sweep();
			x += arc.centre().x() * weight;
			y += arc.centre().y() * weight;
			z += arc.centre().z() * weight;
		}
		return new Point(x, y, z);
	}

	/** Level where it starts, mm. */
	double from() {
		return arcs.get(0).from().along(plane().axis());
	}

	/** Level where it ends, mm. */
	double to() {
		return arcs.get(arcs.size() - 1).to().along(plane().axis());
	}

	/** Whether it advances along the axis. */
	boolean helical() {
		return Math.abs(to() - from()) > 1e-6;
	}

	/** Deepest level in a direction, -1 for towards smaller numbers, mm. */
	double deepest(int direction) {
		return direction < 0 ? Math.min(from(), to()) : Math.max(from(), to());
	}
}
