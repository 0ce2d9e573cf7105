package truelead.checker.rule.hole;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.Written;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The countersink is smaller at the surface than the thread. */
public final class CountersinkTooSmall extends HoleRule {

	/** What depth and angle leave open of the diameter, mm (common practice, no source). */
	private static final double OPEN = 0.05;

	public CountersinkTooSmall() {
		super("countersink-too-small");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread();
		Fact<Double> surface = operation.wanted().surface();
		double level = surface.stated() ? surface.value() : 0;
		for (Visit visit : visits.typical()) {
			List<Cut> edge = visit.hole().edgeBefore(visit.order());
			List<Cut> sinks = edge.isEmpty() ? edge : edge.stream().filter(c -> c.kind() == Cut.Kind.COUNTERSINK).toList();
			boolean known = !sinks.isEmpty() && sinks.stream().allMatch(c -> c.widthAt(level).isPresent());
			if (thread.isPresent() && known) {
				Cut widest = sinks.stream().max(Comparator.comparingDouble(c -> c.widthAt(level).orElseThrow().value())).orElseThrow();
				double wide = widest.widthAt(level).orElseThrow().value();
				if (wide > thread.get().value().diameter() / 2
						&& wide < thread.get().value().diameter() - OPEN - 2 * Written.open(widest.resolution())) {
					found.accept(draft(visit, widest, widest.widthAt(level).orElseThrow(), thread.get(), surface));
					return;
				}
			}
		}
	}

	private Draft draft(Visit visit, Cut sink, Fact<Double> width, Fact<ThreadSpec> thread, Fact<Double> surface) {
		Figures figures = new Figures(visit.modal().unit());
		double diameter = width.value();
		String message = "the countersink is " + figures.length(diameter) + " wide at the surface, "
				+ thread.value().withoutClass().designation() + " is " + figures.length(thread.value().diameter()) + ": "
				+ figures.length(thread.value().diameter() - diameter)
				+ " too small, and the first turn still raises a burr; a little over " + figures.length(thread.value().diameter());
		Draft draft = Draft.of(this, Severity.WARNING, Location.of(sink.block()), message);
		if (surface.stated()) {
			draft.known("surface", figures.length(surface.value()), surface);
		}
		return draft.known("countersink", figures.length(diameter), width)
				.known("diameter of the thread", figures.length(thread.value().diameter()), thread).programmed("depth of the countersink",
						figures.length(sink.tip()), sink.block());
	}
}
