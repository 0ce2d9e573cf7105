package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The thread is deeper than it pays: over 2 D cut blind, 2.5 D formed, 3 D cut through; strength gains little past 1.5 D. */
public final class DeepThread extends HoleRule {

	/** Usual limits in diameters; half as much again is a warning (common practice, no source). */
	private static final double BLIND = 2;
	private static final double FORMED = 2.5;
	private static final double THROUGH = 3;
	private static final double FAR = 1.5;
	/** A depth that is called out is the drawing's as long as any tap makes it, diameters (common practice, no source). */
	private static final double ASKED = 5;
	/** Half of the last decimal that a ratio is told with: more than the limit is what reads as more. */
	private static final double SHOWN = 0.05;

	public DeepThread() {
		super("deep-thread");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.NO_TAP, Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.HEIGHTS_MISREAD, Slip.HITS_BELOW);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (operation instanceof Tapping tapping) {
			TapDepth.deepest(tapping).filter(depth -> tapping.wanted().statedThread().isPresent())
					.ifPresent(depth -> check(tapping, depth, found));
		}
	}

	private void check(Tapping tapping, TapDepth depth, Consumer<Draft> found) {
		double diameter = tapping.wanted().statedThread().orElseThrow().value().diameter();
		boolean through = tapping.wanted().through().map(Fact::value).orElse(false);
		boolean forming = ToolName.forms(tapping.tool().facts());
		double limit = forming ? FORMED : through ? THROUGH : BLIND;
		Optional<Fact<Double>> called = tapping.wanted().depth().filter(Fact::stated);
		if (called.isEmpty() && !depth.surfaceKnown()) {
			return;
		}
		double deep = called.map(Fact::value).orElseGet(() -> Math.min(depth.tip(), depth.stroke().travel())
				- depth.lead().length(depth.pitch()));
		deep = through ? Math.min(deep, tapping.wanted().wall().map(Fact::value).orElse(deep)) : deep;
		double ratio = deep / diameter;
		if (ratio < limit + SHOWN) {
			return;
		}
		boolean proved = called.map(asked -> ratio > ASKED).orElse(depth.surface().stated());
		Figures figures = depth.figures();
		String message = figures.length(deep) + " of full thread are " + Figures.number(ratio, 1) + " D, " + Figures.number(limit, 1)
				+ " D is usual " + (forming ? "for forming" : through ? "for cutting through holes" : "for cutting blind holes")
				+ ": chips and torque grow with every turn, the screw's strength little past 1.5 D, " + figures.length(1.5 * diameter);
		found.accept(depth.evidence(Draft.of(this, proved && ratio > FAR * limit ? Severity.WARNING : Severity.INFORMATION,
				depth.depthWord(), depth.stroke().block(), message)).known("diameter", figures.length(diameter),
						tapping.wanted().statedThread().orElseThrow()).from("usual depth", Figures.number(limit, 1) + " D",
								"common practice, no source"));
	}
}
