package truelead.checker.rule.hole;

import java.util.List;
import java.util.function.Consumer;
import truelead.checker.machine.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.Hole;
import truelead.checker.work.Place;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Nothing made a hole at the place before it is threaded. */
public final class HoleMissing extends HoleRule {

	public HoleMissing() {
		super("hole-missing");
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		double diameter = diameter(operation);
		List<Visit> missing = HoleState.MISSING.of(visits, work, diameter);
		if (missing.isEmpty()) {
			return;
		}
		boolean others = work.once(name() + operation.group(),
				() -> work.group(operation).stream().flatMap(o -> Visits.of(o, work).typical().stream()).anyMatch(v -> v.hole().madeBefore(v.order())));
		List<Hole> meant = others ? List.of() : MissedPattern.of(operation, missing, work);
		Visit first = missing.get(0);
		Figures figures = new Figures(first.modal().unit());
		String message = "nothing in this program makes a hole at " + at(first.hole().place(), figures) + " before " + operation.tool().name() + " goes in"
				+ (others ? more(missing) + "; other holes of the operation are made here" : nor(missing)
						+ (meant.isEmpty() ? ": made elsewhere?" : instead(meant, first, figures)));
		Draft draft = Draft.of(this, others || !meant.isEmpty() ? Severity.ERROR : Severity.INFORMATION, Location.of(first.block()), message)
				.programmed("place", at(first.hole().place(), figures), first.block())
				.from("same place", "within " + figures.fine(work.shop().profile().positionTolerance()), "machine profile " + work.shop().profile().name());
		meant.stream().limit(1).forEach(hole -> draft.related(hole.making().get(0).block(), "makes holes that nothing threads"));
		found.accept(others(draft, missing, "also without a hole"));
	}

	private static String nor(List<Visit> missing) {
		int more = missing.size() - 1;
		return more == 0 ? "" : ", nor at its " + more + (more == 1 ? " other place" : " other places");
	}

	/** What the tool was most likely meant for. */
	private static String instead(List<Hole> meant, Visit first, Figures figures) {
		Place place = meant.get(0).place();
		boolean shifted = !place.comparable(first.hole().place());
		return "; " + meant.size() + " holes, the first at " + at(place, figures) + (shifted ? " under another work offset or shift" : "")
				+ ", are made and never threaded: see " + (shifted ? "G54 to G59, shifts and rotation" : "the positions") + " of the tool";
	}
}
