package truelead.checker.rule.milling;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * The arcs of one pass advance at different leads. Every arc must advance its share of the lead, P times its angle about the hole over a
 * full turn; half a tenth of the pitch is allowed beside what the decimals leave open, since real programs share a turn in uneven decimals.
 * Passes of one hole run in one groove.
 */
public final class HelixUneven implements Rule {

	private static final double ALLOWED = 0.05;
	/**
	 * The same of one chord by itself, however short: where the helix begins and ends is rounded to a chord (common practice, no source).
	 */
	private static final double CHORD = 0.01;
	/** One arc in so many at most may be off where the lead is told by the others. */
	private static final int FEW = 3;
	/** An arc of a few degrees beside one of so many times its angle keeps any lead. */
	private static final double TELLS = 1.5;
	/** Leads that an arc is off where its level is typed wrong and takes the cutter where it does not belong. */
	private static final double FAR_OFF = 1.5;

	@Override
	public String name() {
		return "helix-uneven";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.NO_ONE_LEAD);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_PLANE, Slip.UNIT_WORD, Slip.NO_CENTRE, Slip.SHORT_WAY_ROUND);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			OptionalDouble stated = operation.wanted().statedThread().map(thread -> OptionalDouble.of(thread.value().lead()))
					.orElse(OptionalDouble.empty());
			if (stated.isPresent() || MillFacts.calledThreadMill(operation)) {
				MillFacts.look(operation.passes().where(pass -> pass.helix().size() > 1), (pass, wrong) -> (stated.isPresent() ? stated
						: kept(pass)).ifPresent(lead -> look(work, operation, pass, lead, wrong)), found);
			}
			MillFacts.cutThread(operation).map(Fact::value)
					.ifPresent(thread -> operation.finishingWhere(passes -> beside(work, operation, passes, thread).isPresent())
							.forEach(passes -> beside(work, operation, passes, thread).ifPresent(draft -> found.accept(draft.finding()))));
		}
		work.course().singlePoints().forEach(turned -> TurnedGroove.beside(this, turned).or(() -> TurnedFlanks.outside(this, turned))
				.map(Draft::finding).ifPresent(found));
	}

	private Optional<Draft> beside(Work work, ThreadMilling operation, List<MillPass> passes, ThreadSpec thread) {
		return SharedGroove.beside(this, operation, passes, thread)
				.or(() -> SharedGroove.besideRough(this, work, operation, passes, thread))
				.or(() -> StartsCut.missing(this, work, operation, passes, thread));
	}

	/** The lead that all arcs but a few keep, of a thread that nobody names, mm; empty where no such is told. */
	private static OptionalDouble kept(MillPass pass) {
		HelixForm form = HelixForm.of(pass);
		double[] leads = pass.helix().stream().mapToDouble(arc -> form.advance(arc) * 2 * Math.PI / form.angle(arc)).sorted().toArray();
		double median = leads[leads.length / 2];
		long off = pass.helix().stream().filter(arc -> off(form, arc, median)).count();
		return median > 0 && off * FEW <= leads.length ? OptionalDouble.of(median) : OptionalDouble.empty();
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, double wanted, Consumer<Finding> found) {
		if (MillFacts.cutOff(work, pass)) {
			return;
		}
		HelixForm form = HelixForm.of(pass);
		// a helix that is even at the wrong lead is off pitch, not uneven: judge by the lead wanted only where some arc keeps it
		double tells = pass.helix().stream().mapToDouble(form::angle).max().orElse(0) / TELLS;
		boolean even = pass.helix().stream().noneMatch(arc -> off(form, arc, form.lead()));
		boolean kept = pass.helix().stream().anyMatch(arc -> form.angle(arc) >= tells && !off(form, arc, wanted));
		// where every arc is off the mean as well, as behind a forgotten G91, the mean says nothing
		double lead = !even && (kept || pass.helix().stream().allMatch(arc -> off(form, arc, form.lead()))) ? wanted : form.lead();
		Step.Arc worst = null;
		Step.Arc before = null;
		double most = 0;
		for (Step.Arc arc : pass.helix()) {
			double error = error(form, arc, lead);
			if (off(form, arc, lead) && Math.abs(error) > Math.abs(most)) {
				// a wrong level makes two arcs uneven, too long and too short by as much: the one that ends there says it
				boolean ends = before != null && pass.modal().absolute()
						&& Math.abs(error(form, before, lead) + error) < 2 * HelixForm.open(arc, arc.resolution()) + 1e-6;
				worst = ends ? before : arc;
				most = error;
			}
			before = arc;
		}
		if (worst == null) {
			worst = ofATurn(form, pass.helix(), lead).orElse(null);
			most = worst == null ? 0 : error(form, worst, lead);
		}
		if (worst == null) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		double share = lead * form.angle(worst) / (2 * Math.PI);
		String degrees = Figures.number(Math.toDegrees(form.angle(worst)), 0);
		String message = "this arc of " + degrees + " degrees advances " + figures.fine(form.advance(worst)) + ", its share of the lead "
				+ figures.advance(lead) + " is " + figures.fine(share) + ": " + figures.fine(Math.abs(form.advance(worst) - share))
				+ " off, the thread is drunken; ";
		Optional<EndLevel> level = EndLevel.of(worst, pass.axis());
		double way = Math.signum(pass.advance()) * share;
		// the first arc of all that is off alone begins at a wrong level
		boolean begins = worst == pass.first() && pass.helix().size() > 1
				&& Math.abs(error(form, pass.helix().get(1), lead) + error(form, worst, lead)) > Math.abs(most) / 2;
		double from = worst.from().along(pass.axis());
		double right = begins ? worst.to().along(pass.axis()) - way : from + way;
		message += level.map(end -> begins ? "begin at " + end.fresh(right) : end.said(right)).orElseGet(() -> "step "
				+ MillFacts.axisLetter(pass.axis()) + " " + figures.fine(share) + " here");
		Draft draft = Draft.of(this, Severity.ERROR, MillFacts.word(worst.block(), MillFacts.axisLetter(pass.axis())), message)
				.on(operation).programmed("advance of the arc", figures.fine(form.advance(worst)), worst.block());
		level.filter(end -> !begins).flatMap(end -> end.fix(right, "see that the arcs beside it keep their levels")).ifPresent(draft::fix);
		if (Math.abs(most) > FAR_OFF * lead) {
			draft.from("times the lead", Figures.number(Math.abs(most) / lead, 1), "geometry").tells(Slip.LEVEL_FAR_OFF);
		}
		operation.wanted().statedThread().ifPresentOrElse(thread -> draft.known("the callout", thread.value().designation(), thread),
				() -> draft.from("lead", figures.advance(lead), "the other arcs of the pass, no thread is named"));
		found.accept(draft.from("share of the lead", figures.fine(share), "geometry: lead times the arc's angle over a full turn")
				.finding());
	}

	/** Of a turn in several arcs, each of them off by no more than is allowed one and all together by more: the arc that is off most. */
	private static Optional<Step.Arc> ofATurn(HelixForm form, List<Step.Arc> helix, double lead) {
		double angle = 0;
		double error = 0;
		double open = 0;
		Step.Arc most = null;
		for (Step.Arc arc : helix) {
			if (form.angle(arc) > Math.PI * TELLS) {
				return Optional.empty();
			}
			angle += form.angle(arc);
			error += error(form, arc, lead);
			open += 2 * HelixForm.open(arc, arc.resolution());
			most = most == null || Math.abs(error(form, arc, lead)) > Math.abs(error(form, most, lead)) ? arc : most;
			if (angle > 2 * Math.PI - 0.01) {
				if (Math.abs(error) > open + lead * ALLOWED + 1e-9 && !arc.inChords()) {
					return Optional.of(most);
				}
				angle = 0;
				error = 0;
				open = 0;
				most = null;
			}
		}
		return Optional.empty();
	}

	private static double error(HelixForm form, Step.Arc arc, double lead) {
		return form.advance(arc) - lead * form.angle(arc) / (2 * Math.PI);
	}

	private static boolean off(HelixForm form, Step.Arc arc, double lead) {
		double share = lead * form.angle(arc) / (2 * Math.PI);
		double allowed = ALLOWED * Math.min(1, form.angle(arc) / Math.PI);
		return Math.abs(form.advance(arc) - share) > 2 * HelixForm.open(arc, arc.resolution()) + lead * (arc.inChords()
				? Math.max(CHORD, allowed) : allowed) + 1e-9;
	}
}
