package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.AnotherThread;
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
 * The helix does not advance one lead a turn. A single-form cutter cuts every turn at its place, so the error adds up over the thread's
 * length: delta = |e| L / P; a comb cutter cuts in one turn and leaves a seam of e. Either is worth 1.732 times as much on the pitch
 * diameter a gauge feels (geometry of the 60 degree flank) and is judged against the pitch diameter's tolerance.
 */
public final class HelixOffPitch implements Rule {

	/** Under this part of the tolerance no gauge tells. */
	private static final double UNFELT = 0.1;
	/** Leads that no thread with the diameter has: its level is wrong. */
	private static final double FAR_OFF = 5;
	/** Less than a turn whose circle is not known may be a lead-in or a lead-out, no helix to measure. */
	private static final double PART = 0.95;

	@Override
	public String name() {
		return "helix-off-pitch";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.HELIX_LEAD);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_PLANE, Slip.UNIT_WORD, Slip.NO_CENTRE, Slip.SHORT_WAY_ROUND, Slip.NO_ONE_LEAD,
				Slip.OTHER_CIRCLE, Slip.ABOVE_WORK);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			operation.wanted().statedThread().map(Fact::value)
					.ifPresent(thread -> MillFacts.look(operation.passes(), (pass, wrong) -> look(work, operation, pass, thread,
							wrong), found));
		}
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, ThreadSpec thread, Consumer<Finding> found) {
		HelixForm form = HelixForm.of(pass);
		double lead = form.lead();
		double error = lead - thread.lead();
		if (Double.isNaN(error) || form.turns() < 0.4 || Math.abs(error) <= form.leadRounding() || MillFacts.cutOff(work, pass)) {
			return;
		}
		boolean ring = MillFacts.ring(pass);
		if (ring && (MillFacts.ringBeside(operation, pass) || !work.course().toItsEnd())) {
			// a circle in a loop that is not followed to its end may advance there
			return;
		}
		if (form.turns() < PART && (Double.isNaN(pass.radius()) || HelixWrongHand.turnedLead(pass, thread))) {
			return;
		}
		boolean comb = MillFacts.comb(operation);
		double length = Math.abs(pass.advance());
		double off = comb || ring ? Math.abs(error) : Math.abs(error) * length / thread.lead();
		double felt = MillFacts.FLANK * off;
		double tolerance = MillFacts.pitchTolerance(thread);
		if (felt < UNFELT * tolerance) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		String effect = ring ? "a ring is cut and no thread" : comb ? "a seam of " + figures.fine(off) + " where the turn closes"
				: figures.fine(off) + (error > 0 ? " too long" : " too short") + " over " + figures.length(length);
		Optional<AnotherThread> another = another(operation, pass, lead, thread);
		String message = "the helix advances " + figures.advance(lead) + " " + figures.symbol() + " a turn, " + thread.designation()
				+ " needs " + figures.advance(thread.lead()) + ": " + effect
				+ (ring ? "" : ", " + figures.fine(felt) + " on the pitch diameter where the class allows " + figures.fine(tolerance))
				+ "; step " + MillFacts.axisLetter(pass.axis()) + " " + figures.advance(thread.lead()) + " a turn"
				+ (pass.helix().size() == 1 ? levels(pass, form, thread.lead()) : "")
				+ another.map(other -> other.said("helix", figures)).orElse("");
		Severity severity = felt > tolerance ? Severity.ERROR : Severity.WARNING;
		Optional<Fact<ThreadSpec>> wanted = operation.wanted().statedThread();
		Draft draft = Draft.of(this, severity, MillFacts.word(pass.block(), MillFacts.axisLetter(pass.axis())), message).on(operation)
				.programmed("advance a turn", figures.fine(lead), pass.block()).known("the callout", thread.designation(),
						wanted.orElseThrow())
				.from("turns", Figures.number(form.turns(), 2), "geometry: angle about the hole's centre")
				.from("pitch diameter tolerance", figures.fine(tolerance), "class of the thread");
		if (lead > FAR_OFF * thread.lead()) {
			draft.from("times the lead", Figures.number(lead / thread.lead(), 1), "geometry").tells(Slip.LEVEL_FAR_OFF);
		}
		another.ifPresent(other -> other.tell(draft.tells(Slip.HELIX_AND_DRILL), "helix", wanted.orElseThrow(), operation.block().file()));
		found.accept(draft.finding());
	}

	/** The level at which the only arc of a pass ends by the lead from where it begins, mm. */
	private static String levels(MillPass pass, HelixForm form, double lead) {
		double begin = pass.first().from().along(pass.axis());
		double right = begin + Math.signum(pass.advance()) * lead * form.turns();
		return EndLevel.of(pass.first(), pass.axis()).map(end -> ", " + end.said(right) + " from " + end.fresh(begin) + " on").orElse("");
	}

	/** Another thread of the diameter that is cut; of a taper thread the diameter depends on how deep it is cut. */
	private static Optional<AnotherThread> another(ThreadMilling operation, MillPass pass, double lead, ThreadSpec thread) {
		Optional<Double> drill = pass.hole().threadedBefore(pass.order(), thread.diameter()).flatMap(Cut::diameter).filter(Fact::stated)
				.map(Fact::value);
		return operation.wanted().wireInsert() ? Optional.empty()
				: AnotherThread.of(lead, drill, thread, false).filter(other -> thread.system().taper()
						|| Math.abs(other.made().diameter() - thread.diameter()) < 1e-6 || MillFacts.cutter(operation).isPresent()
						&& other.made().cutBy(HelixForm.of(pass)
								.cutDiameter(other.made().diameter(), MillFacts.cutter(operation).getAsDouble())));
	}
}
