package truelead.checker.rule.method;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The pitch called out is in no series of its diameter (ISO 261, ASME B1.1): a slip of the pen, or a special thread that wants a special
 * gauge.
 */
public final class PitchNotStandard extends OperationRule {

	public PitchNotStandard() {
		super("pitch-not-standard");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.SOURCES_DIFFER);
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		operation.wanted().statedThread().filter(t -> !ThreadTable.standard().isStandard(t.value()) && firstOfGroup(operation, work))
				.ifPresent(thread -> found.accept(draft(operation, thread)));
	}

	private Draft draft(ThreadingOperation operation, Fact<ThreadSpec> thread) {
		ThreadSpec spec = thread.value();
		List<ThreadSpec> same = ThreadTable.standard().threadsOf(spec.system() == ThreadSystem.MJ ? ThreadSystem.METRIC : spec.system(),
				spec.diameter());
		String choices = same.stream().map(t -> t.tpi() == 0 ? Figures.number(t.pitch(), 3) : Figures.number(t.tpi(), 1)).distinct()
				.collect(Collectors.joining(", "));
		String unit = spec.tpi() == 0 ? "pitch " + Figures.number(spec.pitch(), 3) : Figures.number(spec.tpi(), 1) + " threads an inch";
		return Draft.of(this, Severity.INFORMATION,
				thread.at().filter(at -> at.file().equals(operation.block().file())).orElse(Location.of(operation.block())),
				"no series has " + unit + " at the diameter of " + named(spec) + (choices.isEmpty() ? "" : ", the table has " + choices)
				+ "; compare with the drawing, a special thread wants a special gauge").known("the callout", named(spec), thread)
				.from("series of the diameter", choices.isEmpty() ? "none" : choices, "ISO 261, ASME B1.1");
	}
}
