package truelead.checker.work;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/**
 * A thread cut on a lathe by a single point, of which only the lead is looked at: its first pass, or the block of its cycle.
 *
 * @param pass   the motion that cuts; its lead is what F says
 * @param tool   the tool
 * @param starts how many places along the lead its passes start from; 0 where a word Q may turn each start by an angle
 * @param thread the thread that the nearest comment or the tool names; empty where nothing does
 */
public record SinglePoint(Step.Synchronised pass, ToolUse tool, int starts, Optional<Fact<ThreadSpec>> thread) {
}
