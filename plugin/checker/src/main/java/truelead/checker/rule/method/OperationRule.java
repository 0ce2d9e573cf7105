package truelead.checker.rule.method;

import java.util.function.Consumer;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.NamedRule;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A rule that looks at each threading operation by itself; every finding names the operation's block and tool change. */
abstract class OperationRule extends NamedRule {

	OperationRule(String name) {
		super(name);
	}

	@Override
	public final void check(Work work, Consumer<Finding> found) {
		for (ThreadingOperation operation : work.operations()) {
			boolean threads = !(operation instanceof Tapping tapping) || tapping.method() != Tapping.Method.WRONG_TOOL;
			if (threads) {
				check(operation, work, draft -> found.accept(draft.on(operation).finding()));
			}
		}
	}

	abstract void check(ThreadingOperation operation, Work work, Consumer<Draft> found);

	/** Whether this operation is the first of those that one callout covers, so that what is said of the callout is said once. */
	static boolean firstOfGroup(ThreadingOperation operation, Work work) {
		return work.firstOfGroup(operation);
	}

	static Figures figures(Work work) {
		return new Figures(work.shop().unit().value());
	}

	/** Depth of full thread that is asked for, or else that the tool reaches, mm below the surface; NaN where neither is known. */
	static double depth(ThreadingOperation operation) {
		double surface = operation.wanted().surface().value();
		double reached = operation instanceof Tapping tapping
				? tapping.strokes().typical().stream().mapToDouble(s -> s.direction() * (s.bottom() - surface)).max().orElse(Double.NaN)
				: Double.NaN;
		return operation.wanted().depth().map(d -> d.value()).orElse(reached);
	}

	/** A thread and who names it, for messages. */
	static String named(ThreadSpec thread) {
		return thread.withoutClass().designation();
	}
}
