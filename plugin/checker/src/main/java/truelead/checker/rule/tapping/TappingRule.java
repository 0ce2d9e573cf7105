package truelead.checker.rule.tapping;

import java.util.function.Consumer;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** A rule that looks at each tapping operation by itself; every finding names the operation's block and tool change. */
abstract class TappingRule implements Rule {

	private final String name;

	TappingRule(String name) {
		this.name = name;
	}

	@Override
	public final String name() {
		return name;
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (Tapping tapping : work.tappings()) {
			check(tapping, work, draft -> found.accept(draft.on(tapping).finding()));
		}
	}

	abstract void check(Tapping tapping, Work work, Consumer<Draft> found);
}
