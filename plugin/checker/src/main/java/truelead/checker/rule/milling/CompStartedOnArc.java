package truelead.checker.rule.milling;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Compensation;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.tool.CompensationChange;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * Compensation is switched on or off with an arc: most controls stop with an alarm there, at the wall (RS-274/NGC: it starts on a straight
 * move).
 */
public final class CompStartedOnArc implements Rule {

	@Override
	public String name() {
		return "comp-started-on-arc";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.NO_COMPENSATION);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Set<Integer> checked = new HashSet<>();
		for (ThreadMilling operation : work.threadMillings()) {
			if (checked.add(operation.tool().index())) {
				work.course().compensation().byArcs(operation.tool()).stream().filter(change -> change.before() == Compensation.OFF
						|| change.after() == Compensation.OFF).forEach(change -> found.accept(finding(operation, change)));
			}
		}
	}

	private Finding finding(ThreadMilling operation, CompensationChange change) {
		boolean on = change.before() == Compensation.OFF;
		String code = on ? change.after() == Compensation.LEFT ? "G41" : "G42" : "G40";
		return Draft.of(this, Severity.ERROR, MillFacts.word(change.step().block(), "G"),
				code + " stands with an arc: the control cannot move the cutter " + (on ? "onto" : "off")
						+ " the path there and stops; " + code + " on a straight move of at least the cutter's radius "
						+ (on ? "before the lead-in arc" : "after the lead-out arc")).on(operation).finding();
	}
}
