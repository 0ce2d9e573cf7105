package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.ToolFacts;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * A drill of the program that was to make the holes of an operation, because it fits the thread, moves, and never cuts: its cycle was left
 * out.
 */
final class IdleDrill {

	private IdleDrill() {
	}

	/**
	 * The last such drill before the operation, in the same program of the file; none where what a drill did is not known to the last
	 * block.
	 */
	static Optional<ToolUse> before(ThreadingOperation operation, Work work) {
		Optional<ThreadSpec> thread = operation.wanted().statedThread().map(Fact::value);
		if (thread.isEmpty() || !work.shop().profile().blockDelete().isEmpty()) {
			return Optional.empty();
		}
		List<ToolUse> tools = work.tools();
		for (int index = operation.tool().index() - 1; index >= 0 && tools.get(index + 1).change().isPresent(); index--) {
			ToolUse tool = tools.get(index);
			if (tool.summary().idle() && fits(tool.facts(), thread.get(), ToolName.forms(operation.tool().facts()))
					&& followed(tool, work)) {
				return Optional.of(tool);
			}
		}
		return Optional.empty();
	}

	private static boolean fits(ToolFacts facts, ThreadSpec thread, boolean forming) {
		return facts.kind().filter(kind -> kind.value() == ToolKind.DRILL).isPresent()
				&& facts.diameter().filter(Fact::stated).filter(size -> MissedPattern.fits(thread, size.value(), forming)).isPresent();
	}

	/** Whether all that a tool does is known. */
	static boolean followed(ToolUse tool, Work work) {
		return tool.change().filter(change -> Unread.from(change, work) == 0).isPresent() && NotHere.during(tool, work).isEmpty();
	}
}
