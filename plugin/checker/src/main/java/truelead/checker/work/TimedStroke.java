package truelead.checker.work;

import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.tool.ToolLog;

/** A cycle at a place, or the first of a row of places, when, and under which tool. */
record TimedStroke(int order, ToolLog tool, Step.Stroke stroke, Optional<Step.Row> row) {
}
