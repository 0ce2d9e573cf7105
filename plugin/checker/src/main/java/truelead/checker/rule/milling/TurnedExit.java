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
 * The way back of a lathe's threading tool: along Z over the thread it must stand off it, beyond the major diameter outside, within the
 * minor one inside (geometry).
 */
final class TurnedExit {

	/**
	 * Part of the pitch on the diameter that the tool may stand within the crests, for what is turned and bored smaller and larger (common
	 * practice, no source).
	 */
	private static final double WITHIN = 0.25;
	/** Pitches on the diameter beyond which another thread is cut than is named: outside the depth of the thread is among them. */
	private static final double STRANGE = 2;
	private static final double STRANGE_INSIDE = 1;

	private TurnedExit() {
	}

	/** The finding of the first pass after which the tool goes back through the thread; empty where it never does. */
	static Optional<Draft> of(Rule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.agreed()
				.filter(t -> Math.abs(2 * turned.deepest().radius() - t.value().diameter()) <= (turned.inside() ? STRANGE_INSIDE
						: STRANGE) * t.value().pitch());
		return thread.flatMap(named -> turned.passes().stream()
				.filter(pass -> pass.back().filter(back -> scars(turned, named.value(), back)).isPresent()).findFirst()
				.map(pass -> draft(rule, turned, named, pass.back().orElseThrow())));
	}

	/**
	 * Diameter of the crests; inside where the bore leaves them, if that is known, and of a taper thread where they are nearest to the
	 * axis; outside no wider than the pipe.
	 */
	private static double crest(SinglePoint turned, ThreadSpec thread) {
		if (!turned.inside()) {
			return thread.diameter();
		}
		double height = 2 * thread.system().profileOverPitch() * thread.pitch();
		double formed = thread.system().taper() ? 2 * turned.deepest().radius() - height : thread.diameter() - height;
		return Math.max(formed, turned.bore().flatMap(bore -> bore.cut().diameter()).map(Fact::value).orElse(thread.diameter() - height));
	}

	private static boolean scars(SinglePoint turned, ThreadSpec thread, Step.Move back) {
		double within = (2 * Math.abs(back.from().x()) - crest(turned, thread)) * (turned.inside() ? 1 : -1);
		double off = (2 * Math.abs(back.to().x()) - crest(turned, thread)) * (turned.inside() ? 1 : -1);
		// of a way back aslant the part before it is off the crests
		double along = Math.abs(back.to().z() - back.from().z()) * (off < within && off < 0 ? within / (within - off) : 1);
		// far beyond the thread it is no way back from it
		return within > WITHIN * thread.pitch() && along > thread.pitch() && Math.abs(back.from().x()) < thread.diameter();
	}

	private static Draft draft(Rule rule, SinglePoint turned, Fact<ThreadSpec> thread, Step.Move back) {
		Figures figures = new Figures(back.modal().unit());
		double crest = crest(turned, thread.value());
		String message = "the tool goes back along Z on diameter " + figures.fine(2 * Math.abs(back.from().x())) + ", the crests of "
				+ thread.value().withoutClass().designation() + " stand at " + figures.fine(crest) + ": it tears through the thread; X "
				+ (turned.inside() ? "below " : "above ") + figures.fine(crest) + " before the way back";
		return Draft.of(rule, Severity.ERROR, MillFacts.word(back.block(), "ZX"), message)
				.programmed("diameter of the way back", figures.fine(2 * Math.abs(back.from().x())), back.block())
				.known("the callout", thread.value().designation(), thread).related(turned.pass().block(), "the first pass");
	}
}
