package truelead.checker.rule.tapping;

import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;

/**
 * A tap that moves take in and turn back, but not out of its hole: what comes next pulls it out of the rest. The hole begins at level 0
 * where drill and tap come from right above it, or at the surface that is stated.
 */
final class HalfWay {

	/** So far above the hole drill and tap begin at most, mm (common practice, no source). */
	private static final double CLEARANCE = 25;

	private HalfWay() {
	}

	/** The finding of a stroke that ends in its thread; empty where it does not, or nobody knows where the hole begins. */
	static Optional<Draft> of(Rule rule, Tapping tapping, TapStroke stroke) {
		Optional<Step> back = stroke.back().filter(step -> step instanceof Step.Synchronised
				|| step instanceof Step.Move move && !move.rapid());
		double pitch = tapping.wanted().thread().map(thread -> thread.value().pitch()).orElse(stroke.advance());
		Optional<Cut> cut = stroke.hole().deepestBefore(stroke.order());
		if (back.isEmpty() || cut.isEmpty() || !(pitch > 0)) {
			return Optional.empty();
		}
		Fact<Double> surface = tapping.wanted().surface();
		int axis = stroke.place().plane().axis();
		double mouth = surface.stated() || axis == 2 ? surface.value() : Double.NaN;
		int into = stroke.direction();
		boolean known = into == cut.get().direction() && above(stroke.start(), mouth, into) && above(cut.get().start(), mouth, into);
		Point end = back.get() instanceof Step.Synchronised move ? move.to() : ((Step.Move) back.get()).to();
		double inside = into * (end.along(axis) - mouth);
		if (!known || !(inside > pitch) || !(into * (stroke.bottom() - end.along(axis)) > 0)) {
			return Optional.empty();
		}
		Figures figures = new Figures(stroke.modal().unit());
		char letter = "XYZ".charAt(axis);
		String message = "the tap comes back to " + letter + figures.coordinate(end.along(axis)) + " only, " + figures.length(inside)
				+ " deep in its hole, and what comes next pulls it out of the rest: the thread is torn out; " + letter
				+ figures.coordinate(stroke.start()) + ", where it began";
		return Optional.of(Draft.of(rule, Severity.ERROR, BlockText.word(back.get().block(), String.valueOf(letter)), message)
				.programmed("depth", figures.length(stroke.travel()), stroke.block())
				.programmed("way back", letter + figures.coordinate(end.along(axis)), back.get().block())
				.related(cut.get().block(), "the drill block"));
	}

	private static boolean above(double level, double mouth, int into) {
		double over = into * (mouth - level);
		return over >= 0 && over <= CLEARANCE;
	}
}
