package truelead.checker.rule.program;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.program.Plane;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * A tapping cycle whose words, read in another plane, lead to a hole that is drilled there and not threaded: its plane word was left out or
 * is another tool's.
 */
final class OtherPlane {

	/** How far apart two positions are one, mm. */
	private static final double SAME = 0.02;

	private OtherPlane() {
	}

	/** The hole that the first stroke was meant for; empty where there is none. */
	static Optional<Hole> meant(Tapping tapping, Work work) {
		TapStroke stroke = tapping.strokes().get(0);
		Plane plane = stroke.place().plane();
		double[] at = new double[3];
		at[plane.first()] = stroke.place().u();
		at[plane.second()] = stroke.place().v();
		at[plane.axis()] = stroke.bottom();
		Set<Place> threaded = null;
		for (Hole hole : work.holes()) {
			Place place = hole.place();
			if (place.plane() != plane && place.part() == stroke.place().part() && Math.abs(place.u() - at[place.plane().first()]) <= SAME
					&& Math.abs(place.v() - at[place.plane().second()]) <= SAME && hole.madeBefore(stroke.order())) {
				threaded = threaded == null ? threaded(work) : threaded;
				if (!threaded.contains(place)) {
					return Optional.of(hole);
				}
			}
		}
		return Optional.empty();
	}

	private static Set<Place> threaded(Work work) {
		Set<Place> threaded = new HashSet<>();
		for (ThreadingOperation operation : work.operationsOfProgram()) {
			operation.holes().forEach(hole -> threaded.add(hole.place()));
		}
		return threaded;
	}
}
