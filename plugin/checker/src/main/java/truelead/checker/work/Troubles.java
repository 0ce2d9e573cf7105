package truelead.checker.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.Reason;
import truelead.checker.tool.ToolLog;

/** What could not be followed: each block and reason once, however often it is executed, in the order of execution. */
final class Troubles {

	private final Map<String, Recorder.LoggedTrouble> byBlockAndReason = new LinkedHashMap<>();

	void add(Recorder.LoggedTrouble trouble) {
		Step.NotFollowed step = trouble.step();
		byBlockAndReason.putIfAbsent(step.block().file().name() + ":" + step.block().line() + ":" + step.why().words(), trouble);
	}

	/** The program makes more holes and helices than are kept, from a step on. */
	void tooMany(int order, ToolLog tool, Step first) {
		byBlockAndReason.putIfAbsent("too many", new Recorder.LoggedTrouble(order, tool, new Step.NotFollowed(first.block(), first.modal(),
				Reason.of("the program makes more holes and helices than are followed: those from here on are not checked"), true, Optional.empty(), Step.NotFollowed.Weight.THREAD)));
	}

	List<Recorder.LoggedTrouble> all() {
		return List.copyOf(byBlockAndReason.values());
	}
}
