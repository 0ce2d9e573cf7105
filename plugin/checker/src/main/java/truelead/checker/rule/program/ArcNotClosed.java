package truelead.checker.rule.program;

import java.util.function.Consumer;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Written;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** Start and end of an arc lie at different distances from its centre, by more than the control takes and the written decimals explain. */
public final class ArcNotClosed implements Rule {

	@Override
	public String name() {
		return "arc-not-closed";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (Step.Arc arc : work.trouble().openArcs()) {
			double difference = Math.abs(arc.startRadius() - arc.endRadius());
			double tolerance = work.shop().profile().arcTolerance(arc.modal().unit());
			if (difference > tolerance + 3 * Written.open(arc.resolution()) && !SidewaysArc.is(arc, work)) {
				found.accept(draft(work, arc, difference, tolerance));
			}
		}
		for (ThreadMilling milling : work.threadMillings()) {
			milling.passes().where(pass -> pass.helix().size() > 2 && pass.helix().stream().allMatch(Step.Arc::byRadius) && StrayEnd.of(pass).isPresent())
					.forEach(pass -> StrayEnd.of(pass).ifPresent(stray -> found.accept(stray.draft(this, milling).finding())));
		}
	}

	private Finding draft(Work work, Step.Arc arc, double difference, double tolerance) {
		Figures figures = new Figures(arc.modal().unit());
		String message = "the arc starts " + figures.fine(arc.startRadius()) + " from its centre and ends " + figures.fine(arc.endRadius()) + " from it: "
				+ figures.fine(difference) + " apart, the control takes " + figures.fine(tolerance) + " and stops or cuts a spiral; see the end point and I, J, K";
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(arc.block()), message)
				.programmed("radius at the start", figures.fine(arc.startRadius()), arc.block())
				.programmed("radius at the end", figures.fine(arc.endRadius()), arc.block())
				.from("tolerance of arcs", figures.fine(tolerance), "machine profile " + work.shop().profile().name());
		work.threadMillings().stream().filter(milling -> uses(milling, arc)).findFirst().ifPresent(draft::on);
		return draft.finding();
	}

	private static boolean uses(ThreadMilling milling, Step.Arc arc) {
		// what comes again and again has no open arc
		return milling.passes().outermost().stream().anyMatch(p -> p.helix().contains(arc) || p.entry().contains(arc) || p.exit().contains(arc));
	}
}
