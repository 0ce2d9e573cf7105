package truelead.checker.rule.hole;

import java.util.List;
import java.util.function.Consumer;
import truelead.checker.machine.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Nothing made a hole at the place before it is threaded. */
public final class HoleMissing extends HoleRule {

	public HoleMissing() {
		super("hole-missing");
	}

	@Override
	void check(ThreadingOperation operation, List<Visit> visits, Work work, Consumer<Draft> found) {
		double diameter = diameter(operation);
		List<Visit> missing = visits.stream().filter(v -> HoleState.of(work, v, diameter) == HoleState.MISSING).toList();
		if (missing.isEmpty()) {
			return;
		}
		boolean others = work.once(name() + operation.group(),
				() -> work.group(operation).stream().flatMap(o -> Visit.of(o).stream()).anyMatch(v -> v.hole().madeBefore(v.order())));
		Visit first = missing.get(0);
		Figures figures = new Figures(first.modal().unit());
		String message = "nothing in this program makes a hole at " + at(first.hole().place(), figures) + " before " + operation.tool().name() + " goes in"
				+ (others ? more(missing) + "; other holes of the operation are made here" : missing.size() > 1 ? ", nor at its " + (missing.size() - 1)
						+ (missing.size() == 2 ? " other place: made elsewhere?" : " other places: made elsewhere?") : ": made elsewhere?");
		Draft draft = Draft.of(this, others ? Severity.ERROR : Severity.INFORMATION, Location.of(first.block()), message)
				.programmed("place", at(first.hole().place(), figures), first.block())
				.from("same place", "within " + figures.fine(work.shop().profile().positionTolerance()), "machine profile " + work.shop().profile().name());
		found.accept(others(draft, missing, "also without a hole"));
	}
}
