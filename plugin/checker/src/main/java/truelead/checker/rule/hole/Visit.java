package truelead.checker.rule.hole;

import truelead.checker.hole.Hole;
import truelead.checker.machine.Modal;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.stroke.TapStroke;

/**
 * A threading tool in a hole, a tap or a thread mill.
 *
 * @param hole   the hole, with all that was done there
 * @param order  number of the step in the order of execution
 * @param block  the block that goes in
 * @param modal  state in force
 * @param off    distance of the tool's centre from the hole's, mm, where it is more than rounding; else 0
 * @param bottom lowest level that the tool goes to, mm; NaN where it is not known
 */
record Visit(Hole hole, int order, BlockRef block, Modal modal, double off, double bottom) {

	/** A tap in a hole. */
	static Visit of(TapStroke stroke) {
		return new Visit(stroke.hole(), stroke.order(), stroke.block(), stroke.modal(), 0, stroke.bottom());
	}

	/** A thread mill in a hole, on its first pass there. */
	static Visit of(MillPass first) {
		return new Visit(first.hole(), first.order(), first.block(), first.modal(), first.besideHole(),
				Math.min(first.startLevel(), first.endLevel()));
	}

	/** The same in the hole as it is in the part that is clamped then. */
	Visit in(Hole part) {
		return part == hole ? this : new Visit(part, order, block, modal, off, bottom);
	}
}
