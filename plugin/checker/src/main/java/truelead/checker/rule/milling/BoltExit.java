package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.thread.BoltRoot;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * A cutter that goes up along a bolt while its teeth still stand in the thread outside: it must come away beyond the major diameter first
 * (geometry).
 */
final class BoltExit {

	private BoltExit() {
	}

	/** Whether what takes the cutter away along the axis takes it back over the bolt. */
	private static boolean up(MillPass pass) {
		return pass.exit().stream().filter(step -> step instanceof Step.Move move
				&& move.from().along(pass.axis()) != move.to().along(pass.axis())).map(Step.Move.class::cast).findFirst()
				.filter(move -> pass.below(move.to().along(pass.axis()), move.from().along(pass.axis())) < 0).isPresent();
	}

	/** The finding of a pass outside that is left so; empty where it is left rightly. */
	static Optional<Draft> of(ExitScarsThread rule, Work work, ThreadMilling operation, MillPass pass, Fact<ThreadSpec> thread,
			double cutter) {
		Step last = ExitScarsThread.lastInTheHole(pass);
		HelixForm form = HelixForm.of(pass);
		double level = ExitScarsThread.leaves(pass).along(pass.axis());
		double below = pass.below(level, operation.wanted().surface().value());
		double major = thread.value().diameter();
		double path = 2 * form.fromAxis(ExitScarsThread.leaves(pass));
		double reach = last.modal().compensation() == pass.compensation() && form.onContour(BoltRoot.usual(thread.value()), -cutter) ? path
				: path - cutter;
		// a taper thread is as thick as its bolt at one level alone: there the cutter must have come off the wall at least
		boolean taper = thread.value().taperOnDiameter() > 0;
		boolean off = taper && form.fromAxis(ExitScarsThread.leaves(pass)) > form.fromAxis(pass.last().to()) + ExitScarsThread.OFF_THE_WALL;
		if (off || !(below > 0) || !up(pass) || !(reach < major - form.diameterRounding()) || MillFacts.cutOff(work, pass)) {
			return Optional.empty();
		}
		Figures figures = new Figures(work.shop().unit().value());
		return Optional.of(Draft.of(rule, Severity.ERROR, MillFacts.word(last.block(), "XYZ"), "the cutter leaves along the axis "
				+ figures.length(below) + " below the face while its teeth still reach in to a diameter of " + figures.length(reach)
				+ ", the bolt is " + figures.length(major) + ": it scars " + figures.length((major - reach) / 2)
				+ " of the thread; lead out away from the bolt first").on(operation).programmed("reach of the teeth", figures.length(reach),
						last.block()).known("the callout", thread.value().designation(), thread));
	}
}
