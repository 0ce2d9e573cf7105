package truelead.checker.arithmetic;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import truelead.grammar.Expression;

/** Works out the conditions of a program, and tells whether they come nearer to turning out otherwise than the last time. */
public final class Conditions {

	private static final Set<String> COMPARISONS = Set.of("EQ", "NE", "GT", "GE", "LT", "LE");
	/** Conditions that are remembered; more than any program has in a loop. */
	private static final int MOST = 10_000;

	private record Last(boolean holds, double apart) {
	}

	private final Evaluator evaluator;
	private final Map<Expression, Last> before = new IdentityHashMap<>();
	private Value value = Value.ZERO;

	/** @param evaluator works out what is compared */
	public Conditions(Evaluator evaluator) {
		this.evaluator = evaluator;
	}

	/**
	 * Works a condition out; true where it turns out otherwise than before, or what it compares is less far apart, or it compares nothing.
	 */
	public boolean nearer(Expression condition) {
		value = evaluator.value(condition).inArithmetic();
		Expression plain = condition;
		while (plain instanceof Expression.Group group) {
			plain = group.inner();
		}
		double apart = 0;
		if (plain instanceof Expression.Binary both && COMPARISONS.contains(both.operator())) {
			apart = Math.abs(evaluator.value(both.left()).inArithmetic().number() - evaluator.value(both.right()).inArithmetic().number());
		} else if (!(plain instanceof Expression.Number)) {
			return true;
		}
		Last now = new Last(value.known() && value.number() != 0, apart);
		Last last = before.get(condition);
		if (last != null || before.size() < MOST) {
			before.put(condition, now);
		}
		return last == null || last.holds != now.holds || apart < last.apart;
	}

	/** What the last one came to. */
	public Value value() {
		return value;
	}
}
