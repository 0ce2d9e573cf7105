package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;

/**
 * The taper of a pipe thread that a lathe cuts by a single point: the radius grows by 1/32 of the way towards the chuck outside, and shrinks so
 * inside (taper 1 in 16 on the diameter, ASME B1.20.1, ISO 7-1).
 */
final class TurnedTaper {

	/** Change of radius along the axis, a ratio. */
	private static final double TAPER = ThreadSpec.PIPE_TAPER / 2;
	/** What is still taken for the taper, as parts of it: an R worked out over the thread alone, without the way before it, is smaller. */
	private static final double LEAST = 0.6;
	private static final double MOST = 1.25;

	private TurnedTaper() {
	}

	/** The finding of the first pass that is not on the taper; empty where all are, and for a pass shorter than two leads. */
	static Optional<Draft> off(Rule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(t -> t.stated() && t.value().taperOnDiameter() > 0);
		// the depth is wrong there, and the taper over it with it
		if (thread.isEmpty() || turned.behindBore() > thread.get().value().pitch()) {
			return Optional.empty();
		}
		return turned.passes().stream().filter(pass -> off(turned, pass)).findFirst().map(pass -> draft(rule, turned, pass, thread.get()));
	}

	private static boolean off(SinglePoint turned, SinglePoint.Pass pass) {
		double share = change(pass.step()) / right(turned, pass.step());
		return Math.abs(way(pass.step())) > 2 * pass.lead() && !(share >= LEAST && share <= MOST) && !Double.isNaN(share);
	}

	private static double way(Step.Synchronised step) {
		return step.to().z() - step.from().z();
	}

	/** What the radius grows by from the beginning to the end, mm. */
	private static double change(Step.Synchronised step) {
		return Math.abs(step.to().x()) - Math.abs(step.from().x());
	}

	private static double right(SinglePoint turned, Step.Synchronised step) {
		return (turned.inside() ? TAPER : -TAPER) * way(step);
	}

	private static Draft draft(Rule rule, SinglePoint turned, SinglePoint.Pass pass, Fact<ThreadSpec> thread) {
		Step.Synchronised step = pass.step();
		Figures figures = new Figures(step.modal().unit());
		double right = right(turned, step);
		boolean ownMotion = step.code() != 0;
		String type = ownMotion ? "X" + Figures.number(2 * (Math.abs(step.from().x()) + right) / figures.unit().mm(), 4) : "R" + Figures.number(-right / figures.unit().mm(), 4);
		return Draft.of(rule, Severity.ERROR, MillFacts.word(step.block(), ownMotion ? "X" : "RIXZ"), "the pass ends " + from(change(step), figures) + " the axis than it begins, over "
				+ figures.fine(Math.abs(way(step))) + " a taper of 1 in 16 needs " + from(right, figures) + " it; " + type)
				.programmed("change of radius", figures.fine(change(step)), step.block()).known("the callout", thread.value().designation(), thread)
				.from("taper", "1 in 16 on the diameter", "ASME B1.20.1, ISO 7-1");
	}

	private static String from(double change, Figures figures) {
		return figures.fine(Math.abs(change)) + (change < 0 ? " nearer to" : " farther from");
	}
}
