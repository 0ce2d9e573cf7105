package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Plane;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.run.ArcRuns;
import truelead.checker.work.ThreadMilling;

/**
 * One whole circle of a helix that goes round another centre than the circles beside it, as with a digit of I typed wrong or K in place of
 * J: it closes, and the cutter leaves the hole on its far side (geometry).
 */
final class OddCircle {

	/** What centres of one helix may differ beside what the decimals leave open, mm: more is another number. */
	private static final double ODD = 0.05;

	private OddCircle() {
	}

	/** The first of a pass that is one; empty where none is. */
	static Optional<Draft> of(HelixOffSize rule, ThreadMilling operation, MillPass pass) {
		List<Step> path = new ArrayList<>(pass.entry());
		int first = path.size();
		path.addAll(pass.helix());
		int end = path.size();
		path.addAll(pass.exit());
		for (int i = first; i < end; i++) {
			Step.Arc arc = (Step.Arc) path.get(i);
			if (!arc.byRadius() && !arc.inChords() && whole(arc)) {
				Optional<Step.Arc> other = reference(path, i)
						.filter(beside -> away(arc, beside) > ODD
								+ 3 * HelixForm.open(arc, Math.max(arc.resolution(), beside.resolution())));
				if (other.isPresent()) {
					return Optional.of(draft(rule, operation, arc, other.get()));
				}
			}
		}
		return Optional.empty();
	}

	/**
	 * One of two arcs next to another one that share a centre and are no lead-in and lead-out: before and behind it, or the two behind it
	 * where it is the first of its helix; empty where none do.
	 */
	private static Optional<Step.Arc> reference(List<Step> path, int at) {
		Optional<Step.Arc> before = arc(path, at - 1);
		Optional<Step.Arc> behind = arc(path, at + 1);
		Optional<Step.Arc> next = arc(path, at + 2).filter(OddCircle::whole);
		return behind.filter(one -> before.filter(other -> shared(one, other) && (whole(one) || whole(other))).isPresent()
				|| whole(one) && next.filter(other -> shared(one, other)).isPresent());
	}

	private static Optional<Step.Arc> arc(List<Step> path, int at) {
		return at >= 0 && at < path.size() && path.get(at) instanceof Step.Arc arc && !arc.byRadius() ? Optional.of(arc) : Optional.empty();
	}

	private static boolean whole(Step.Arc arc) {
		return Math.abs(arc.sweep()) > ArcRuns.CIRCLE;
	}

	private static boolean shared(Step.Arc one, Step.Arc other) {
		return away(one, other) <= ODD / 2 + 3 * HelixForm.open(one, Math.max(one.resolution(), other.resolution()));
	}

	private static double away(Step.Arc one, Step.Arc other) {
		return one.modal().plane() == other.modal().plane() ? one.centre().distanceInPlane(other.centre(), one.modal().plane())
				: Double.NaN;
	}

	private static Draft draft(HelixOffSize rule, ThreadMilling operation, Step.Arc arc, Step.Arc beside) {
		Figures figures = new Figures(arc.modal().unit());
		Plane plane = arc.modal().plane();
		double mm = figures.unit().mm();
		String centre = MillFacts.axisLetter(plane.first()) + Figures.number(beside.centre().along(plane.first()) / mm, 4) + " "
				+ MillFacts.axisLetter(plane.second()) + Figures.number(beside.centre().along(plane.second()) / mm, 4);
		return Draft.of(rule, Severity.ERROR, MillFacts.radiusWord(arc.block()), "this circle goes round a centre "
				+ figures.fine(away(arc, beside)) + " beside that of the circles next to it, " + centre
				+ (Math.abs(arc.startRadius() - beside.startRadius()) > ODD ? ", with a radius of " + figures.fine(arc.startRadius())
						+ " in place of " + figures.fine(beside.startRadius()) : "")
				+ ": the cutter leaves the thread; the same centre as theirs").on(operation)
				.programmed("radius", figures.fine(arc.startRadius()), arc.block())
				.from("centre beside the others", figures.fine(away(arc, beside)), "geometry")
				.related(beside.block(), "a circle next to it").tells(Slip.CENTRE_WITH_RADIUS).tells(Slip.OTHER_CIRCLE);
	}
}
