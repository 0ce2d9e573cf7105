package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Written;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The tip depth less the tap's lead is less than the depth of full thread called out. */
public final class ThreadTooShort extends HoleRule {

	public ThreadTooShort() {
		super("thread-too-short");
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (!(operation instanceof Tapping tapping)) {
			return;
		}
		Optional<Fact<Double>> wanted = tapping.wanted().depth().filter(Fact::stated);
		TapDepth.shallowest(tapping).filter(d -> wanted.isPresent() && d.surfaceKnown()).ifPresent(depth -> {
			double full = depth.tip() - depth.lead().atLeast(depth.pitch());
			if (full < wanted.get().value() - Written.open(depth.stroke().resolution()) - 1e-6) {
				found.accept(draft(depth, wanted.get()));
			}
		});
	}

	private Draft draft(TapDepth depth, Fact<Double> wanted) {
		Figures figures = depth.figures();
		double full = Math.max(0, depth.tip() - depth.lead().length(depth.pitch()));
		double right = Math.ceil((wanted.value() + depth.lead().length(depth.pitch())) * 10) / 10;
		String message = "the tap goes " + figures.length(depth.tip()) + " deep, less its " + depth.lead().said() + " that is " + figures.length(full)
				+ " of full thread, called out are " + figures.length(wanted.value()) + ": " + figures.length(wanted.value() - full) + " short; "
				+ figures.length(right) + " deep";
		Draft draft = depth.evidence(Draft.of(this, Severity.ERROR, depth.depthWord(), depth.stroke().block(), message))
				.known("depth called out", figures.length(wanted.value()), wanted);
		if (depth.stroke().step() instanceof Step.Stroke s) {
			LevelFix.depth(s, depth.level(right), false, "see that the hole is deep enough for it").ifPresent(draft::fix);
		}
		return draft;
	}
}
