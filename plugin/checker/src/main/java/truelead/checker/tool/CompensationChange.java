package truelead.checker.tool;

import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step;

/**
 * Cutter radius compensation switched on, off or over.
 *
 * @param order number of the step in the order of execution
 * @param step  the first motion with the new state, a move or an arc
 * @param before state before it
 * @param after  state in it
 */
public record CompensationChange(int order, Step step, Compensation before, Compensation after, ToolUse tool) {
}
