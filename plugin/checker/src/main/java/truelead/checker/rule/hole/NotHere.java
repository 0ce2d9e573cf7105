package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.NotFollowed;
import truelead.checker.work.Work;

/** Blocks that are not followed, by the tool in the spindle: what is called there and is not here may make the holes that lack. */
final class NotHere {

	private NotHere() {
	}

	/** What is not followed from a tool's change up to the next one, in the order of execution. */
	static List<NotFollowed> during(ToolUse tool, Work work) {
		int behind = tool.index() + 1 < work.tools().size() ? work.tools().get(tool.index() + 1).firstOrder() : Integer.MAX_VALUE;
		return work.troubleOfProgram().notFollowed().stream().filter(trouble -> trouble.order() >= tool.firstOrder()
				&& trouble.order() < behind).toList();
	}

	/** The last program before a step that is called while a tool is in the spindle that may make holes. */
	static Optional<NotFollowed> drilling(int order, Work work) {
		if (work.troubleOfProgram().notFollowed().stream().noneMatch(NotFollowed::call)) {
			return Optional.empty();
		}
		return work.tools().stream().filter(tool -> tool.firstOrder() < order && makesHoles(tool))
				.flatMap(tool -> during(tool, work).stream()).filter(trouble -> trouble.call() && trouble.order() < order)
				.reduce((one, later) -> later);
	}

	private static boolean makesHoles(ToolUse tool) {
		ToolKind kind = tool.facts().kind().map(Fact::value).orElse(ToolKind.DRILL);
		return kind.bores() || kind == ToolKind.END_MILL || kind == ToolKind.COUNTERBORE;
	}
}
