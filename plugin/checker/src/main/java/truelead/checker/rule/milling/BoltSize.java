package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.BoltRoot;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;

/**
 * The size of a thread milled outside: the path less the cutter, 2 R - dc, or 2 R where compensation moves the cutter off the wall, is the
 * diameter at the root, for which {@link BoltRoot} has the bounds; what class and decimals leave open comes on top.
 */
final class BoltSize {

	/** How far the root may be beyond that, pitches (common practice, no source). */
	private static final double ROUND = 0.1;

	private BoltSize() {
	}

	/** The finding of a helix that leaves another root; empty where it does not, and for profiles of other angles. */
	static Optional<Draft> of(Rule rule, ThreadMilling operation, MillPass pass, ThreadSpec thread) {
		if (!thread.system().hasFlanksOf(60) && !thread.system().hasFlanksOf(55)) {
			return Optional.empty();
		}
		Fact<Double> cutter = operation.tool().facts().diameter().orElseThrow();
		HelixForm form = HelixForm.of(pass);
		// the root of the lead that is cut: where that is another one, the lead is wrong and the root follows
		double cutPitch = form.lead() / thread.starts();
		double most = BoltRoot.most(thread);
		double least = BoltRoot.least(thread) - MillFacts.pitchTolerance(thread);
		double off = 2 * pass.radius() - cutter.value();
		boolean contour = form.onContour((most + least) / 2, -cutter.value());
		double root = contour ? 2 * pass.radius() : off;
		double open = form.diameterRounding() + ROUND * thread.pitch();
		double error = root > most + open ? root - most : root < least - open ? root - least : 0;
		boolean follows = Math.abs(cutPitch - thread.pitch()) > ROUND * thread.pitch()
				&& Math.abs(root - BoltRoot.usual(thread, cutPitch)) < open + ROUND * cutPitch;
		if (error == 0 || Double.isNaN(root) || root < 0 || follows) {
			return Optional.empty();
		}
		Figures figures = new Figures(pass.modal().unit());
		double right = (BoltRoot.usual(thread) + (contour ? 0 : cutter.value())) / 2;
		String how = "2 x R" + figures.fine(pass.radius()) + (contour ? " with compensation" : " - cutter " + figures.fine(cutter.value()));
		return Optional.of(Draft.of(rule, Severity.ERROR, MillFacts.radiusWord(pass.block()), how + " leaves a root of "
				+ figures.fine(root) + ", " + MillFacts.name(operation) + (error > 0 ? " has at most " : " has at least ")
				+ figures.fine(error > 0 ? most : least) + ": " + figures.fine(Math.abs(error)) + (error > 0 ? " too large" : " too small")
				+ "; radius " + figures.fine(right)).on(operation).programmed("radius", figures.fine(pass.radius()), pass.block())
				.known("cutter diameter", figures.fine(cutter.value()), cutter).known("the callout", thread.designation(),
						operation.wanted().statedThread().orElseThrow()));
	}
}
