package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The lead-in arc does not climb with the thread. Exact is P times its angle about the hole over a full turn (P/4 for a half arc from the
 * centre, whose tooth turns a quarter about the hole); customary is P times its own angle over a full turn. Either is taken as right.
 */
public final class EntryOffPitch implements Rule {

	/** What uneven decimals leave open of the climb, as a part of the pitch (common practice, no source). */
	private static final double ALLOWED = 0.05;

	@Override
	public String name() {
		return "entry-off-pitch";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.NO_CENTRE, Slip.CENTRE_WITH_RADIUS, Slip.TURNED_ROUND, Slip.HELIX_LEAD,
				Slip.OTHER_CIRCLE, Slip.BESIDE_HOLE, Slip.NO_COMPENSATION, Slip.ABOVE_WORK, Slip.AT_AN_ANGLE);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> thread = MillFacts.cutThread(operation);
			thread.ifPresent(wanted -> MillFacts.look(operation.passes(), (pass, wrong) -> look(work, operation, pass, wanted,
					wrong), found));
		}
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread, Consumer<Finding> found) {
		if (!(pass.below(pass.startLevel(), operation.wanted().surface().value()) > 0)
				|| !(Approach.last(pass).orElse(pass.first()) instanceof Step.Arc arc) || arc == pass.first()
				|| MillFacts.cutOff(work, pass) || MillFacts.ringBeside(operation, pass)) {
			return;
		}
		double lead = thread.value().lead();
		double own = lead * Math.abs(arc.sweep()) / (2 * Math.PI);
		double about = lead * aboutHole(pass, arc, inside(operation, pass, thread.value())) / (2 * Math.PI);
		int axis = pass.axis();
		double sense = Math.signum(pass.lead());
		double climbs = sense * (arc.to().along(axis) - arc.from().along(axis));
		double open = 2 * HelixForm.open(arc, arc.resolution()) + ALLOWED * lead + 1e-9;
		if (Double.isNaN(climbs) || climbs > Math.min(own, about) - open && climbs < Math.max(own, about) + open
				&& (Math.abs(climbs - own) <= open || Math.abs(climbs - about) <= open)) {
			return;
		}
		// outside the arc swings away from the bolt and hardly turns about it: a flat one is right too
		if (pass.external() && climbs > Math.min(0, about) - open && climbs < own + open) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		found.accept(Draft.of(this, Severity.WARNING, MillFacts.word(arc.block(), MillFacts.axisLetter(axis)), "the lead-in arc climbs "
				+ figures.fine(climbs) + ", with the thread it is " + figures.fine(about) + " (" + figures.fine(own)
				+ " by its own angle is customary): the tooth enters beside its groove; climb " + figures.fine(about)
				+ EndLevel.of(arc, axis).map(end -> ", from " + end.fresh(arc.to().along(axis) - sense * about) + " on").orElse(""))
				.on(operation)
				.programmed("climb of the lead-in", figures.fine(climbs), arc.block()).known("the callout", thread.value().designation(),
						thread).from("climb with the thread", figures.fine(about),
								"geometry: lead times the arc's angle about the hole over a full turn").finding());
	}

	/**
	 * How far inside the programmed path the cutter's centre goes, mm: its radius where the path is the wall and compensation is on, else
	 * 0.
	 */
	private static double inside(ThreadMilling operation, MillPass pass, ThreadSpec thread) {
		double cutter = MillFacts.cutter(operation).orElse(0);
		return HelixForm.of(pass).onContour(thread.diameter(), cutter) ? cutter / 2 : 0;
	}

	/** The angle the lead-in turns about the hole: from the centre it is the part in which the tooth is near the wall, half of its own. */
	private static double aboutHole(MillPass pass, Step.Arc arc, double inside) {
		HelixForm form = HelixForm.of(pass);
		double own = Math.abs(arc.sweep());
		return Math.abs(form.fromAxis(arc.from()) - inside) < 0.05 * form.pathDiameter() ? own / 2 : form.angle(arc) > own ? own
				: form.angle(arc);
	}
}
