package truelead.checker.rule.milling;

import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Plane;

/** How a cutter comes to the helix: the last motion before it that moves across the axis, and its direction against the wall. */
final class Approach {

	private Approach() {
	}

	/** The last step before the helix that moves in the plane; empty where the cutter was at the helix's start before it went down. */
	static Optional<Step> last(MillPass pass) {
		List<Step> entry = pass.entry();
		for (int i = entry.size() - 1; i >= 0; i--) {
			if (moves(entry.get(i), pass.place().plane())) {
				return Optional.of(entry.get(i));
			}
		}
		return Optional.empty();
	}

	/** The angle between the end of a step and the helix's own direction at its start, radians from 0 to pi. */
	static double kink(Step step, MillPass pass) {
		Plane plane = pass.place().plane();
		double helix = pass.first().heading(pass.first().from());
		double arriving = step instanceof Step.Arc arc ? arc.heading(arc.to()) : step instanceof Step.Move move
				? Math.atan2(move.to().along(plane.second()) - move.from().along(plane.second()),
						move.to().along(plane.first()) - move.from().along(plane.first()))
				: helix;
		double difference = Math.abs(helix - arriving) % (2 * Math.PI);
		return Math.min(difference, 2 * Math.PI - difference);
	}

	private static boolean moves(Step step, Plane plane) {
		return step instanceof Step.Arc || step instanceof Step.Move move && move.from().distanceInPlane(move.to(), plane) > 1e-4;
	}
}
