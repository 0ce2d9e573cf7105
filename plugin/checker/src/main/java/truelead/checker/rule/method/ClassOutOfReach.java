package truelead.checker.rule.method;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * A tight class with a cutting tap, and a drill whose usual oversize leaves no room in the class's minor diameter (common practice, no
 * source).
 */
public final class ClassOutOfReach extends OperationRule {

	private static final Set<String> TIGHT = Set.of("3B", "4H", "5H");

	public ClassOutOfReach() {
		super("class-out-of-reach");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread().filter(t -> t.value().threadClass().filter(TIGHT::contains)
				.isPresent());
		if (!(operation instanceof Tapping) || thread.isEmpty() || ToolName.forms(operation.tool().facts())
				|| operation.holes().isEmpty()) {
			return;
		}
		Optional<Cut> drilled = operation.holes().get(0).threadedBefore(operation.firstOrder(), thread.get().value().diameter())
				.filter(cut -> cut.kind().drills());
		Optional<Limits> limits = ThreadTable.standard().limits(thread.get().value());
		double oversize = work.shop().profile().number(ProfileKey.DRILL_OVERSIZE).orElse(0.05);
		if (drilled.isPresent() && limits.isPresent() && limits.get().minorMaxMm().isPresent()) {
			double drill = drilled.get().diameter().orElseThrow().value();
			double most = limits.get().minorMaxMm().getAsDouble();
			if (drill <= most && drill + oversize > most) {
				found.accept(Draft.of(this, Severity.INFORMATION, Location.of(operation.block()), thread.get().value().designation()
						+ " allows a hole of " + figures(work).fine(most) + ", the drill is " + figures(work).fine(drill)
						+ " and usually cuts "
						+ figures(work).fine(oversize) + " more; ream the hole or take the next smaller drill, and pin it")
						.known("the callout", thread.get().value().designation(), thread.get())
						.known("drill", figures(work).fine(drill), drilled.get().diameter().orElseThrow())
						.from("largest minor diameter", figures(work).fine(most), limits.get().source())
						.from("usual oversize of a drill", figures(work).fine(oversize), "machine profile; common practice, no source"));
			}
		}
	}
}
