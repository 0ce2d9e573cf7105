package truelead.workbench;

import java.lang.reflect.Field;
import java.util.function.Consumer;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rulebook.Rules;
import truelead.checker.work.Work;

/**
 * A rule that breaks on every program. It takes the place of a registered one until it is closed: no program is known that breaks a rule,
 * and what the workbench does then has to be seen all the same. The registry is an unmodifiable list, so its insides are reached for.
 */
record BrokenRule(String name, Rule whole, int index) implements Rule, AutoCloseable {

	static BrokenRule inPlaceOf(String name) {
		Rule whole = Rules.named(name).orElseThrow();
		BrokenRule broken = new BrokenRule(name, whole, Rules.ALL.indexOf(whole));
		registry()[broken.index] = broken;
		return broken;
	}

	private static Object[] registry() {
		try {
			Field elements = Rules.ALL.getClass().getDeclaredField("elements");
			elements.setAccessible(true);
			return (Object[]) elements.get(Rules.ALL);
		} catch (ReflectiveOperationException another) {
			throw new AssertionError(another);
		}
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		throw new IllegalStateException("broken for a test");
	}

	@Override
	public void close() {
		registry()[index] = whole;
	}
}
