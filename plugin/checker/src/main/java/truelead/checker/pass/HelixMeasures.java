package truelead.checker.pass;

import java.util.List;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/**
 * What is measured over all arcs of a helix, once for all who ask.
 *
 * @param radius     mean over the arcs weighted by their sweep, mm
 * @param u          mean centre of the arcs, mm
 * @param v          the same along the other axis, mm
 * @param resolution half of the coarsest last decimal, mm
 * @param byRadius   whether an arc is written with its radius
 */
record HelixMeasures(double radius, double u, double v, double resolution, boolean byRadius) {

	/** Those of some arcs, at least one, about an axis across a plane. */
	static HelixMeasures of(List<Step.Arc> helix, Plane plane) {
		double sweep = 0;
		double radii = 0;
		double u = 0;
		double v = 0;
		double coarsest = 0;
		boolean byRadius = false;
		for (int i = 0; i < helix.size(); i++) {
			Step.Arc arc = helix.get(i);
			double share = Math.abs(arc.sweep());
			sweep += share;
			radii += (arc.startRadius() + arc.endRadius()) / 2 * share;
			u += share * arc.centre().along(plane.first());
			v += share * arc.centre().along(plane.second());
			coarsest = Math.max(coarsest, arc.resolution());
			byRadius |= arc.byRadius();
		}
		return new HelixMeasures(radii / sweep, u / sweep, v / sweep, coarsest, byRadius);
	}
}
