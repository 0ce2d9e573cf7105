package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One method weighed: the reasons, not a score.
 *
 * @param method   the method
 * @param pros     what speaks for it
 * @param cons     what speaks against it
 * @param ruledOut what forbids it; empty where it can be done
 * @param hole     the hole it needs; empty where no drill is known
 * @param demand   what it takes; empty where no drill is known
 */
public record Weighing(Method method, List<String> pros, List<String> cons, List<String> ruledOut, Optional<HolePlan> hole, Optional<Demand> demand) {

	public Weighing {
		pros = List.copyOf(pros);
		cons = List.copyOf(cons);
		ruledOut = List.copyOf(ruledOut);
	}

	/** The same with what the tool list says of its tap: the number, or that it must be bought. */
	Weighing with(Optional<Integer> tool) {
		List<String> more = new ArrayList<>(tool.isPresent() ? pros : cons);
		more.add(tool.map(t -> "on hand: T" + t + " of the tool list").orElse("to be bought: no such tap for this thread in the tool list"));
		return new Weighing(method, tool.isPresent() ? more : pros, tool.isPresent() ? cons : more, ruledOut, hole, demand);
	}

	/** Whether nothing rules it out. */
	public boolean possible() {
		return ruledOut.isEmpty();
	}
}
