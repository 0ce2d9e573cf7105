package truelead.checker.work;

import truelead.checker.machine.Step;
import truelead.checker.tool.ToolUse;

/**
 * Something other than motion, when, and under which tool.
 *
 * @param order number of the step in the order of execution
 * @param tool  the tool in the spindle; for a tool change the new one
 */
public record TimedEvent(int order, Step.Event event, ToolUse tool) {
}
