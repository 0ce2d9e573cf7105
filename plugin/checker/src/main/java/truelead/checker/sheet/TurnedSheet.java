package truelead.checker.sheet;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/**
 * The numbers of a thread that a lathe cuts by a single point. Lengths in mm; NaN where not known.
 *
 * @param block    the block of its first pass
 * @param tool     the tool
 * @param inside   whether it is cut in a bore
 * @param thread   the thread called out, and who says so
 * @param speed    rev/min of the first pass
 * @param turning  how the spindle turns, in words
 * @param feed     the lead as it is programmed
 * @param advance  what a pass advances in a turn
 * @param passes   how many motions cut it; a cycle of the control that makes its passes by itself is one
 * @param starts   at how many places along the lead they start; 0 where that is not known
 * @param diameter to which the deepest pass goes, where it ends
 * @param from     level along Z where the first pass begins
 * @param to       level where it ends
 */
public record TurnedSheet(BlockRef block, ToolUse tool, boolean inside, Optional<Fact<ThreadSpec>> thread, double speed, String turning, String feed, double advance, int passes, int starts,
		double diameter, double from, double to) implements ThreadSheet {

	@Override
	public String method() {
		return "single point " + (inside ? "inside" : "outside");
	}

	@Override
	public double lead() {
		return thread.map(fact -> fact.value().lead()).orElse(Double.NaN);
	}
}
