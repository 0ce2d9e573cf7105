package truelead.checker.rule.method;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The tool goes deeper than it can reach: its shank or the holder meets the edge of the hole (geometry). */
public final class ReachTooShort extends OperationRule {

	public ReachTooShort() {
		super("reach-too-short");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_AXIS, Slip.UNIT_WORD);
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		Optional<Fact<Double>> reach = operation.tool().facts().reach();
		double surface = operation.wanted().surface().value();
		double tip = operation instanceof Tapping tapping
				? tapping.strokes().typical().stream().mapToDouble(s -> s.direction() * (s.bottom() - surface)).max().orElse(Double.NaN)
				: ((ThreadMilling) operation).passes().typical().stream().mapToDouble(p -> surface - Math.min(p.startLevel(), p.endLevel()))
				.max().orElse(Double.NaN);
		if (reach.isPresent() && operation.wanted().surface().source() != FactSource.IMPLIED && tip > reach.get().value() + 1e-6) {
			found.accept(Draft.of(this, Severity.ERROR, Location.of(operation.block()),
					"the tool goes " + figures(work).length(tip) + " deep and reaches " + figures(work).length(reach.get().value()) + ": "
							+ figures(work).length(tip - reach.get().value()) + " too short; a longer tool")
					.known("reach", figures(work).length(reach.get().value()), reach.get())
					.programmed("depth of the tip", figures(work).length(tip), operation.block()));
		}
	}
}
