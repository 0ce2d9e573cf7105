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

/** The way back of a lathe's threading tool: along Z over the thread it must stand off it, beyond the major diameter outside, within the minor one inside (geometry). */
final class TurnedExit {

	/** Part of the pitch on the diameter that the tool may stand within the crests, for what is turned and bored smaller and larger (common practice, no source). */
	private static final double WITHIN = 0.25;
	/** Pitches on the diameter beyond which another thread is cut than is named. */
	private static final double STRANGE = 2;

	private TurnedExit() {
	}

	/** The finding of the first pass after which the tool goes back through the thread; empty where it never does. */
	static Optional<Draft> of(Rule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated)
				.filter(t -> Math.abs(2 * turned.deepest().radius() - t.value().diameter()) <= STRANGE * t.value().pitch());
		return thread.flatMap(named -> turned.passes().stream().filter(pass -> pass.back().filter(back -> scars(turned, named.value(), back)).isPresent()).findFirst()
				.map(pass -> draft(rule, turned, named, pass.back().orElseThrow())));
	}

	/** Diameter of the crests; inside a taper thread where they are nearest to the axis, if its bore leaves them there, and outside no wider than the pipe. */
	private static double crest(SinglePoint turned, ThreadSpec thread) {
		if (thread.system().taper()) {
			double height = 2 * thread.system().profileOverPitch() * thread.pitch();
			double left = turned.bore().flatMap(bore -> bore.cut().diameter()).map(Fact::value).orElse(thread.diameter() - height);
			return turned.inside() ? Math.max(left, 2 * turned.deepest().radius() - height) : thread.diameter();
		}
		return turned.inside() ? thread.diameter() - 2 * thread.system().profileOverPitch() * thread.pitch() : thread.diameter();
	}

	private static boolean scars(SinglePoint turned, ThreadSpec thread, Step.Move back) {
		double within = (2 * Math.abs(back.from().x()) - crest(turned, thread)) * (turned.inside() ? 1 : -1);
		// far beyond the thread it is no way back from it
		return within > WITHIN * thread.pitch() && Math.abs(back.from().x()) < thread.diameter();
	}

	private static Draft draft(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, Step.Move back) {
		Figures figures = new Figures(back.modal().unit());
		double crest = crest(turned, thread.value());
		String message = "the tool goes back along Z on diameter " + figures.fine(2 * Math.abs(back.from().x())) + ", the crests of " + thread.value().withoutClass().designation() + " stand at " + figures.fine(crest)
				+ ": it tears through the thread; X " + (turned.inside() ? "below " : "above ") + figures.fine(crest) + " before the way back";
		return Draft.of(rule, Severity.ERROR, MillFacts.word(back.block(), "ZX"), message).programmed("diameter of the way back", figures.fine(2 * Math.abs(back.from().x())), back.block())
				.known("the callout", thread.value().designation(), thread).related(turned.pass().block(), "the first pass");
	}
}
