package truelead.checker.rule.tapping;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** The spindle under a thread that a lathe cuts by a single point. */
final class TurnedSpindle {

	private TurnedSpindle() {
	}

	/** The spindle turns so that the thread gets the other hand; empty where it does not, or nobody names the thread. */
	static Optional<Draft> hand(Rule rule, SinglePoint turned) {
		Modal modal = turned.pass().modal();
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
		Optional<Hand> cut = turned.hand();
		if (thread.isEmpty() || cut.isEmpty() || cut.get() == thread.get().value().hand()) {
			return Optional.empty();
		}
		boolean in = turned.towardsChuck().orElseThrow();
		boolean right = cut.get() == Hand.RIGHT;
		String other = modal.spindle() == SpindleTurn.CLOCKWISE ? "M4" : "M3";
		String message = modal.spindleWord().map(Figures::written).orElse("the spindle") + " and passes " + (in ? "towards" : "away from")
				+ " the chuck cut a " + (right ? "right" : "left") + "-hand thread, " + thread.get().value().withoutClass().designation()
				+ " is " + (right ? "left" : "right") + "-hand; " + other + ", or passes the other way along Z";
		return Optional.of(Draft.of(rule, Severity.ERROR, modal.spindleWord().map(Location::of).orElse(Location.of(turned.pass().block())),
				message).programmed("passes", in ? "towards the chuck" : "away from the chuck", turned.pass().block())
				.known("the callout", thread.get().value().designation(), thread.get()));
	}

	/** The spindle was stopped by M5 and nothing has started it since; empty where another M code may have. */
	static Optional<Draft> still(Rule rule, SinglePoint turned, MachineProfile profile) {
		Modal modal = turned.pass().modal();
		Optional<WordRef> stop = modal.spindleWord().filter(word -> modal.spindle() == SpindleTurn.STOPPED
				&& ownStop(turned, word, profile));
		return stop.map(word -> Draft.of(rule, Severity.ERROR, Location.of(turned.pass().block()), Figures.written(word)
				+ " stopped the spindle before the thread is cut: the control waits, or the point is torn off at the wall; S and "
				+ "M3 before it").related(Location.of(word), "the spindle stop"));
	}

	/** Whether no code that the profile does not know stands between the stop and the pass. */
	private static boolean ownStop(SinglePoint turned, WordRef stop, MachineProfile profile) {
		Step.Synchronised pass = turned.pass();
		if (!stop.block().file().equals(pass.block().file()) || stop.block().line() > pass.block().line()) {
			return false;
		}
		for (int line = stop.block().line(); line <= pass.block().line(); line++) {
			for (Element.Word word : pass.block().file().text().block(line).words()) {
				boolean known = word.address() != 'M' || word.value() instanceof Expression.Number number
						&& !profile.mCode(MachineProfile.tenfold(number.value())).isEmpty();
				if (!known) {
					return false;
				}
			}
		}
		return true;
	}

	/** The speed does not stay as it is over the passes of one thread; empty where it does. */
	static Optional<Draft> speed(Rule rule, SinglePoint turned) {
		Modal first = turned.pass().modal();
		if (turned.agreed().isEmpty()) {
			return Optional.empty();
		}
		if (first.constantSurface() && first.speed().known()) {
			return Optional.of(Draft.of(rule, Severity.WARNING, first.speed(), turned.pass().block(),
					"the thread is cut at constant surface speed, G96: the spindle turns " + (turned.inside() ? "slower" : "faster")
					+ " from pass to pass the " + (turned.inside() ? "larger" : "smaller")
					+ " X is, and each starts a little beside the groove of the one before; G97 and S in rev/min")
					.related(turned.pass().block(), "the first pass"));
		}
		for (SinglePoint.Pass pass : turned.passes()) {
			Setting speed = pass.step().modal().speed();
			if (speed.known() && first.speed().known() && !first.constantSurface() && !pass.step().modal().constantSurface()
					&& speed.value() != first.speed().value()) {
				return Optional.of(Draft.of(rule, Severity.ERROR, speed, pass.step().block(), "S" + Figures.number(speed.value(), 1)
						+ " from here on, the passes before were cut at S" + Figures.number(first.speed().value(), 1)
						+ ": the axis lags more the faster it goes, and these passes start beside the groove; one S for all passes "
						+ "of a thread").programmed("speed before", "S" + Figures.number(first.speed().value(), 1), first.speed())
						.related(turned.pass().block(), "the first pass"));
			}
		}
		return Optional.empty();
	}
}
