package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Location;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.Cut;
import truelead.checker.work.Hole;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Holes drilled in one cycle with those that were threaded, by the tap drill to the same depth, and never threaded or touched again. */
public final class HoleSkipped extends HoleRule {

	public HoleSkipped() {
		super("hole-skipped");
	}

	@Override
	void check(ThreadingOperation operation, List<Visit> visits, Work work, Consumer<Draft> found) {
		boolean first = work.group(operation).get(0) == operation;
		if (!first || work.operations().stream().anyMatch(o -> !o.notEvaluated().isEmpty()) || !(operation instanceof Tapping t && t.method().taps())) {
			return;
		}
		Set<Cycle> cycles = new LinkedHashSet<>();
		int threaded = 0;
		for (ThreadingOperation member : work.group(operation)) {
			for (Visit visit : Visit.of(member)) {
				visit.hole().deepestBefore(visit.order()).filter(c -> c.step() instanceof Step.Stroke).ifPresent(c -> cycles.add(((Step.Stroke) c.step()).cycle()));
				threaded++;
			}
		}
		List<Cut> skipped = new ArrayList<>();
		if (cycles.size() == 1 && threaded > 1) {
			for (Hole hole : work.holes()) {
				List<Cut> making = hole.making();
				if (making.size() == 1 && work.threading(hole).isEmpty() && making.get(0).step() instanceof Step.Stroke s && cycles.contains(s.cycle())
						&& work.holesNear(hole.place(), diameter(operation) / 2).stream().allMatch(h -> work.threading(h).isEmpty())) {
					skipped.add(making.get(0));
				}
			}
		}
		if (!skipped.isEmpty() && skipped.size() < threaded) {
			found.accept(draft(operation, skipped, threaded, new Figures(visits.get(0).modal().unit())));
		}
	}

	private Draft draft(ThreadingOperation operation, List<Cut> skipped, int threaded, Figures figures) {
		Cut first = skipped.get(0);
		String message = "the hole at " + at(first.place(), figures) + " is drilled with the " + threaded + " that " + operation.tool().name()
				+ " threads, and never threaded" + (skipped.size() > 1 ? ", nor are " + (skipped.size() - 1) + " more" : "")
				+ "; its position behind the tapping block, or a drilling block of its own";
		Draft draft = Draft.of(this, Severity.WARNING, Location.of(first.block()), message)
				.programmed("place", at(first.place(), figures), first.block()).from("threaded holes of the pattern", String.valueOf(threaded), "counted");
		skipped.stream().skip(1).limit(10).forEach(cut -> draft.related(cut.block(), "also never threaded"));
		return draft;
	}
}
