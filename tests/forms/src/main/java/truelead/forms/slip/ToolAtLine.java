package truelead.forms.slip;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import truelead.checker.CheckResult;
import truelead.checker.tool.ToolUse;

/** What is in the spindle at each line of a program, as the checker takes it. */
final class ToolAtLine {

	private ToolAtLine() {
	}

	/** Of so many lines. */
	static List<String> of(CheckResult result, int lines) {
		String machine = result.work().shop().profile().isLathe() ? "lathe " : "";
		Map<Integer, String> changes = new TreeMap<>();
		for (ToolUse tool : result.work().tools()) {
			tool.change().ifPresent(block -> changes.put(block.line(), machine + kind(tool)));
		}
		List<String> tools = new ArrayList<>();
		String tool = machine + "no tool";
		for (int line = 0; line < lines; line++) {
			tool = changes.getOrDefault(line, tool);
			tools.add(tool);
		}
		return tools;
	}

	private static String kind(ToolUse tool) {
		return tool.facts().kind().map(kind -> kind.value().name().toLowerCase(Locale.ROOT).replace('_', ' ')).orElse("a tool");
	}
}
