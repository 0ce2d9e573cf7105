package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * Turn sense and axis sense of the helix make the other hand: counter-clockwise and rising, or clockwise and falling, is right-handed
 * (geometry).
 */
public final class HelixWrongHand implements Rule {

	/** How far a lead may be off and still be meant, a part of it. */
	private static final double KEPT = 0.05;
	/** Turns below which a pass is part of a turn, but for rounding. */
	private static final double PART = 0.95;

	@Override
	public String name() {
		return "helix-wrong-hand";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.TURNED_ROUND);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.NO_CENTRE, Slip.MIRROR, Slip.LEVEL_FAR_OFF);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> wanted = operation.wanted().statedThread();
			wanted.ifPresent(thread -> operation.passes().where(pass -> wrong(pass, thread.value()) && !pass.modal().mirrored()
					&& !MillFacts.cutOff(work, pass)).forEach(pass -> found.accept(finding(operation, pass, thread))));
		}
	}

	/** Whether the pass cuts the hand that is not wanted; a pass without advance has no hand. */
	static boolean wrong(MillPass pass, ThreadSpec thread) {
		return Math.abs(pass.lead()) > 0.2 * thread.lead() && pass.rightHand() != (thread.hand() == Hand.RIGHT);
	}

	/** Whether less than a turn goes the wrong way round: a lead-in or a part of a path that is turned round, no helix to measure. */
	static boolean turnedLead(MillPass pass, ThreadSpec thread) {
		return pass.turns() < PART && wrong(pass, thread) && !pass.modal().mirrored();
	}

	private Finding finding(ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread) {
		String sense = pass.counterclockwise() ? "counter-clockwise" : "clockwise";
		String way = way(pass, pass.lead() > 0);
		String cut = pass.rightHand() ? "right" : "left";
		String needed = pass.rightHand() ? "left" : "right";
		String message = "the helix goes " + sense + " and " + way + ", that cuts a " + cut + "-hand thread, "
				+ thread.value().designation() + " is " + needed + "-hand; cut it " + sense + " and " + way(pass, pass.lead() < 0)
				+ ", or turn the arcs round, " + (pass.counterclockwise() != pass.modal().mirrored() ? "G2" : "G3");
		Draft draft = Draft.of(this, Severity.ERROR, MillFacts.word(pass.block(), "G"), message).on(operation)
				.programmed("sense", sense + " and " + way, pass.block()).known("the callout", thread.value().designation(), thread);
		double other = turnedRound(pass);
		if (Math.abs(other - thread.value().lead()) < KEPT * thread.value().lead()) {
			draft.from("lead with the arcs turned round", new Figures(pass.modal().unit()).fine(other), "geometry")
					.tells(Slip.SHORT_WAY_ROUND);
		}
		return draft.finding();
	}

	/** Up and down along Z, along X and Y by the axis. */
	private static String way(MillPass pass, boolean positive) {
		return pass.axis() == 2 ? positive ? "up" : "down" : "towards " + MillFacts.axisLetter(pass.axis()) + (positive ? "+" : "-");
	}

	/** The advance a turn where every arc went the other way between its ends, mm: three quarters of a turn are one then. */
	private static double turnedRound(MillPass pass) {
		double turns = pass.helix().stream().mapToDouble(arc -> 1 - Math.abs(arc.sweep()) / (2 * Math.PI)).sum();
		return turns > 1e-3 ? Math.abs(pass.advance()) / turns : Double.NaN;
	}
}
