package truelead.checker.rule.method;

import java.util.function.Consumer;
import truelead.checker.job.GaugingInterval;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** More holes by one tool than the checking interval, and no stop to gauge one. */
public final class NoCheckStop extends OperationRule {

	public NoCheckStop() {
		super("no-check-stop");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		if (!firstOfGroup(operation, work) || operation.tool().summary().optionalStops() > 0) {
			return;
		}
		int interval = GaugingInterval.of(operation.tool().facts());
		int holes = 0;
		for (ThreadingOperation one : work.group(operation)) {
			holes += one.holes().size();
		}
		if (holes > interval) {
			found.accept(Draft.of(this, Severity.INFORMATION, Location.of(operation.block()),
					holes + " holes by one tool and no stop to gauge one; M1 after " + interval
							+ " holes: the hole by pin, the thread by go and no-go")
					.programmed("holes", Integer.toString(holes), operation.block()).from("interval", Integer.toString(interval),
							"common practice, no source"));
		}
	}
}
