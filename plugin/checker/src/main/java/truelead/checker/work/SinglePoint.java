package truelead.checker.work;

import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/**
 * A thread cut on a lathe by a single point: its first pass, or the block of its cycle.
 *
 * @param pass   the motion that cuts; its lead is what F says
 * @param tool   the tool
 * @param starts how many places along the lead its passes start from; 0 where a word Q may turn each start by an angle
 * @param thread the thread that the nearest comment or the tool names; empty where nothing does
 * @param bore   the hole it is cut in; empty for a thread outside, and where no hole in the middle is known or the named thread is not as wide as the passes go
 */
public record SinglePoint(Step.Synchronised pass, ToolUse tool, int starts, Optional<Fact<ThreadSpec>> thread, Optional<Bore> bore) {

	/**
	 * A hole in the middle with a thread inside.
	 *
	 * @param cut   what gave it its diameter half way down the thread; the diameter is known
	 * @param floor level down to which the hole is as wide as that, mm
	 * @param end   level of the thread's end, mm
	 */
	public record Bore(Cut cut, double floor, double end) {
	}
}
