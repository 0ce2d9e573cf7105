package truelead.checker.rule.hole;

import java.util.List;
import java.util.function.Consumer;
import truelead.checker.hole.Hole;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A hole was made near the place, nearer than half the thread's diameter, but off by more than the tolerance. */
public final class HoleOffPosition extends HoleRule {

	public HoleOffPosition() {
		super("hole-off-position");
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		double diameter = diameter(operation);
		List<Visit> off = HoleState.BESIDE.of(visits, work, diameter);
		if (off.isEmpty()) {
			return;
		}
		Visit first = off.get(0);
		Hole hole = HoleState.beside(work, first, diameter).orElseThrow();
		Figures figures = new Figures(first.modal().unit());
		BlockRef made = hole.making().get(0).block();
		boolean threadsBeside = first.off() > 0 && hole == first.hole();
		double distance = threadsBeside ? first.off() : hole.place().distance(first.hole().place());
		String message = operation.tool().name() + (threadsBeside ? " threads about a centre beside the hole" : " goes in at " + at(first.hole().place(), figures)) + ", the hole is at " + at(hole.place(), figures) + ": "
				+ figures.fine(distance) + " off" + more(off) + "; the same position for both";
		Draft draft = Draft.of(this, Severity.WARNING, Location.of(first.block()), message)
				.programmed("place of the thread", at(first.hole().place(), figures), first.block())
				.programmed("place of the hole", at(hole.place(), figures), made).related(made, "the block that makes the hole")
				.from("same place", "within " + figures.fine(work.shop().profile().positionTolerance()), "machine profile " + work.shop().profile().name());
		found.accept(others(draft, off, "also off its hole"));
	}
}
