package truelead.checker.rule.method;

import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Nothing names the thread of a threading operation, so that its feed cannot be judged against a pitch. */
public final class CalloutMissing extends OperationRule {

	public CalloutMissing() {
		super("callout-missing");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.NO_TAP, Slip.LEFT_ON);
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		if (operation.wanted().statedThread().isPresent() || !firstOfGroup(operation, work)) {
			return;
		}
		String would = operation.wanted().thread().map(Fact::value).map(ThreadSpec::designation).map(d -> " (the numbers would make " + d
				+ ")").orElse("");
		Draft draft = Draft.of(this, Severity.INFORMATION, Location.of(operation.block()), "nothing names the thread of this operation"
				+ would + ", so its feed is not judged; a comment at the tool change, such as (M6X1 TAP)");
		operation.wanted().thread().ifPresent(t -> draft.known("thread the numbers would make", t.value().designation(), t));
		found.accept(draft);
	}
}
