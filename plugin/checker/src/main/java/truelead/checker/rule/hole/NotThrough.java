package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.Written;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A through thread whose tap does not pass the far face by its lead. */
public final class NotThrough extends HoleRule {

	public NotThrough() {
		super("not-through");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_AXIS, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.HEIGHTS_MISREAD);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (!(operation instanceof Tapping tapping)) {
			return;
		}
		Optional<Fact<Double>> wall = tapping.wanted().wall().filter(Fact::stated);
		boolean through = tapping.wanted().through().filter(Fact::stated).map(Fact::value).orElse(false);
		// a through hole may be threaded only so deep: thread-too-short looks at that
		boolean allTheWay = tapping.wanted().depth().filter(d -> wall.isPresent() && d.value() < wall.get().value() - tapping.wanted().statedThread().map(t -> t.value().pitch()).orElse(0.0))
				.isEmpty();
		TapDepth.shallowest(tapping).filter(d -> wall.isPresent() && through && allTheWay && d.surfaceKnown()).ifPresent(depth -> {
			double past = depth.tip() - wall.get().value();
			if (past < depth.lead().atLeast(depth.pitch()) - Written.open(depth.stroke().resolution()) - 1e-6) {
				found.accept(draft(depth, wall.get(), past));
			}
		});
	}

	private Draft draft(TapDepth depth, Fact<Double> wall, double past) {
		Figures figures = depth.figures();
		double lead = depth.lead().length(depth.pitch());
		double right = Math.ceil((wall.value() + lead + depth.pitch() / 2) * 10) / 10;
		String message = "the tap goes " + figures.length(depth.tip()) + " deep in a wall of " + figures.length(wall.value()) + ": "
				+ (past < 0 ? "it ends " + figures.length(-past) + " before the far face" : "it passes the far face by " + figures.length(past)) + ", its "
				+ depth.lead().said() + " needs " + figures.length(lead) + ", so the last turns are not full; " + figures.length(right) + " deep";
		Draft draft = depth.evidence(Draft.of(this, Severity.ERROR, depth.depthWord(), depth.stroke().block(), message))
				.known("wall", figures.length(wall.value()), wall);
		if (depth.stroke().step() instanceof Step.Stroke s) {
			LevelFix.depth(s, depth.level(right), false, "see what lies below the part").ifPresent(draft::fix);
		}
		return draft;
	}
}
