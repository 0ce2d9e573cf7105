package truelead.audit.html;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import truelead.audit.result.Audited;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The tools in the order they come, with how many holes each makes or threads. */
final class ToolsPart {

	private static final int MOST = 200;

	private final Work work;

	ToolsPart(Audited.Checked program) {
		this.work = program.result().work();
	}

	void write(Html html) {
		Map<Integer, Integer> made = new HashMap<>();
		Map<Integer, Integer> threaded = new HashMap<>();
		for (Hole hole : work.holes()) {
			hole.cuts().stream().map(Cut::tool).map(ToolUse::index).distinct().forEach(tool -> made.merge(tool, 1, Integer::sum));
		}
		for (ThreadingOperation operation : work.operations()) {
			threaded.merge(operation.tool().index(), operation.holes().size(), Integer::sum);
		}
		List<ToolUse> shown = work.tools().stream().filter(tool -> tool.change().isPresent() || made.containsKey(tool.index())
				|| threaded.containsKey(tool.index())).toList();
		if (shown.isEmpty()) {
			return;
		}
		html.raw("<h2>Tools</h2><div class=\"wide\"><table class=\"list\">")
				.heads(List.of("tool", "line", "what the program says of it", "holes worked", "holes threaded"));
		for (ToolUse tool : shown.subList(0, Math.min(MOST, shown.size()))) {
			html.cells(List.of(tool.name(), tool.change().map(change -> "" + (change.outermost().line() + 1)).orElse("\u2013"), said(tool),
					"" + made.getOrDefault(tool.index(), 0), "" + threaded.getOrDefault(tool.index(), 0)));
		}
		html.raw("</table></div>\n");
	}

	/** The first comments that belong to a tool, as one line. */
	static String said(ToolUse tool) {
		return tool.comments().stream().map(comment -> comment.text().strip()).filter(text -> !text.isEmpty()).limit(3)
				.collect(Collectors.joining("; "));
	}
}
