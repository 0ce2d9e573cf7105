package truelead.checker.rule.milling;

import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Point;
import truelead.checker.program.Plane;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.MillPass;
import truelead.checker.work.ThreadMilling;

/**
 * Two passes of one radius in a hole that do not run in one groove, as a second bite of a cutter with many teeth, or a spring pass, that begins beside it. Geometry: the
 * level less the part of the lead that belongs to the angle is the same for all of them, but for whole pitches.
 */
final class SharedGroove {

	/** Part of the pitch that grooves may lie beside each other and be taken for one (common practice, no source). */
	private static final double ALLOWED = 0.1;
	/** Part of the lead that a pass may be off and still be meant; one that is further off has no one groove. */
	private static final double KEPT = 0.02;

	private SharedGroove() {
	}

	/** The first of the finishing passes at a hole that runs beside the groove of the first one; empty where all share it. */
	static Optional<Draft> beside(HelixUneven rule, ThreadMilling operation, List<MillPass> passes, ThreadSpec thread) {
		if (passes.size() < 2 || passes.stream().anyMatch(pass -> HelixWrongHand.wrong(pass, thread) || Math.abs(HelixForm.of(pass).lead() - thread.lead()) > KEPT * thread.lead())) {
			return Optional.empty();
		}
		MillPass first = passes.get(0);
		for (MillPass pass : passes.subList(1, passes.size())) {
			double off = Math.IEEEremainder(groove(pass, thread) - groove(first, thread), thread.pitch());
			double open = ALLOWED * thread.pitch() + 2 * HelixForm.of(first).open() + 2 * HelixForm.of(pass).open();
			if (first.besideHole() == 0 && pass.besideHole() == 0 && Math.abs(off) > open) {
				return Optional.of(draft(rule, operation, first, pass, off, thread));
			}
		}
		boolean one = thread.starts() > 1 && passes.size() >= thread.starts() && !MillFacts.comb(operation) && passes.stream().allMatch(pass -> Math.abs(Math.IEEEremainder(groove(pass, thread) - groove(first, thread), thread.lead())) < thread.pitch() / 2);
		return one && passes.stream().allMatch(pass -> pass.besideHole() == 0) ? Optional.of(oneGroove(rule, operation, first, thread)) : Optional.empty();
	}

	/** Every pass runs in the groove of the first start. */
	private static Draft oneGroove(HelixUneven rule, ThreadMilling operation, MillPass first, ThreadSpec thread) {
		Figures figures = new Figures(first.modal().unit());
		return Draft.of(rule, Severity.ERROR, MillFacts.word(first.block(), MillFacts.axisLetter(first.axis())), "all passes run in one groove, " + thread.designation() + " has " + thread.starts() + " starts; begin each start "
				+ figures.advance(thread.pitch()) + " farther along " + MillFacts.axisLetter(first.axis())).on(operation)
				.known("starts", String.valueOf(thread.starts()), operation.wanted().statedThread().orElseThrow());
	}

	/** The level at which the groove of a pass meets the angle 0 about the hole, mm. */
	private static double groove(MillPass pass, ThreadSpec thread) {
		Plane plane = pass.place().plane();
		Point start = pass.first().from();
		double bearing = Math.atan2(start.along(plane.second()) - pass.place().v(), start.along(plane.first()) - pass.place().u());
		return pass.startLevel() - (pass.rightHand() ? 1 : -1) * thread.lead() * bearing / (2 * Math.PI);
	}

	private static Draft draft(HelixUneven rule, ThreadMilling operation, MillPass first, MillPass pass, double off, ThreadSpec thread) {
		Figures figures = new Figures(pass.modal().unit());
		String axis = MillFacts.axisLetter(pass.axis());
		return Draft.of(rule, Severity.ERROR, MillFacts.word(pass.block(), axis), "this pass runs " + figures.fine(Math.abs(off)) + " beside the groove of the pass before: it cuts away the thread between; begin it "
				+ figures.fine(Math.abs(off)) + (off > 0 ? " lower" : " higher") + " along " + axis + ", or whole pitches of " + figures.advance(thread.pitch()) + " from there").on(operation)
				.programmed("level of the helix", figures.fine(pass.startLevel()), pass.block()).related(first.block(), "the pass before")
				.known("the callout", thread.designation(), operation.wanted().statedThread().orElseThrow())
				.from("beside the groove", figures.fine(Math.abs(off)), "geometry: level less the lead's part for the angle, but for whole pitches");
	}
}
