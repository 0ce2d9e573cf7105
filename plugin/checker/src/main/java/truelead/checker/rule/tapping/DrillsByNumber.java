package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;

/** The drills of each program of a file by their numbers: a tap that is called by the number of one is that drill. */
final class DrillsByNumber {

	private record Pocket(int program, int number) {
	}

	/** The program of each stay. */
	private final List<Integer> programs = new ArrayList<>();
	private final Map<Pocket, ToolUse> drills = new HashMap<>();
	private final Map<Integer, Set<Integer>> numbers = new HashMap<>();

	private DrillsByNumber(List<ToolUse> tools) {
		int program = 0;
		for (ToolUse tool : tools) {
			program += tool.change().isEmpty() ? 1 : 0;
			programs.add(program);
			if (tool.number() >= 0) {
				numbers.computeIfAbsent(program, p -> new HashSet<>()).add(tool.number());
				if (tool.facts().kind().filter(kind -> kind.value() == ToolKind.DRILL).isPresent()
						&& (tool.summary().cutDry() || tool.summary().cutWithCoolant())) {
					drills.putIfAbsent(new Pocket(program, tool.number()), tool);
				}
			}
		}
	}

	/** Of all stays of a program. */
	static DrillsByNumber of(List<ToolUse> tools) {
		return new DrillsByNumber(tools);
	}

	/**
	 * The drill that has the number of a tap and drilled before it in its program; none where the program has that number alone, and a
	 * person changes the tools.
	 */
	Optional<ToolUse> before(ToolUse tap) {
		int program = programs.get(tap.index());
		return Optional.ofNullable(drills.get(new Pocket(program, tap.number()))).filter(drill -> drill.index() < tap.index()
				&& numbers.get(program).size() > 1);
	}
}
