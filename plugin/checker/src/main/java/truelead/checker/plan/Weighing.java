package truelead.checker.plan;

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

	/** Whether nothing rules it out. */
	public boolean possible() {
		return ruledOut.isEmpty();
	}
}
