package truelead.checker.rule.hole;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The hole is made only after it was threaded. */
public final class ThreadedBeforeDrilled extends HoleRule {

	public ThreadedBeforeDrilled() {
		super("threaded-before-drilled");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.DRILLED_LATE);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_TOOL, Slip.DRILLING_CYCLE);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		double diameter = diameter(operation);
		List<Visit> early = HoleState.MADE_LATER.of(visits, work, diameter);
		if (early.isEmpty()) {
			return;
		}
		Visit first = early.get(0);
		Cut cut = first.hole().making().get(0);
		Figures figures = new Figures(first.modal().unit());
		String message = operation.tool().name() + " goes in at " + at(first.hole().place(), figures) + " before the hole is made: "
				+ cut.tool().name() + " makes it in line " + (cut.block().line() + 1) + more(early) + "; thread behind the drilling";
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(first.block()), message)
				.programmed("place", at(first.hole().place(), figures), first.block())
				.related(cut.block(), "the block that makes the hole");
		found.accept(others(draft, early, "also threaded before its hole is made"));
	}
}
