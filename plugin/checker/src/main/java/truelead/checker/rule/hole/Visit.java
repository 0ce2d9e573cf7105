package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.machine.BlockRef;
import truelead.checker.machine.Modal;
import truelead.checker.work.Hole;
import truelead.checker.work.MillPass;
import truelead.checker.work.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;

/**
 * A threading tool in a hole, a tap or a thread mill.
 *
 * @param hole  the hole, with all that was done there
 * @param order number of the step in the order of execution
 * @param block the block that goes in
 * @param modal state in force
 */
record Visit(Hole hole, int order, BlockRef block, Modal modal) {

	/** The visits of an operation in order, the first pass of a thread mill at each hole; none for bolts and for tools that make no thread. */
	static List<Visit> of(ThreadingOperation operation) {
		List<Visit> visits = new ArrayList<>();
		if (operation instanceof Tapping tapping && tapping.method() != Tapping.Method.WRONG_TOOL) {
			for (TapStroke stroke : tapping.strokes()) {
				visits.add(new Visit(stroke.hole(), stroke.order(), stroke.block(), stroke.modal()));
			}
		} else if (operation instanceof ThreadMilling milling) {
			for (Hole hole : milling.holes()) {
				MillPass first = milling.passesAt(hole).get(0);
				if (!first.external()) {
					visits.add(new Visit(first.hole(), first.order(), first.block(), first.modal()));
				}
			}
		}
		return visits;
	}
}
