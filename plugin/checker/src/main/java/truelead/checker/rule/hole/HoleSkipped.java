package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import truelead.checker.machine.Location;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.Cut;
import truelead.checker.work.Hole;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Holes made with those that are threaded, by the same tools in the same blocks to the same depth, and never threaded. Holes that a tool touches
 * otherwise, to ream or to counterbore them, are another kind of hole.
 */
public final class HoleSkipped extends HoleRule {

	public HoleSkipped() {
		super("hole-skipped");
	}

	@Override
	void check(ThreadingOperation operation, List<Visit> visits, Work work, Consumer<Draft> found) {
		boolean first = work.group(operation).get(0) == operation;
		if (!first || !work.evaluated() || work.unthreaded().isEmpty()) {
			return;
		}
		Map<String, Integer> threaded = new HashMap<>();
		List<Visit> all = work.group(operation).stream().flatMap(o -> Visit.of(o).stream()).toList();
		all.stream().filter(v -> v.hole().madeBefore(v.order()))
				.forEach(v -> threaded.merge(making(v.hole().cuts().stream().filter(c -> c.order() < v.order()).toList()), 1, Integer::sum));
		List<Cut> skipped = new ArrayList<>();
		for (Hole hole : work.unthreaded()) {
			if (threaded.containsKey(making(hole.cuts())) && !beside(hole, all, diameter(operation))) {
				skipped.add(hole.making().get(0));
			}
		}
		int count = threaded.values().stream().mapToInt(Integer::intValue).sum();
		if (!skipped.isEmpty() && skipped.size() < count && count > 1) {
			found.accept(draft(operation, skipped, count, new Figures(visits.get(0).modal().unit())));
		}
	}

	/** How a hole was made: tools, blocks of their cycles, depths. */
	private static String making(List<Cut> cuts) {
		StringBuilder text = new StringBuilder();
		for (Cut cut : cuts) {
			text.append(cut.tool().index()).append(cut.kind()).append(Math.round(cut.tip() * 50));
			if (cut.step() instanceof Step.Stroke s) {
				text.append('@').append(s.cycle().start().line());
			}
			text.append(';');
		}
		return text.toString();
	}

	private static boolean beside(Hole hole, List<Visit> all, double diameter) {
		return all.stream().anyMatch(v -> v.hole().place().distance(hole.place()) < diameter / 2);
	}

	private Draft draft(ThreadingOperation operation, List<Cut> skipped, int threaded, Figures figures) {
		Cut first = skipped.get(0);
		String message = "the hole at " + at(first.place(), figures) + " is drilled with the " + threaded + " that " + operation.tool().name()
				+ " threads, and never threaded" + (skipped.size() > 1 ? ", nor are " + (skipped.size() - 1) + " more" : "")
				+ "; its position here, or a drilling block of its own";
		Draft draft = Draft.of(this, Severity.WARNING, Location.of(operation.block()), message)
				.programmed("place", at(first.place(), figures), first.block()).related(first.block(), "the block that makes the hole").from("threaded holes of the pattern", String.valueOf(threaded), "counted");
		skipped.stream().skip(1).limit(10).forEach(cut -> draft.related(cut.block(), "also never threaded"));
		return draft;
	}
}
