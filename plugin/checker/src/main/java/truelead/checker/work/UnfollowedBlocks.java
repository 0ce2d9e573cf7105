package truelead.checker.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.Reason;
import truelead.checker.tool.ToolLog;

/** What could not be followed: each block and reason once, however often it is executed, in the order of execution. */
final class UnfollowedBlocks {

	/** A step that could not be followed, and when. */
	record Logged(int order, ToolLog tool, Step.NotFollowed step) {
	}

	private final Map<String, Logged> byBlockAndReason = new LinkedHashMap<>();

	void add(Logged trouble) {
		Step.NotFollowed step = trouble.step();
		byBlockAndReason.putIfAbsent(step.block().file().name() + ":" + step.block().line() + ":" + step.why().words(), trouble);
	}

	/** The program makes more holes and helices than are kept, from a step on. */
	void tooMany(int order, ToolLog tool, Step first) {
		byBlockAndReason.putIfAbsent("too many",
				new Logged(order, tool, new Step.NotFollowed(first.block(), first.modal(),
						Reason.of("the program makes more holes and helices than are followed: those from here on are not checked"), true,
						Optional.empty(), Step.NotFollowed.Weight.THREAD)));
	}

	List<Logged> all() {
		return List.copyOf(byBlockAndReason.values());
	}
}
