package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step.EventKind;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.tool.CompensationChange;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.TimedEvent;
import truelead.checker.work.Work;

/** A thread mill's compensation is still on at the next tool change or at the program's end: the next tool runs off its path by the old radius. */
public final class CompLeftOn implements Rule {

	@Override
	public String name() {
		return "comp-left-on";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<TimedEvent> end = work.course().eventsAfter(operation.lastOrder()).stream()
					.filter(e -> (e.event().kind() == EventKind.TOOL_CHANGE || e.event().kind() == EventKind.PROGRAM_END))
					.findFirst();
			Optional<CompensationChange> last = end.flatMap(e -> work.course().compensation().before(e.order()))
					.filter(change -> change.after() != Compensation.OFF && change.tool().index() == operation.tool().index());
			if (last.isPresent()) {
				found.accept(finding(operation, end.orElseThrow(), last.get()));
			}
		}
	}

	private Finding finding(ThreadMilling operation, TimedEvent end, CompensationChange on) {
		String code = on.after() == Compensation.LEFT ? "G41" : "G42";
		String where = end.event().kind() == EventKind.TOOL_CHANGE ? "the tool change" : "the program's end";
		return Draft.of(this, Severity.ERROR, Location.of(end.event().block()),
				code + " is still on at " + where + ": the next path is shifted by this cutter's radius; G40 on a straight move after the lead-out").on(operation)
				.related(on.step().block(), "where " + code + " began").finding();
	}
}
