package truelead.checker.rule.hole;

import truelead.checker.machine.BlockRef;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.rule.Written;
import truelead.checker.work.Hole;
import truelead.checker.work.MillPass;
import truelead.checker.work.TapStroke;

/**
 * A threading tool in a hole, a tap or a thread mill.
 *
 * @param hole  the hole, with all that was done there
 * @param order number of the step in the order of execution
 * @param block the block that goes in
 * @param modal state in force
 * @param off   distance of the tool's centre from the hole's, mm, where it is more than rounding; else 0
 */
record Visit(Hole hole, int order, BlockRef block, Modal modal, double off) {

	/** What the centres of arcs written with R leave open, mm (geometry: a radius 0.001 over half the chord moves the centre by 0.09 at R4). */
	private static final double OPEN = 0.1;

	/** What computed numbers leave open, mm: a place worked out by a macro has no written decimals. */
	private static final double COMPUTED = 0.001;

	/** A tap in a hole. */
	static Visit of(TapStroke stroke) {
		return new Visit(stroke.hole(), stroke.order(), stroke.block(), stroke.modal(), 0);
	}

	/** A thread mill in a hole, on its first pass there. */
	static Visit of(MillPass first) {
		return new Visit(first.hole(), first.order(), first.block(), first.modal(), off(first));
	}

	/** How far the mean centre of a helix lies from the hole. */
	private static double off(MillPass pass) {
		double turns = 0;
		double u = 0;
		double v = 0;
		for (Step.Arc arc : pass.helix()) {
			double share = Math.abs(arc.sweep());
			turns += share;
			u += share * arc.centre().along(pass.place().plane().first());
			v += share * arc.centre().along(pass.place().plane().second());
		}
		double distance = Math.hypot(u / turns - pass.place().u(), v / turns - pass.place().v());
		boolean whole = pass.turns() > 0.99;
		double open = pass.helix().stream().anyMatch(Step.Arc::byRadius) ? OPEN : Math.max(COMPUTED, 3 * Written.open(pass.resolution()));
		return whole && distance > open ? distance : 0;
	}
}
