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
import truelead.checker.turn.SinglePoint;

/**
 * A pass of a lathe's thread that cuts into a flank: however the infeed goes, along one flank or by turns, a pass that is d less deep than
 * the deepest stays within its groove where it begins no more than d tan 30 beside it (geometry of the 60 degree profile).
 */
final class TurnedFlanks {

	private static final double KEPT = 0.02;
	/** Flanks of wider threads are cut side by side on purpose. */
	private static final double NARROWEST = Math.toRadians(50);

	private TurnedFlanks() {
	}

	/**
	 * The pass that lies outside the groove of the deepest, or the deepest where all others share one; empty where none does, and where a
	 * lead is wrong.
	 */
	static Optional<Draft> outside(Rule rule, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> named = turned.agreed()
				.filter(thread -> thread.value().system().flankAngle() >= NARROWEST);
		if (named.isEmpty() || turned.passes().stream().anyMatch(pass ->
				!(Math.abs(pass.lead() - named.get().value().lead()) <= KEPT * named.get().value().lead()))) {
			return Optional.empty();
		}
		ThreadSpec thread = named.get().value();
		SinglePoint.Pass deepest = turned.deepest();
		List<SinglePoint.Pass> off = outside(turned.passes(), deepest, turned, thread);
		if (off.isEmpty()) {
			return Optional.empty();
		}
		List<SinglePoint.Pass> others = turned.passes().stream().filter(pass -> pass != deepest).toList();
		SinglePoint.Pass next = turned.deepest(others);
		boolean itself = off.size() > 1 && outside(others, next, turned, thread).isEmpty();
		return Optional.of(itself ? draft(rule, turned, deepest, next, named.get())
				: draft(rule, turned, off.get(0), deepest, named.get()));
	}

	private static List<SinglePoint.Pass> outside(List<SinglePoint.Pass> passes, SinglePoint.Pass deepest, SinglePoint turned,
			ThreadSpec thread) {
		return passes.stream().filter(pass -> Math.abs(beside(turned, pass, deepest, thread)) > allowed(thread)
				+ along(pass, deepest, thread)).toList();
	}

	/**
	 * What a pass may begin beside that, mm: so much wider a groove changes the pitch diameter by its tolerance (geometry; ISO 965-1, ASME
	 * B1.1).
	 */
	private static double allowed(ThreadSpec thread) {
		return MillFacts.pitchTolerance(thread) * Math.tan(thread.system().flankAngle() / 2);
	}

	/** How far along Z a pass begins beside the groove of another, mm, signed; NaN where it is not known. */
	private static double beside(SinglePoint turned, SinglePoint.Pass pass, SinglePoint.Pass other, ThreadSpec thread) {
		return Math.IEEEremainder(turned.beside(pass, thread) - turned.beside(other, thread), thread.pitch());
	}

	/** What an infeed along a flank explains between two passes, mm. */
	private static double along(SinglePoint.Pass pass, SinglePoint.Pass other, ThreadSpec thread) {
		return Math.tan(thread.system().flankAngle() / 2) * Math.abs(pass.radius() - other.radius());
	}

	private static Draft draft(Rule rule, SinglePoint turned, SinglePoint.Pass pass, SinglePoint.Pass other, Fact<ThreadSpec> thread) {
		Figures figures = new Figures(pass.step().modal().unit());
		double off = beside(turned, pass, other, thread.value());
		double along = along(pass, other, thread.value());
		boolean word = pass.turned() != other.turned();
		BlockRef at = word ? pass.step().block() : pass.begins().orElse(pass.step().block());
		String right = word ? "turn it by the angle of its start" : "begin at Z" + figures.coordinate(pass.step().from().z() - off)
				+ (along > 0 ? ", or beside it by no more than that" : "");
		return Draft.of(rule, Severity.ERROR, MillFacts.word(at, word ? "Q" : "ZW"), "the pass to diameter "
				+ figures.fine(2 * pass.radius()) + " begins " + figures.fine(Math.abs(off)) + " beside the groove of that to "
				+ figures.fine(2 * other.radius()) + ", an infeed along the flank explains " + figures.fine(along)
				+ ": it cuts a flank away; " + right).programmed("start", figures.fine(pass.step().from().z()), at)
				.related(other.step().block(), "the pass it is compared with").known("the callout", thread.value().designation(), thread);
	}
}
