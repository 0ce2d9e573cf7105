package truelead.checker.rule.tapping;

import truelead.checker.job.FactSource;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;

/** How many turns a tap makes in the part: from the surface of the hole to the bottom, and never more than it is fed. */
final class Turns {

	private Turns() {
	}

	/** Turns to depth for a lead in mm; NaN where a level is not known. */
	static double toDepth(Tapping tapping, TapStroke stroke, double lead) {
		return engaged(tapping, stroke) / lead;
	}

	/** Length in the part, mm: bottom below the surface where that is known, at most the way from the R level. */
	static double engaged(Tapping tapping, TapStroke stroke) {
		double below = stroke.direction() * (stroke.bottom() - tapping.wanted().surface().value());
		boolean guessed = tapping.wanted().surface().source() == FactSource.IMPLIED;
		return guessed || !(below > 0) ? stroke.travel() : Math.min(below, stroke.travel());
	}
}
