package truelead.checker.rule.milling;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.CycleDepth;
import truelead.checker.turn.SinglePoint;

/**
 * Passes of a lathe's thread that begin beside the groove of those before: by a part of the pitch that no infeed along the flank explains.
 * A point that is fed in along a flank begins tan 30 of its infeed farther along Z, one that changes flanks twice that (geometry of the 60
 * degree profile).
 */
final class TurnedGroove {

	/**
	 * Part of the pitch that starts may lie beside each other and be taken for one (common practice, no source); {@link TurnedFlanks}
	 * measures what lies within.
	 */
	private static final double ALLOWED = 0.1;
	private static final double KEPT = 0.02;
	/** Flanks of wider threads are cut side by side on purpose. */
	private static final double NARROWEST = Math.toRadians(50);
	/** As many times the groove changes by one slip: there and back. */
	private static final int CHANGES = 2;

	private TurnedGroove() {
	}

	/**
	 * The first pass that begins beside; empty where all share the thread's grooves, where a lead is wrong, and where the flanks are cut by
	 * turns.
	 */
	static Optional<Draft> beside(Rule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> named = turned.agreed().map(fact -> fact.map(turned::asCut));
		if (named.isEmpty() || named.get().value().system().flankAngle() < NARROWEST && !severalStarts(turned, named.get().value())
				|| !(Math.abs(turned.passes().get(0).lead() - named.get().value().lead()) <= KEPT * named.get().value().lead())) {
			return Optional.empty();
		}
		ThreadSpec thread = named.get().value();
		List<SinglePoint.Pass> passes = turned.passes();
		Optional<SinglePoint.Pass> first = Optional.empty();
		int changes = 0;
		double drift = 0;
		for (int i = 1; i < passes.size(); i++) {
			SinglePoint.Pass before = before(turned, i);
			double shift = Math.IEEEremainder(turned.beside(passes.get(i), thread) - turned.beside(before, thread), thread.pitch());
			double step = Math.abs(shift);
			double infeed = Math.abs(passes.get(i).radius() - before.radius());
			if (Double.isNaN(step)) {
				return Optional.empty();
			}
			if (!(step <= ALLOWED * thread.pitch() + 2 * Math.tan(thread.system().flankAngle() / 2) * infeed)) {
				first = first.isEmpty() ? Optional.of(passes.get(i)) : first;
				changes++;
				drift += Math.signum(shift);
			} else if (step > KEPT * thread.pitch()) {
				return Optional.empty();
			}
		}
		// one way all along it is a way back that is too short or too long, to and fro the flanks by turns
		return changes > CHANGES && Math.abs(drift) < changes ? Optional.empty()
				: first.map(pass -> draft(rule, turned, pass, named.get()));
	}

	/**
	 * Whether a thread of several starts is cut by cycles that make all passes of a start by themselves, or its passes start at as many
	 * places: no flank of it is cut by turns.
	 */
	private static boolean severalStarts(SinglePoint turned, ThreadSpec thread) {
		return thread.starts() > 1 && (turned.starts() == thread.starts()
				|| turned.passes().stream().allMatch(pass -> pass.step().code() == 0 && (CycleDepth.of(pass.step()).isPresent()
						|| !Double.isNaN(pass.step().turned()))));
	}

	/**
	 * The pass that another one goes deeper from: the one before it, or the first where it begins anew from the crests, as for a further
	 * start.
	 */
	private static SinglePoint.Pass before(SinglePoint turned, int index) {
		SinglePoint.Pass last = turned.passes().get(index - 1);
		double deeper = (turned.passes().get(index).radius() - last.radius()) * (turned.inside() ? 1 : -1);
		return deeper < 0 ? turned.passes().get(0) : last;
	}

	private static Draft draft(Rule rule, SinglePoint turned, SinglePoint.Pass pass, Fact<ThreadSpec> thread) {
		Figures figures = new Figures(pass.step().modal().unit());
		double off = turned.beside(pass, thread.value());
		BlockRef at = pass.begins().orElse(pass.step().block());
		boolean word = pass.turned() != 0;
		return Draft.of(rule, Severity.ERROR, word ? MillFacts.word(pass.step().block(), "Q") : MillFacts.word(at, "ZW"),
				"passes from here on begin " + figures.fine(Math.abs(off))
				+ " beside the groove of the first one: they cut away the thread between; " + (word && thread.value().starts() == 1
						? "start them all at one angle" : word ? "turn them by " + Figures.number(360.0 / thread.value().starts(), 1)
						+ " degrees a start" : "begin at Z" + Figures.number((pass.step().from().z() - off) / figures.unit().mm(), 3)
						+ ", or whole pitches of " + figures.advance(thread.value().pitch()) + " from there"))
				.programmed("start", figures.fine(pass.step().from().z()), at).related(turned.pass().block(), "the first pass")
				.known("the callout", thread.value().designation(), thread);
	}
}
