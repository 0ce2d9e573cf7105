package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.Written;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The tip depth less the tap's lead is less than the depth of full thread called out. Many shops write at a tap how deep they programmed it
 * (common practice, no source): where its tip goes just so deep, the thread may be what is wanted, and that it is shorter is information.
 */
public final class ThreadTooShort extends HoleRule {

	/** Turns that hold no screw, and that no tap but its lead makes, whatever is wanted (common practice, no source). */
	private static final double NO_THREAD = 2;

	/**
	 * Full thread of so small a part of its diameter holds no screw, at the mouth of a hole so many times as deep as the tap goes (common
	 * practice, no source).
	 */
	private static final double HARDLY_ANY = 0.3;
	private static final double DEEP_HOLE = 2.5;

	/** What the decimals of a depth in a comment leave open, mm: .55 DEEP is 13.97, and the tap goes 14. */
	private static final double SAID = 0.1;

	public ThreadTooShort() {
		super("thread-too-short");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_TOOL, Slip.UNREAD_BLOCK, Slip.OTHER_AXIS, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.HEIGHTS_MISREAD);
	}

	@Override
	void turned(SinglePoint turned, Work work, Consumer<Draft> found) {
		TurnedLength.of(this, turned, work).ifPresent(found);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (!(operation instanceof Tapping tapping)) {
			return;
		}
		Optional<Fact<Double>> wanted = tapping.wanted().depth().filter(Fact::stated);
		wanted.ifPresent(depth -> tapping.strokes().typical().stream().filter(s -> Double.isNaN(s.bottom()) && s.travel() > 1e-6
				&& s.travel() < depth.value() - Written.open(s.resolution()) - 1e-6).findFirst()
				.ifPresent(stroke -> found.accept(fed(stroke, depth))));
		Optional<Draft> called = wanted.flatMap(depth -> TapDepth.shallowest(tapping)
				.filter(d -> d.surfaceKnown() && tooShort(d, d.tip(), depth) && !CutDeeperLater.is(tapping, d.stroke(), work))
				.map(d -> draft(d, depth)).or(() -> fromR(tapping, depth, work)));
		called.ifPresent(found);
		// of a wall that is to be threaded through not-through says how deep
		boolean wall = tapping.wanted().wall().filter(Fact::stated).isPresent() && tapping.wanted().through().filter(said -> said.stated()
				&& said.value()).isPresent();
		TapDepth.shallowest(tapping).filter(d -> wanted.isEmpty() && !wall && d.surfaceKnown()).ifPresent(depth -> {
			boolean lead = depth.tip() <= Math.min(NO_THREAD * depth.pitch(), depth.lead().length(depth.pitch())) + 1e-6;
			if ((lead || hardlyAny(depth)) && !CutDeeperLater.is(tapping, depth.stroke(), work)) {
				found.accept(lead ? leadAlone(depth) : hardly(depth));
			}
		});
		tapping.strokes().typical().stream().flatMap(stroke -> TapDepth.of(tapping, stroke).stream())
				.flatMap(depth -> belowSeat(depth).stream()).findFirst().ifPresent(found);
		if (called.isEmpty()) {
			OddDepth.of(visits).filter(OddDepth::threadedLess).flatMap(odd -> odd(odd, tapping, work)).ifPresent(found);
		}
	}

	/** The one hole of many that is threaded less deep, where no later tap finishes it. */
	private Optional<Draft> odd(OddDepth odd, Tapping tapping, Work work) {
		Optional<TapStroke> stroke = tapping.strokes().typical().stream().filter(one -> one.order() == odd.visit().order()
				&& !CutDeeperLater.is(tapping, one, work)).findFirst();
		return stroke.map(one -> {
			Figures figures = new Figures(one.modal().unit());
			String axis = String.valueOf("XYZ".charAt(one.place().plane().axis()));
			String usual = axis + figures.coordinate(odd.usual().bottomLevel());
			OddDepth.Going going = going(one);
			Severity severity = OddDepth.severity(going, tapping.strokes().stream().map(ThreadTooShort::going));
			Draft draft = Draft.of(this, severity, going.location(), "the tap goes to " + axis
					+ figures.coordinate(one.bottom()) + " at this hole, at the other " + odd.others() + " to " + usual
					+ ", and all are drilled alike: its thread is " + figures.length(Math.abs(one.bottom() - odd.usual().bottomLevel()))
					+ " shorter; " + usual).programmed("level of the tap's tip", figures.length(one.bottom()), one.block())
					.from("level at the other holes", figures.length(odd.usual().bottomLevel()), "programmed");
			if (one.step() instanceof Step.Stroke cycle) {
				LevelFix.depth(cycle, odd.usual().bottomLevel(), false, "see that the hole is to be threaded as deep as the others")
						.ifPresent(draft::fix);
			}
			return draft;
		});
	}

	private static OddDepth.Going going(TapStroke stroke) {
		return new OddDepth.Going(stroke.step(), stroke.block());
	}

	/** Whether a tap that goes so far below the top of a hole, mm, leaves less of full thread than is called out. */
	private static boolean tooShort(TapDepth depth, double tip, Fact<Double> wanted) {
		return tip - depth.lead().atLeast(depth.pitch()) < wanted.value() - Written.open(depth.stroke().resolution()) - 1e-6;
	}

	/**
	 * A hole that opens nobody knows where, on a lug or in a pocket, whose thread would be too short even if it began at the R of its
	 * cycle, beside one that opens at a known level and is as deep as is called out, or from the side into a lathe's part: 30 DEEP in a
	 * title may as well be how deep the seat is that all of them open in.
	 */
	private Optional<Draft> fromR(Tapping tapping, Fact<Double> wanted, Work work) {
		List<TapDepth> depths = tapping.strokes().typical().stream().flatMap(stroke -> TapDepth.of(tapping, stroke).stream()).toList();
		boolean across = work.shop().profile().isLathe() && depths.stream().allMatch(depth -> depth.stroke().place().plane().axis() != 2);
		if (!across && depths.stream().noneMatch(depth -> depth.surfaceKnown() && !tooShort(depth, depth.tip(), wanted))) {
			return Optional.empty();
		}
		return depths.stream().filter(depth -> !depth.surfaceKnown() && depth.stroke().step() instanceof Step.Stroke
				&& tooShort(depth, way(depth), wanted)).min((one, other) -> Double.compare(way(one), way(other)))
				.filter(depth -> !CutDeeperLater.is(tapping, depth.stroke(), work)).map(depth -> {
					Figures figures = depth.figures();
					double full = Math.max(0, way(depth) - depth.lead().length(depth.pitch()));
					return depth.evidence(Draft.of(this, Severity.ERROR, depth.depthWord(), depth.stroke().block(), "the tap is fed "
							+ figures.length(way(depth)) + " from R, less its " + depth.lead().said() + " that is " + figures.length(full)
							+ " of full thread at most, called out are " + figures.length(wanted.value()) + "; see R and depth")
							.known("depth called out", figures.length(wanted.value()), wanted));
				});
	}

	/** How far the tap goes below its R, or that of its drill where that is higher, mm: no hole opens above both. */
	private static double way(TapDepth depth) {
		int into = depth.stroke().direction();
		double drill = depth.stroke().hole().deepestBefore(depth.stroke().order()).map(cut -> into * cut.start())
				.orElse(Double.POSITIVE_INFINITY);
		return into * depth.stroke().bottom() - Math.min(into * depth.stroke().start(), drill);
	}

	/**
	 * A hole that is opened wider than the thread so far down, as by a counterbore with a digit wrong, that the tap's lead alone goes on
	 * below.
	 */
	private Optional<Draft> belowSeat(TapDepth depth) {
		double wide = depth.tapping().wanted().statedThread().filter(any -> !depth.tapping().wanted().wireInsert())
				.map(thread -> thread.value().diameter()).orElse(Double.POSITIVE_INFINITY);
		return depth.stroke().hole().makingBefore(depth.stroke().order()).stream()
				.filter(cut -> cut.direction() == depth.stroke().direction() && cut.diameter().filter(d -> d.value() >= wide).isPresent())
				.max((one, other) -> Double.compare(depth.below(end(one)), depth.below(end(other)))).flatMap(seat -> {
					double left = depth.tip() - depth.below(end(seat));
					Figures figures = depth.figures();
					String thread = depth.tapping().wanted().statedThread().orElseThrow().value().withoutClass().designation();
					return left > 0 && left <= Math.min(NO_THREAD * depth.pitch(), depth.lead().length(depth.pitch())) + 1e-6
							? Optional.of(depth.evidence(Draft.of(this, Severity.ERROR, depth.depthWord(), depth.stroke().block(),
									"the hole is " + figures.fine(seat.diameter().orElseThrow().value()) + " wide down to "
									+ figures.length(depth.below(end(seat))) + " and the tap goes " + figures.length(depth.tip())
									+ " deep: " + figures.length(left) + " are left for " + thread
									+ ", less than the tap's lead; see both depths")).related(seat.block(), "what opens the hole"))
							: Optional.empty();
				});
	}

	private static double end(Cut cut) {
		return Double.isNaN(cut.shoulder()) ? cut.tip() : cut.shoulder();
	}

	/**
	 * Whether a tap makes hardly a turn or two of thread in a hole that is drilled for much more, as where a digit of its depth is lost.
	 */
	private static boolean hardlyAny(TapDepth depth) {
		double diameter = depth.tapping().wanted().statedThread().map(Fact::value).filter(thread -> thread.taperOnDiameter() == 0)
				.map(ThreadSpec::diameter).orElse(Double.NaN);
		return depth.tip() - depth.lead().length(depth.pitch()) < HARDLY_ANY * diameter
				&& depth.stroke().hole().fullBefore(depth.stroke().order()).filter(drill -> depth.below(drill.shoulder())
						>= DEEP_HOLE * depth.tip()).isPresent();
	}

	private Draft hardly(TapDepth depth) {
		Figures figures = depth.figures();
		return depth.evidence(Draft.of(this, Severity.WARNING, depth.depthWord(), depth.stroke().block(),
				"the tap goes " + figures.length(depth.tip()) + " deep, less its " + depth.lead().said() + " that is "
				+ figures.length(Math.max(0, depth.tip() - depth.lead().length(depth.pitch()))) + " of full thread in a hole drilled "
				+ figures.length(depth.below(depth.stroke().hole().fullBefore(depth.stroke().order()).orElseThrow().shoulder()))
				+ " deep: no screw holds in it; see the depth"));
	}

	private Draft leadAlone(TapDepth depth) {
		Figures figures = depth.figures();
		return depth.evidence(Draft.of(this, Severity.ERROR, depth.depthWord(), depth.stroke().block(),
				"the tap goes " + figures.length(depth.tip()) + " deep, " + Figures.turns(depth.tip() / depth.pitch()) + " turns: its "
				+ depth.lead().said() + " is longer, and no full turn is cut; see the depth"));
	}

	/** Levels that are not known, as in a subprogram by itself: the tap goes no deeper than it is fed. */
	private Draft fed(TapStroke stroke, Fact<Double> wanted) {
		Figures figures = new Figures(stroke.modal().unit());
		return Draft.of(this, Severity.ERROR, Location.of(stroke.block()), "the tap is fed " + figures.length(stroke.travel())
				+ " from the R level, called out are " + figures.length(wanted.value()) + " of full thread: at least "
				+ figures.length(wanted.value() - stroke.travel())
				+ " short; deeper by that, the tap's lead and the way from R to the surface")
				.programmed("way of the tap", figures.length(stroke.travel()), stroke.block())
				.known("depth called out", figures.length(wanted.value()), wanted);
	}

	private Draft draft(TapDepth depth, Fact<Double> wanted) {
		Figures figures = depth.figures();
		double full = Math.max(0, depth.tip() - depth.lead().length(depth.pitch()));
		double right = Math.ceil((wanted.value() + depth.lead().length(depth.pitch())) * 10) / 10;
		String message = "the tap goes " + figures.length(depth.tip()) + " deep, less its " + depth.lead().said() + " that is "
				+ figures.length(full) + " of full thread, called out are " + figures.length(wanted.value()) + ": "
				+ figures.length(wanted.value() - full) + " short; " + figures.length(right) + " deep";
		boolean tip = wanted.source() == FactSource.TOOL_COMMENT && Math.abs(depth.tip() - wanted.value()) < Written.open(depth.stroke()
				.resolution()) + SAID;
		Draft draft = depth.evidence(tip ? Draft.of(this, Severity.INFORMATION, depth.depthWord(), depth.stroke().block(),
				"the tap goes " + figures.length(depth.tip()) + " deep, as is said at it; less its " + depth.lead().said() + " that is "
				+ figures.length(full) + " of full thread: if the drawing wants " + figures.length(wanted.value()) + " of it, "
				+ figures.length(right) + " deep") : Draft.of(this, Severity.ERROR, depth.depthWord(), depth.stroke().block(), message))
				.known("depth called out", figures.length(wanted.value()), wanted);
		if (depth.stroke().step() instanceof Step.Stroke s) {
			LevelFix.depth(s, depth.level(right), false, "see that the hole is deep enough for it").ifPresent(draft::fix);
		}
		return draft;
	}
}
