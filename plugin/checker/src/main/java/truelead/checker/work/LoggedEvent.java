package truelead.checker.work;

import truelead.checker.machine.Step;
import truelead.checker.tool.ToolLog;

/** An event as recorded, before the tools are known. */
record LoggedEvent(int order, ToolLog tool, Step.Event event) {
}
