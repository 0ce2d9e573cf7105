package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** A comb cutter, whose teeth stand a pitch apart, is of another pitch than the thread: every tooth but one cuts beside the groove. */
public final class CutterPitchMismatch implements Rule {

	@Override
	public String name() {
		return "cutter-pitch-mismatch";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread();
			Optional<Fact<Double>> pitch = operation.tool().facts().pitch().filter(Fact::stated);
			boolean single = operation.tool().facts().comb().map(comb -> !comb.value()).orElse(false);
			if (thread.isPresent() && pitch.isPresent() && !single && Math.abs(pitch.get().value() - thread.get().value().pitch()) > 0.002) {
				found.accept(finding(work, operation, thread.get(), pitch.get()));
			}
		}
	}

	private Finding finding(Work work, ThreadMilling operation, Fact<ThreadSpec> thread, Fact<Double> pitch) {
		Figures figures = new Figures(work.shop().unit().value());
		double off = Math.abs(pitch.value() - thread.value().pitch());
		return Draft.of(this, Severity.ERROR, MillFacts.word(operation.block(), "G"),
				"the cutter has a pitch of " + figures.advance(pitch.value()) + ", " + thread.value().designation() + " needs "
						+ figures.advance(thread.value().pitch()) + ": the second tooth cuts " + figures.fine(off)
						+ " beside the groove, the fifth " + figures.fine(4 * off) + "; a cutter of pitch "
						+ figures.advance(thread.value().pitch())).on(operation)
				.known("pitch of the cutter", figures.advance(pitch.value()), pitch)
				.known("the callout", thread.value().designation(), thread).finding();
	}
}
