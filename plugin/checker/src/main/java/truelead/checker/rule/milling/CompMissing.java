package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import truelead.checker.machine.Compensation;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Hole;
import truelead.checker.work.MillPass;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** The path is the thread's wall and no compensation takes the cutter's radius off: the hole is cut a cutter's diameter too big. */
public final class CompMissing implements Rule {

	/** A path within this part of the pitch of the major diameter is meant to be the wall. */
	private static final double NEAR = 0.25;

	@Override
	public String name() {
		return "comp-missing";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<ThreadSpec> thread = MillFacts.parallelThread(operation);
			OptionalDouble cutter = MillFacts.cutter(operation);
			if (thread.isPresent() && cutter.isPresent()) {
				for (Hole hole : operation.holes()) {
					operation.finishing(hole).stream().findFirst().filter(pass -> isWall(pass, thread.get(), cutter.getAsDouble()))
							.ifPresent(pass -> found.accept(finding(work, operation, pass, thread.get(), cutter.getAsDouble())));
				}
			}
		}
	}

	private static boolean isWall(MillPass pass, ThreadSpec thread, double cutter) {
		double path = HelixForm.of(pass).pathDiameter();
		return pass.compensation() == Compensation.OFF && !pass.external() && Math.abs(path - thread.diameter()) <= NEAR * thread.pitch()
				&& Math.abs(path + cutter - thread.diameter()) > NEAR * thread.pitch();
	}

	private Finding finding(Work work, ThreadMilling operation, MillPass pass, ThreadSpec thread, double cutter) {
		Figures figures = new Figures(work.shop().unit().value());
		boolean left = pass.counterclockwise();
		return Draft.of(this, Severity.ERROR, MillFacts.word(pass.block(), "G"),
				"The path of " + figures.length(HelixForm.of(pass).pathDiameter()) + " is the wall of " + thread.designation()
						+ " and no compensation is in force: the cutter, " + figures.length(cutter) + ", cuts "
						+ figures.length(HelixForm.of(pass).pathDiameter() + cutter) + "; " + (left ? "G41" : "G42")
						+ " with D on the move before the lead-in").on(operation)
				.programmed("diameter of the path", figures.length(HelixForm.of(pass).pathDiameter()), pass.block())
				.known("cutter diameter", figures.length(cutter), operation.tool().facts().diameter().orElseThrow())
				.known("the callout", thread.designation(), operation.wanted().statedThread().orElseThrow()).finding();
	}
}
