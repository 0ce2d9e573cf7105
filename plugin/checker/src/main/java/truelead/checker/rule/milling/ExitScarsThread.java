package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.run.ArcRun;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The cutter is pulled out along the axis while its teeth still stand in the thread: it must come back inside the minor diameter first,
 * outside beyond the major one (geometry).
 */
public final class ExitScarsThread implements Rule {

	/** How far from the wall a cutter at least goes to be off it, mm: less than any thread is deep. */
	static final double OFF_THE_WALL = 0.05;

	@Override
	public String name() {
		return "exit-scars-thread";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_PLANE, Slip.UNIT_WORD, Slip.BESIDE_HOLE, Slip.NO_CENTRE, Slip.CENTRE_WITH_RADIUS, Slip.TURNED_ROUND,
				Slip.CUTTER_TOO_BIG);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			AcrossBelow.of(this, work, operation).map(Draft::finding).ifPresent(found);
			Optional<Fact<ThreadSpec>> thread = MillFacts.cutThread(operation);
			OptionalDouble cutter = MillFacts.cutter(operation);
			MillPasses inside = operation.passes().where(pass -> !pass.external() && !goesOn(pass));
			if (thread.isEmpty() && MillFacts.calledThreadMill(operation)) {
				MillFacts.look(inside, (pass, wrong) -> fromTheWall(work, operation, pass, wrong), found);
			} else if (thread.isPresent() && cutter.isPresent()) {
				MillFacts.look(inside, (pass, wrong) -> look(work, operation, pass, thread.get(), cutter.getAsDouble(), wrong), found);
				MillFacts.look(operation.passes().where(pass -> pass.external() && !goesOn(pass)), (pass, wrong) ->
						BoltExit.of(this, work, operation, pass, thread.get(), cutter.getAsDouble()).ifPresent(draft ->
								wrong.accept(draft.finding())), found);
			}
		}
		work.course().singlePoints().forEach(turned -> TurnedExit.of(this, turned).map(Draft::finding).ifPresent(found));
	}

	/** Whether the cutter stays in the hole for longer than its way is known, as for the next pass without coming up. */
	private static boolean goesOn(MillPass pass) {
		return pass.exit().size() >= ArcRun.MOST_AROUND && pass.exit().stream().noneMatch(step -> step instanceof Step.Move move
				&& move.from().along(pass.axis()) != move.to().along(pass.axis()));
	}

	/** The last step before the cutter moves away along the axis alone. */
	static Step lastInTheHole(MillPass pass) {
		Step last = pass.last();
		for (Step step : pass.exit()) {
			if (step instanceof Step.Move move && move.from().distanceInPlane(move.to(), pass.place().plane()) < 1e-4) {
				return last;
			}
			last = step;
		}
		return last;
	}

	private static Place at(MillPass pass, Point point) {
		return pass.place().at(point.along(pass.place().plane().first()), point.along(pass.place().plane().second()));
	}

	static Point leaves(MillPass pass) {
		Step last = lastInTheHole(pass);
		return last instanceof Step.Arc arc ? arc.to() : last instanceof Step.Move move ? move.to() : pass.last().to();
	}

	/**
	 * Of a thread that nobody names the minor diameter is not known, but a cutter that has not come off the wall at all scars it whatever
	 * it is.
	 */
	private void fromTheWall(Work work, ThreadMilling operation, MillPass pass, Consumer<Finding> found) {
		Point leaves = leaves(pass);
		double level = leaves.along(pass.axis());
		double surface = operation.wanted().surface().value();
		double below = pass.below(level, surface);
		if (MillFacts.cutOff(work, pass) || !(below > 0) || !(HelixForm.of(pass).fromAxis(leaves) > pass.radius() - OFF_THE_WALL)
				|| work.cutsAtUnknownPlaces()) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		Step last = lastInTheHole(pass);
		found.accept(Draft.of(this, Severity.ERROR, MillFacts.word(last.block(), "XYZ"), "the cutter leaves along the axis "
				+ figures.length(below)
				+ " below the surface from the wall that it has cut: it scars the thread all the way up; lead out to the centre first")
				.on(operation).programmed("radius of the path there", figures.length(HelixForm.of(pass).fromAxis(leaves)),
						last.block()).finding());
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread, double cutter, Consumer<Finding> found) {
		Step last = lastInTheHole(pass);
		Point leaves = leaves(pass);
		HelixForm form = HelixForm.of(pass);
		double below = pass.below(leaves.along(pass.axis()), operation.wanted().surface().value());
		boolean contour = form.onContour(thread.value().diameter(), cutter) && last.modal().compensation() == pass.compensation();
		double reach = 2 * form.fromAxis(leaves) + (contour ? 0 : cutter);
		double minor = MillFacts.minor(thread.value());
		if (Double.isNaN(reach) || !(below > 0) || reach <= minor + form.diameterRounding() || work.cutsAtUnknownPlaces()) {
			return;
		}
		// what leaves in the middle of the hole leaves rightly: the circle before lies beside it
		if (MillFacts.cutOff(work, pass) || pass.besideHole() > 0 && 2 * pass.place().distance(at(pass, leaves)) + (contour ? 0
				: cutter) <= minor) {
			return;
		}
		// a cutter as wide as the smallest hole scars wherever it leaves, or the hole is wider than that: what is wrong is the cutter
		if (cutter >= minor) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		Draft draft = Draft.of(this, Severity.ERROR, MillFacts.word(last.block(), "XYZ"), "the cutter leaves along the axis "
				+ figures.length(below) + " below the surface while its teeth still reach a diameter of " + figures.length(reach)
				+ ", the hole is " + figures.length(minor) + ": it scars " + figures.length((reach - minor) / 2)
				+ " of the thread; lead out to the centre first").on(operation);
		if (!pass.modal().absolute()) {
			draft.from("way out in increments", figures.length((reach - cutter) / 2), "geometry").tells(Slip.LEAD_OUT_MISSING);
		}
		found.accept(draft.programmed("reach of the teeth", figures.length(reach), last.block())
				.known("the callout", thread.value().designation(), thread).from("minor diameter", figures.length(minor),
						"table of the thread's limits").finding());
	}
}
