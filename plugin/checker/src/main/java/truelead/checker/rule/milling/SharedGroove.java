package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Point;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Plane;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * Two passes in a hole that do not run in one groove, as a second bite of a cutter with many teeth, a spring pass, or a finishing pass
 * behind another tool's roughing, that begins beside it. Geometry: the level less the part of the lead that belongs to the angle is the
 * same for all of them, but for whole pitches; of passes of different radius one may be fed in along the flank, tan 30 of the infeed
 * farther.
 */
final class SharedGroove {

	/** Part of the pitch that grooves may lie beside each other and be taken for one (common practice, no source). */
	private static final double ALLOWED = 0.1;
	/** Part of the lead that a pass may be off and still be meant; one that is further off has no one groove. */
	private static final double KEPT = 0.02;
	/** As many roughing passes in a hole are compared. */
	private static final int MOST = 20;

	private SharedGroove() {
	}

	/**
	 * The first finishing pass at a hole where it runs beside the groove that was roughed there, by its tool or another one; empty where it
	 * does not.
	 */
	static Optional<Draft> besideRough(HelixUneven rule, Work work, ThreadMilling operation, List<MillPass> finishing, ThreadSpec thread) {
		MillPass pass = finishing.get(0);
		if (pass.external() || pass.besideHole() > 0 || offLead(pass, thread)) {
			return Optional.empty();
		}
		for (ThreadMilling other : at(work, operation, pass.hole().place())) {
			boolean same = other == operation
					|| other.wanted().statedThread().map(Fact::value).map(ThreadSpec::withoutClass).equals(operation.wanted().statedThread()
							.map(Fact::value).map(ThreadSpec::withoutClass));
			List<MillPass> there = same && other.firstOrder() <= pass.order() ? other.passesAt(pass.hole()) : List.of();
			for (MillPass rough : there.subList(0, Math.min(there.size(), MOST))) {
				boolean before = rough.order() < pass.order() && rough.besideHole() == 0 && !offLead(rough, thread)
						&& !finishing.contains(rough);
				double off = before ? Math.IEEEremainder(groove(pass, thread) - groove(rough, thread), thread.pitch()) : 0;
				double infeed = Math.abs(reach(operation, pass, thread) - reach(other, rough, thread)) / 2;
				if (Math.abs(off) > ALLOWED * thread.pitch() + Math.tan(thread.system().flankAngle() / 2) * (Double.isNaN(infeed)
						? thread.pitch() / 4 : infeed) + 2 * HelixForm.of(rough).open() + 2 * HelixForm.of(pass).open()) {
					return Optional.of(draft(rule, operation, rough, pass, off, thread));
				}
			}
		}
		return Optional.empty();
	}

	/** The operations that mill threads at each place. */
	record AtPlaces(Map<Place, List<ThreadMilling>> operations) {

		static AtPlaces of(Work work) {
			Map<Place, List<ThreadMilling>> operations = new HashMap<>();
			for (ThreadMilling operation : work.threadMillings()) {
				for (Hole hole : operation.holes()) {
					operations.computeIfAbsent(hole.place(), place -> new ArrayList<>(1)).add(operation);
				}
			}
			return new AtPlaces(operations);
		}
	}

	/** Those that mill threads at a place of one of them, in their order. */
	static List<ThreadMilling> at(Work work, ThreadMilling operation, Place place) {
		List<ThreadMilling> alone = List.of(operation);
		return work.threadMillings().size() == 1 ? alone
				: work.derived(AtPlaces.class, AtPlaces::of).operations().getOrDefault(place, alone);
	}

	/** The diameter that a pass cuts, mm; NaN where nobody says the cutter. */
	private static double reach(ThreadMilling operation, MillPass pass, ThreadSpec thread) {
		return HelixForm.of(pass).cutDiameter(thread.diameter(), MillFacts.cutter(operation).orElse(Double.NaN));
	}

	/** Whether a pass has the other hand or another lead, and no groove of the thread's. */
	static boolean offLead(MillPass pass, ThreadSpec thread) {
		return HelixWrongHand.wrong(pass, thread) || !(Math.abs(HelixForm.of(pass).lead() - thread.lead()) <= KEPT * thread.lead());
	}

	/** The first of the finishing passes at a hole that runs beside the groove of the first one; empty where all share it. */
	static Optional<Draft> beside(HelixUneven rule, ThreadMilling operation, List<MillPass> passes, ThreadSpec thread) {
		if (passes.size() < 2 || passes.stream().anyMatch(pass -> offLead(pass, thread))) {
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
		return Optional.empty();
	}

	/** The level at which the groove of a pass meets the angle 0 about the hole, mm. */
	static double groove(MillPass pass, ThreadSpec thread) {
		Plane plane = pass.place().plane();
		Point start = pass.first().from();
		double bearing = Math.atan2(start.along(plane.second()) - pass.place().v(), start.along(plane.first()) - pass.place().u());
		return pass.startLevel() - (pass.rightHand() ? 1 : -1) * thread.lead() * bearing / (2 * Math.PI);
	}

	private static Draft draft(HelixUneven rule, ThreadMilling operation, MillPass first, MillPass pass, double off, ThreadSpec thread) {
		Figures figures = new Figures(pass.modal().unit());
		String axis = MillFacts.axisLetter(pass.axis());
		return Draft.of(rule, Severity.ERROR, MillFacts.word(pass.block(), axis), "this pass runs " + figures.fine(Math.abs(off))
				+ " beside the groove of the pass before: it cuts away the thread between; begin it " + figures.fine(Math.abs(off))
				+ (off > 0 ? " lower" : " higher") + " along " + axis + ", or whole pitches of " + figures.advance(thread.pitch())
				+ " from there").on(operation).programmed("level of the helix", figures.fine(pass.startLevel()), pass.block())
				.related(first.block(), "the pass before").known("the callout", thread.designation(),
						operation.wanted().statedThread().orElseThrow()).from("beside the groove", figures.fine(Math.abs(off)),
								"geometry: level less the lead's part for the angle, but for whole pitches");
	}
}
