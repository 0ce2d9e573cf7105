package truelead.faults;

import java.util.List;
import java.util.Set;

/**
 * One thing that goes wrong in shops. {@code rules}: the rule that must name it (any of them where more than one is right);
 * {@code companions}: rules that may rightly speak beside it.
 */
public record Fault(String name, Set<String> rules, Set<String> companions, Setter setter) {

	/** Puts the fault into a planned job; gives the marks of the blocks where it may be reported, none where it does not apply. */
	interface Setter {
		List<String> put(Job job, Dice dice);
	}

	static Fault of(String name, String rule, Setter setter) {
		return new Fault(name, Set.of(rule.split(" ")), Set.of(), setter);
	}

	Fault beside(String... others) {
		return new Fault(name, rules, Set.of(others), setter);
	}
}
