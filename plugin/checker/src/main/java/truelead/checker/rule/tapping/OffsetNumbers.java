package truelead.checker.rule.tapping;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import truelead.checker.program.Setting;
import truelead.checker.tool.ToolUse;

/** How a shop numbers its length offsets: by the tool, or by the tool and a number more, where the numbers below are those of the radii. */
final class OffsetNumbers {

	/** So many tools have the number in common before another one is measured by it (a choice of ours). */
	private static final int FEWEST = 2;

	private OffsetNumbers() {
	}

	/** By how much the H of all tools but one at most is ahead of the tool's number; 0 where too few agree. */
	static int ahead(Iterable<ToolUse> tools) {
		Map<Integer, Integer> byTool = new HashMap<>();
		for (ToolUse tool : tools) {
			for (Setting h : tool.summary().lengthOffsets()) {
				if (tool.number() > 0 && h.known() && h.word().isPresent() && h.word().get().address() == 'H') {
					byTool.putIfAbsent(tool.number(), (int) Math.round(h.value()) - tool.number());
				}
			}
		}
		Map<Integer, Integer> counts = new TreeMap<>();
		byTool.values().forEach(ahead -> counts.merge(ahead, 1, Integer::sum));
		int fewest = counts.containsKey(0) ? FEWEST + 1 : FEWEST;
		return counts.entrySet().stream().filter(count -> count.getValue() >= fewest && count.getValue() >= byTool.size() - 1)
				.map(Map.Entry::getKey).findFirst().orElse(0);
	}
}
