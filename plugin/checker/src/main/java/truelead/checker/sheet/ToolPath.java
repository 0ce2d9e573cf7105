package truelead.checker.sheet;

import java.util.List;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/** The way of a cutter seen along the hole, as points close enough to look like the arcs they are. */
final class ToolPath {

	private static final double STEP = Math.toRadians(6);
	private static final int MOST = 2000;

	private ToolPath() {
	}

	/** Adds a motion; first and second axis of the plane become x and y. Motions to places that are not known are left out. */
	static void add(List<Point> path, Step step, Plane plane) {
		if (path.size() > MOST) {
			return;
		}
		if (step instanceof Step.Move move && !move.rapid()) {
			add(path, move.from(), plane);
			add(path, move.to(), plane);
		} else if (step instanceof Step.Arc arc) {
			double x = arc.from().along(plane.first()) - arc.centre().along(plane.first());
			double y = arc.from().along(plane.second()) - arc.centre().along(plane.second());
			int pieces = (int) Math.max(1, Math.min(240, Math.ceil(Math.abs(arc.sweep()) / STEP)));
			for (int i = 0; i <= pieces; i++) {
				double turn = arc.sweep() * i / pieces;
				double grow = 1 + (arc.endRadius() / Math.max(1e-9, arc.startRadius()) - 1) * i / pieces;
				double px = arc.centre().along(plane.first()) + grow * (x * Math.cos(turn) - y * Math.sin(turn));
				double py = arc.centre().along(plane.second()) + grow * (x * Math.sin(turn) + y * Math.cos(turn));
				if (!Double.isNaN(px) && !Double.isNaN(py)) {
					path.add(new Point(px, py, 0));
				}
			}
		}
	}

	private static void add(List<Point> path, Point point, Plane plane) {
		double x = point.along(plane.first());
		double y = point.along(plane.second());
		if (!Double.isNaN(x) && !Double.isNaN(y)) {
			path.add(new Point(x, y, 0));
		}
	}
}
