package truelead.checker.rule.milling;

import truelead.checker.machine.Point;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Plane;
import truelead.checker.work.Work;

/**
 * A lead-in and a lead-out with no helix between, as where the call of the turns is left out: together they go once round a centre beside
 * the hole, and begin and end in the middle of it, where no helix does (geometry).
 */
final class LeadsAlone {

	/** What the middle of the hole may lie beside the ends, mm. */
	private static final double MIDDLE = 0.05;
	private static final double LEAST = 0.9;
	private static final double MOST = 1.1;

	private LeadsAlone() {
	}

	/** Whether a pass is nothing but these. */
	static boolean are(Work work, MillPass pass) {
		Plane plane = pass.place().plane();
		Point from = pass.first().from();
		boolean once = pass.helix().size() > 1 && pass.turns() > LEAST && pass.turns() < MOST
				&& from.distanceInPlane(pass.last().to(), plane) < MIDDLE && !pass.hole().madeBefore(pass.order());
		return once && work.holesNear(pass.place().at(from.along(plane.first()), from.along(plane.second())),
				MIDDLE).stream().anyMatch(hole -> hole.madeBefore(pass.order()));
	}
}
