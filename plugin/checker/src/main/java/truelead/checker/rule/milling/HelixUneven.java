package truelead.checker.rule.milling;

import java.util.function.Consumer;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.work.MillPass;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The arcs of one pass advance at different leads. Every arc must advance its share of the lead, P times its angle about the hole over a full
 * turn; half a tenth of the pitch is allowed beside what the decimals leave open, since real programs share a turn in uneven decimals.
 */
public final class HelixUneven implements Rule {

	private static final double ALLOWED = 0.05;

	@Override
	public String name() {
		return "helix-uneven";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			if (operation.wanted().statedThread().isPresent()) {
				double lead = operation.wanted().statedThread().orElseThrow().value().lead();
				operation.passes().stream().filter(pass -> pass.helix().size() > 1).forEach(pass -> look(work, operation, pass, lead, found));
			}
		}
	}

	private void look(Work work, ThreadMilling operation, MillPass pass, double wanted, Consumer<Finding> found) {
		HelixForm form = HelixForm.of(pass);
		// a helix that is even at the wrong lead is off pitch, not uneven: judge by the lead wanted only where some arc keeps it
		double lead = pass.helix().stream().anyMatch(arc -> !off(form, pass, arc, wanted)) ? wanted : form.lead();
		Step.Arc worst = null;
		double most = 0;
		for (Step.Arc arc : pass.helix()) {
			double share = lead * form.angle(arc) / (2 * Math.PI);
			double error = Math.abs(form.advance(arc) - share);
			if (off(form, pass, arc, lead) && error > most) {
				worst = arc;
				most = error;
			}
		}
		if (worst == null) {
			return;
		}
		Figures figures = new Figures(work.shop().unit().value());
		double share = lead * form.angle(worst) / (2 * Math.PI);
		String degrees = Figures.number(Math.toDegrees(form.angle(worst)), 0);
		String message = "this arc of " + degrees + " degrees advances " + figures.fine(form.advance(worst)) + ", its share of the lead "
				+ figures.advance(lead) + " is " + figures.fine(share) + ": " + figures.fine(Math.abs(form.advance(worst) - share))
				+ " off, the thread is drunken; step " + MillFacts.axisLetter(pass.axis()) + " " + figures.fine(share) + " here";
		found.accept(Draft.of(this, Severity.ERROR, MillFacts.word(worst.block(), MillFacts.axisLetter(pass.axis())), message).on(operation)
				.programmed("advance of the arc", figures.fine(form.advance(worst)), worst.block())
				.known("the callout", operation.wanted().statedThread().orElseThrow().value().designation(),
						operation.wanted().statedThread().orElseThrow())
				.from("share of the lead", figures.fine(share), "geometry: lead times the arc's angle over a full turn").finding());
	}

	private static boolean off(HelixForm form, MillPass pass, Step.Arc arc, double lead) {
		double share = lead * form.angle(arc) / (2 * Math.PI);
		return Math.abs(form.advance(arc) - share) > 2 * HelixForm.open(arc, arc.resolution()) + ALLOWED * lead * Math.min(1, form.angle(arc) / Math.PI) + 1e-9;
	}
}
