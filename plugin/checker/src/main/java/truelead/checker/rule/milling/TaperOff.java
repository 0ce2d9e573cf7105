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
 * A taper pipe thread by a single-form cutter: the helix's radius must change by 1/32 of what it advances (taper 1 in 16 on the diameter,
 * ASME B1.20.1, ISO 7-1), wider towards the surface in a hole and narrower on a bolt. A comb cutter has the taper ground in and goes round
 * once, at one radius or at this same change.
 */
public final class TaperOff implements Rule {

	/** Change of radius along the axis, a ratio. */
	private static final double TAPER = ThreadSpec.PIPE_TAPER / 2;

	@Override
	public String name() {
		return "taper-off";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.TAPER);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD, Slip.NO_CENTRE);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		work.course().singlePoints().forEach(turned -> TurnedTaper.wrong(this, turned).map(Draft::finding).ifPresent(found));
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread().filter(t -> t.value().taperOnDiameter() > 0);
			if (thread.isPresent()) {
				MillFacts.look(operation.passes().where(pass -> HelixForm.of(pass).turns() > 1.6 && !MillFacts.comb(operation)),
						(pass, wrong) -> look(work, operation, pass, thread.get(), wrong), found);
			}
		}
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread, Consumer<Finding> found) {
		HelixForm form = HelixForm.of(pass);
		double advance = pass.endLevel() - pass.startLevel();
		double change = form.fromAxis(pass.last().to()) - form.fromAxis(pass.first().from());
		double right = pass.widens() * TAPER * advance;
		double open = 4 * form.open() + 0.1 * Math.abs(right) + 1e-6;
		if (Double.isNaN(change) || Math.abs(change - right) <= open) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		Step.Arc first = pass.first();
		String message = "the radius changes by " + figures.fine(change) + " over " + figures.fine(Math.abs(advance))
				+ " of advance, a taper of 1 in 16 needs " + figures.fine(right) + ": " + figures.fine(Math.abs(change - right)) + " off; "
				+ figures.fine(TAPER * form.lead()) + " of radius a turn";
		found.accept(Draft.of(this, Severity.ERROR, MillFacts.word(first.block(), "RIJXY"), message).on(operation)
				.programmed("change of radius", figures.fine(change), first.block()).known("the callout", thread.value().designation(),
						thread).from("taper", "1 in 16 on the diameter", "ASME B1.20.1, ISO 7-1").finding());
	}
}
