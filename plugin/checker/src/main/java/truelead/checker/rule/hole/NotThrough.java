package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.Written;
import truelead.checker.turn.Parting;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A through thread whose tap does not pass the far face by its lead, or that ends far above the end of the hole. */
public final class NotThrough extends HoleRule {

	/**
	 * How far a drill goes behind a wall as a rule: parts of the thread's diameter and of the depth, and pitches; nobody goes twice as far
	 * (common practice, no source).
	 */
	private static final double BEHIND = 0.5;
	static final double PART_BEHIND = 0.25;
	private static final double TURNS_BEHIND = 3;

	public NotThrough() {
		super("not-through");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_AXIS, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.HEIGHTS_MISREAD, Slip.TURNED_ROUND,
				Slip.NO_ONE_LEAD);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (operation instanceof ThreadMilling milling) {
			MilledThrough.of(this, milling).ifPresent(found);
		}
		if (!(operation instanceof Tapping tapping)) {
			return;
		}
		withoutWall(tapping, work, found);
		Optional<Fact<Double>> wall = tapping.wanted().wall().filter(Fact::stated);
		boolean through = tapping.wanted().through().filter(Fact::stated).map(Fact::value).orElse(false);
		// a through hole may be threaded only so deep: thread-too-short looks at that
		boolean allTheWay = tapping.wanted().depth()
				.filter(d -> wall.isPresent() && d.value() < wall.get().value() - tapping.wanted().statedThread().map(t -> t.value()
						.pitch()).orElse(0.0)).isEmpty();
		TapDepth.shallowest(tapping).filter(d -> wall.isPresent() && through && allTheWay)
				.map(d -> d.surfaceKnown() ? d : d.fromLowestStart()).ifPresent(depth -> {
			double past = depth.tip() - wall.get().value();
			if (past < depth.lead().atLeast(depth.pitch()) - Written.open(depth.stroke().resolution()) - 1e-6) {
				found.accept(draft(depth, wall.get(), past));
			}
		});
	}

	/**
	 * Where no wall is known the drill tells it, if the thread itself is said to go through and not only so deep: nobody drills so far
	 * behind a wall, the less so where holes of another diameter end at the same level, as it is computed for a plate.
	 */
	private void withoutWall(Tapping tapping, Work work, Consumer<Draft> found) {
		boolean through = tapping.wanted().through().filter(said -> said.stated() && said.value()
				&& said.source() != FactSource.TOOL_COMMENT).isPresent();
		if (!through || tapping.wanted().wall().isPresent() || tapping.wanted().depth().isPresent()
				|| tapping.wanted().thread().isEmpty()) {
			return;
		}
		Optional<TapDepth> shallowest = TapDepth.shallowest(tapping);
		Optional<Cut> drill = shallowest.flatMap(depth -> depth.stroke().hole()
				.threadedBefore(depth.stroke().order(), tapping.wanted().thread().get().value().diameter()))
				.filter(cut -> !Double.isNaN(cut.shoulder()));
		if (drill.isEmpty()) {
			return;
		}
		TapDepth depth = shallowest.get();
		double full = depth.below(drill.get().shoulder());
		Optional<Draft> cutOff = Parted.behind(tapping, work).filter(parting -> depth.surfaceKnown())
				.flatMap(parting -> beforeTheCut(tapping, depth, full, parting));
		if (cutOff.isPresent()) {
			found.accept(cutOff.get());
			return;
		}
		double above = full - depth.tip();
		double usual = usual(tapping.wanted().thread().get().value().diameter(), depth.pitch());
		if (above > usual && above > PART_BEHIND * full) {
			Figures figures = depth.figures();
			String message = "the tap goes " + figures.length(depth.tip())
					+ " deep in a hole that is called through and drilled to its full diameter down to " + figures.length(full)
					+ ": it ends " + figures.length(above)
					+ " above that, so the last turns are missing where the wall is as thick; see the depth, or say WALL";
			boolean sure = above > 2 * usual || new ThroughSigns(tapping, work).level(drill.get()).isPresent();
			found.accept(depth.evidence(Draft.of(this, sure ? Severity.WARNING : Severity.INFORMATION, depth.depthWord(),
					depth.stroke().block(), message)).known("through", "through", tapping.wanted().through().get())
					.related(drill.get().block(), "the drill block"));
		}
	}

	/** How far a drill goes behind a wall at most as a rule, mm. */
	static double usual(double diameter, double pitch) {
		return Math.max(BEHIND * diameter, TURNS_BEHIND * pitch);
	}

	/**
	 * Where the part is drilled through and cut off from a bar, its length tells how deep the tap has to go; by so much less as the tool is
	 * wide at most.
	 */
	private Optional<Draft> beforeTheCut(Tapping tapping, TapDepth depth, double full, Parting parting) {
		double length = depth.below(parting.level());
		double missing = length - Parted.WIDEST - depth.tip();
		if (full < length - Parted.WIDEST || missing <= Written.open(depth.stroke().resolution()) + 1e-6) {
			return Optional.empty();
		}
		Figures figures = depth.figures();
		String message = "the tap goes " + figures.length(depth.tip()) + " deep in a hole that is called through, the part is cut off "
				+ figures.length(length) + " from its face: the last turns are missing; "
				+ figures.length(length + depth.lead().length(depth.pitch())) + " deep, or thread from the other side";
		return Optional.of(depth.evidence(Draft.of(this, Severity.WARNING, depth.depthWord(), depth.stroke().block(), message))
				.known("through", "through", tapping.wanted().through().get())
				.programmed("where the part is cut off", figures.length(length), parting.block())
				.related(parting.block(), "the part is cut off"));
	}

	private Draft draft(TapDepth depth, Fact<Double> wall, double past) {
		Figures figures = depth.figures();
		double lead = depth.lead().length(depth.pitch());
		double right = Math.ceil((wall.value() + lead + depth.pitch() / 2) * 10) / 10;
		String message = "the tap goes " + (depth.surfaceKnown() ? "" : "at most ") + figures.length(depth.tip()) + " deep in a wall of "
				+ figures.length(wall.value()) + ": " + (past < 0 ? "it ends " + figures.length(-past) + " before the far face"
						: "it passes the far face by " + figures.length(past)) + ", its " + depth.lead().said() + " needs "
				+ figures.length(lead) + ", so the last turns are not full; " + figures.length(right) + " deep";
		Draft draft = depth.evidence(Draft.of(this, Severity.ERROR, depth.depthWord(), depth.stroke().block(), message))
				.known("wall", figures.length(wall.value()), wall);
		if (depth.stroke().step() instanceof Step.Stroke s) {
			LevelFix.depth(s, depth.level(right), false, "see what lies below the part").ifPresent(draft::fix);
		}
		return draft;
	}
}
