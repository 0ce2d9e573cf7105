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
 * The taper of a thread that a lathe cuts by a single point: of a pipe thread the radius grows by 1/32 of the way towards the chuck
 * outside, and shrinks so inside (taper 1 in 16 on the diameter, ASME B1.20.1, ISO 7-1); that of a parallel thread stays.
 */
final class TurnedTaper {

	/** Change of radius along the axis, a ratio. */
	private static final double TAPER = ThreadSpec.PIPE_TAPER / 2;
	/** What is still taken for the taper, as parts of it: an R worked out over the thread alone, without the way before it, is smaller. */
	private static final double LEAST = 0.6;
	private static final double MOST = 1.25;

	/** What of a pipe's taper shows that a thread with a parallel one's name is meant to be taper. */
	private static final double PIPE = 0.8;
	/**
	 * Part of the pitch that the radius of a parallel thread may change, for a lathe that turns a cone of itself: as much on the diameter
	 * as a pitch diameter may be off (common practice, no source).
	 */
	private static final double TRUE = 0.05;

	private TurnedTaper() {
	}

	/** The finding of the first pass that is not on its thread's taper; empty where all are, and for a pass shorter than two leads. */
	static Optional<Draft> wrong(Rule rule, SinglePoint turned) {
		return off(rule, turned).or(() -> aslant(rule, turned));
	}

	private static Optional<Draft> off(Rule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(t -> t.stated() && t.value().taperOnDiameter() > 0);
		// the depth is wrong there, and the taper over it with it
		if (thread.isEmpty() || turned.behindBore() > thread.get().value().pitch()) {
			return Optional.empty();
		}
		return turned.passes().stream().filter(pass -> off(turned, pass)).findFirst().map(pass -> draft(rule, turned, pass, thread.get()));
	}

	/**
	 * The finding of the first pass of a parallel thread that goes aslant; empty where none does, and where it follows the taper of pipes,
	 * as M10x1 of grease nipples.
	 */
	private static Optional<Draft> aslant(Rule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(t -> t.stated() && !t.value().system().taper());
		return thread.flatMap(named -> turned.passes().stream().filter(pass -> Math.abs(change(pass.step())) > TRUE * named.value().pitch()
				&& Math.abs(way(pass.step())) > 2 * pass.lead())
				.filter(pass -> !(share(turned, pass) >= PIPE && share(turned, pass) <= MOST)).findFirst()
				.map(pass -> aslant(rule, pass, named)));
	}

	private static Draft aslant(Rule rule, SinglePoint.Pass pass, Fact<ThreadSpec> thread) {
		Step.Synchronised step = pass.step();
		Figures figures = new Figures(step.modal().unit());
		boolean ownMotion = step.code() != 0;
		return Draft.of(rule, Severity.ERROR, MillFacts.word(step.block(), ownMotion ? "X" : "RIXZ"), "the pass ends "
				+ from(change(step), figures) + " the axis than it begins, over " + figures.fine(Math.abs(way(step))) + ": "
				+ thread.value().withoutClass().designation() + " is parallel, and no gauge goes on both its ends; "
				+ (ownMotion ? "X" + Figures.number(2 * Math.abs(step.from().x()) / figures.unit().mm(), 4) : "no taper"))
				.programmed("change of radius", figures.fine(change(step)), step.block())
				.known("the callout", thread.value().designation(), thread);
	}

	private static boolean off(SinglePoint turned, SinglePoint.Pass pass) {
		double share = share(turned, pass);
		return Math.abs(way(pass.step())) > 2 * pass.lead() && !(share >= LEAST && share <= MOST) && !Double.isNaN(share);
	}

	/**
	 * What it changes, as a part of the taper's; where it begins too near to the face, which start-too-close tells, that over two leads
	 * more.
	 */
	private static double share(SinglePoint turned, SinglePoint.Pass pass) {
		double way = Math.abs(way(pass.step()));
		double meant = Math.abs(pass.step().from().z()) < pass.lead() / 2 ? way + 2 * pass.lead() : way;
		return change(pass.step()) / right(turned, pass.step()) * way / meant;
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
		String type = ownMotion ? "X" + Figures.number(2 * (Math.abs(step.from().x()) + right) / figures.unit().mm(), 4)
				: "R" + Figures.number(-right / figures.unit().mm(), 4);
		return Draft.of(rule, Severity.ERROR, MillFacts.word(step.block(), ownMotion ? "X" : "RIXZ"), "the pass ends "
				+ from(change(step), figures) + " the axis than it begins, over " + figures.fine(Math.abs(way(step)))
				+ " a taper of 1 in 16 needs " + from(right, figures) + " it; " + type)
				.programmed("change of radius", figures.fine(change(step)), step.block()).known("the callout", thread.value().designation(),
						thread).from("taper", "1 in 16 on the diameter", "ASME B1.20.1, ISO 7-1");
	}

	private static String from(double change, Figures figures) {
		return figures.fine(Math.abs(change)) + (change < 0 ? " nearer to" : " farther from");
	}
}
