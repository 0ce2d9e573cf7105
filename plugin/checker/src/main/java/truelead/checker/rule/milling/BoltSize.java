package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;

/**
 * The size of a thread milled outside: the path less the cutter, 2 R - dc, or 2 R where compensation moves the cutter off the wall, is the diameter at
 * the root. The root lies between the flat of P/4 and the sharp V of the profile below the major diameter (ISO 68-1: 1.0825 P to 1.5155 P less P/16 of height in
 * practice), for 55 degrees about 1.2807 P; what class and decimals leave open comes on top.
 */
final class BoltSize {

	/** Depth of thread on the diameter, in pitches: the shallowest root a standard profile has, and the deepest that any point cuts (ISO 68-1). */
	private static final double SHALLOWEST = 1.0825;
	private static final double DEEPEST = 1.4;
	/** What external threads are deep, in pitches: 17/24 of the sharp V on both sides (ISO 68-1). */
	private static final double USUAL = 1.2269;
	private static final double WHITWORTH = 1.2807;
	private static final double ROUND = 0.1;

	private BoltSize() {
	}

	/** The usual diameter at the root, mm. */
	static double root(ThreadSpec thread) {
		return thread.diameter() - (Math.abs(Math.toDegrees(thread.system().flankAngle()) - 55) < 1e-6 ? WHITWORTH : USUAL) * thread.pitch();
	}

	/** The finding of a helix that leaves another root; empty where it does not, and for profiles of other angles. */
	static Optional<Draft> of(Rule rule, ThreadMilling operation, MillPass pass, ThreadSpec thread) {
		double degrees = Math.toDegrees(thread.system().flankAngle());
		boolean sixty = Math.abs(degrees - 60) < 1e-6;
		if (!sixty && Math.abs(degrees - 55) > 1e-6) {
			return Optional.empty();
		}
		Fact<Double> cutter = operation.tool().facts().diameter().orElseThrow();
		HelixForm form = HelixForm.of(pass);
		double pitch = thread.pitch();
		double most = thread.diameter() - (sixty ? SHALLOWEST : WHITWORTH - ROUND) * pitch;
		double least = thread.diameter() - (sixty ? DEEPEST : WHITWORTH + ROUND) * pitch - MillFacts.pitchTolerance(thread);
		double off = 2 * pass.radius() - cutter.value();
		boolean contour = form.onContour((most + least) / 2, -cutter.value());
		double root = contour ? 2 * pass.radius() : off;
		double open = form.diameterRounding() + ROUND * pitch;
		double error = root > most + open ? root - most : root < least - open ? root - least : 0;
		if (error == 0 || Double.isNaN(root)) {
			return Optional.empty();
		}
		Figures figures = new Figures(pass.modal().unit());
		double right = (root(thread) + (contour ? 0 : cutter.value())) / 2;
		String how = "2 x R" + figures.fine(pass.radius()) + (contour ? " with compensation" : " - cutter " + figures.fine(cutter.value()));
		return Optional.of(Draft.of(rule, Severity.ERROR, MillFacts.radiusWord(pass.block()), how + " leaves a root of " + figures.fine(root) + ", " + MillFacts.name(operation) + (error > 0 ? " has at most " : " has at least ")
				+ figures.fine(error > 0 ? most : least) + ": " + figures.fine(Math.abs(error)) + (error > 0 ? " too large" : " too small") + "; radius " + figures.fine(right)).on(operation)
				.programmed("radius", figures.fine(pass.radius()), pass.block()).known("cutter diameter", figures.fine(cutter.value()), cutter)
				.known("the callout", thread.designation(), operation.wanted().statedThread().orElseThrow()));
	}
}
