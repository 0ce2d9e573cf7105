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
 * @param deepest  full thread that the room gives where that is all that rules it out, mm; 0 else
 */
public record Weighing(Method method, List<String> pros, List<String> cons, List<String> ruledOut, Optional<HolePlan> hole,
		Optional<Demand> demand, double deepest) {

	public Weighing {
		pros = List.copyOf(pros);
		cons = List.copyOf(cons);
		ruledOut = List.copyOf(ruledOut);
	}

	/** The same with what the tool list says of a tool of it: the number, or that it must be bought. */
	Weighing with(String tool, Optional<Integer> pocket) {
		List<String> more = new ArrayList<>(pocket.isPresent() ? pros : cons);
		more.add(pocket.map(t -> tool + " on hand: T" + t + " of the tool list").orElse(tool + " to be bought: not in the tool list"));
		return new Weighing(method, pocket.isPresent() ? more : pros, pocket.isPresent() ? cons : more, ruledOut, hole, demand, deepest);
	}

	/** Whether nothing rules it out. */
	public boolean possible() {
		return ruledOut.isEmpty();
	}
}
