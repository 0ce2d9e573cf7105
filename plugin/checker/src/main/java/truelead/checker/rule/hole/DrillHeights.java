package truelead.checker.rule.hole;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Work;

/**
 * Signs lost in the heights of cycles along Z: a drill whose R lies as far in the stock as others start above it, or less far, and a tool
 * that stands below its R when its cycle begins.
 */
final class DrillHeights {

	/**
	 * A tool that stands so far below R and below level 0 when its cycle begins has gone there by mistake, mm (common practice, no source).
	 */
	private static final double STANDS_BELOW = 1;

	/** No drill is fed so much farther above the hole than another tool starts, mm (common practice, no source). */
	private static final double FAR_ABOVE = 10;

	/** Levels that differ by no more are one, mm. */
	private static final double SAME = 1e-3;

	/** Tools that open no pocket in which a drill may start. */
	private static final Set<ToolKind> ON_AXIS = EnumSet.of(ToolKind.DRILL, ToolKind.CENTRE_DRILL, ToolKind.SPOT_DRILL, ToolKind.REAMER,
			ToolKind.BORING, ToolKind.COUNTERSINK);

	private final Rule rule;
	private final Work work;
	private final Fact<Double> surface;

	/** @param surface level of the top of the holes, mm */
	DrillHeights(Rule rule, Work work, Fact<Double> surface) {
		this.rule = rule;
		this.work = work;
		this.surface = surface;
	}

	/** What is wrong with the drills of a hole that is threaded from there, which is asked for where a drill is suspect. */
	Optional<Draft> wrong(Visit visit, Supplier<ThreadStart> thread) {
		for (Cut cut : visit.hole().cuts()) {
			if (cut.order() < visit.order() && cut.kind().drills() && cut.step() instanceof Step.Stroke drill
					&& cut.place().plane().axis() == 2) {
				Optional<Draft> draft = drill.rLevel() < -SAME ? inStock(cut, drill, visit, thread.get()) : Optional.empty();
				draft = draft.isEmpty() ? below(drill, cut.tool()) : draft;
				draft = draft.isEmpty() && saysNoR(drill) ? withoutR(cut, drill, visit, thread.get()) : draft;
				if (draft.isPresent()) {
					return draft;
				}
			}
		}
		return Optional.empty();
	}

	/** A cycle above level 0 that begins while the tool stands below it. */
	Optional<Draft> below(Step.Stroke step, ToolUse tool) {
		boolean below = !step.relative() && step.modal().plane().axis() == 2 && step.rLevel() >= 0 && step.initial() < -STANDS_BELOW
				&& step.rLevel() - step.initial() > STANDS_BELOW;
		if (!below) {
			return Optional.empty();
		}
		Figures figures = new Figures(step.modal().unit());
		return Optional.of(Draft.of(rule, Severity.ERROR, Location.of(step.cycle().gWord()), tool.name() + " stands at Z"
				+ level(step.initial(), figures) + " when its cycle begins, and R is at Z" + level(step.rLevel(), figures)
				+ " above it: it was driven into the part in rapid; see the sign of Z before the cycle")
				.programmed("level before the cycle", figures.length(step.initial()), step.block())
				.programmed("level of R", figures.length(step.rLevel()), step.cycle().word('R').orElse(Setting.NONE)));
	}

	/** Whether a cycle says no R and begins where the tool stands. */
	private static boolean saysNoR(Step.Stroke drill) {
		return !drill.relative() && drill.cycle().gWord().address() == 'G' && Math.abs(drill.rLevel() - drill.initial()) <= SAME
				&& drill.cycle().word('R').isEmpty();
	}

	/** A cycle without R far above where another cycle at the hole starts. */
	private Optional<Draft> withoutR(Cut cut, Step.Stroke drill, Visit visit, ThreadStart thread) {
		DoubleStream cycles = others(cut, visit).filter(other -> other.step() instanceof Step.Stroke stroke
				&& stroke.cycle().word('R').isPresent()).mapToDouble(Cut::start);
		OptionalDouble other = DoubleStream.concat(cycles, thread.said().stream())
				.filter(start -> drill.rLevel() - start > FAR_ABOVE).findFirst();
		if (other.isEmpty()) {
			return Optional.empty();
		}
		Figures figures = new Figures(drill.modal().unit());
		return Optional.of(Draft.of(rule, Severity.WARNING, Location.of(drill.cycle().gWord()), "no R in the cycle: " + cut.tool().name()
				+ " is fed from Z" + level(drill.rLevel(), figures)
				+ " on, where it stands, or the control stops or takes another R; another tool of the hole starts at Z"
				+ level(other.getAsDouble(), figures)).programmed("level before the cycle", figures.length(drill.initial()),
						drill.block()));
	}

	/**
	 * R as far below level 0 as another tool at the hole starts above it, where nothing has opened the stock and nobody says that its top
	 * is lower.
	 */
	private Optional<Draft> inStock(Cut cut, Step.Stroke drill, Visit visit, ThreadStart thread) {
		double r = drill.rLevel();
		DoubleStream starts = DoubleStream.concat(others(cut, visit).mapToDouble(Cut::start), thread.aboveZero().stream())
				.filter(start -> start >= -r - SAME);
		double[] above = DoubleStream.concat(starts, DoubleStream.of(thread.stops()).filter(stop -> Math.abs(stop + r) <= SAME)).toArray();
		boolean mirrored = DoubleStream.of(above).anyMatch(start -> Math.abs(start + r) <= SAME);
		boolean inAir = surface.stated() && r >= surface.value() - SAME;
		// a slip is made once: two cycles that begin as low know of a seat
		boolean agreed = others(cut, visit).anyMatch(other -> other.step() instanceof Step.Stroke && Math.abs(other.start() - r) <= SAME);
		if (above.length == 0 || inAir || agreed || drill.relative() || opened(cut, r, visit)
				|| !mirrored && work.tools().stream().anyMatch(DrillHeights::mayPocket)) {
			return Optional.empty();
		}
		Figures figures = new Figures(drill.modal().unit());
		Setting word = drill.cycle().word('R').orElse(Setting.NONE);
		Draft draft = Draft.of(rule, mirrored ? Severity.ERROR : Severity.WARNING, word, drill.block(), "R is at Z" + level(r, figures)
				+ ", and nothing is open there before " + cut.tool().name() + ", while another tool of the hole starts at Z"
				+ level(mirrored ? -r : above[0], figures) + ": the drill is driven into the stock in rapid; R" + level(-r, figures))
				.programmed("level of R", figures.length(r), word);
		LevelFix.start(drill, -r, false, "see that nothing has opened the stock down to there").ifPresent(draft::fix);
		return Optional.of(draft);
	}

	/**
	 * Whether something before a drill has opened the stock down to a level, as wide as the drill, or a spot was set from as low: then the
	 * surface lies below it.
	 */
	private static boolean opened(Cut drill, double level, Visit visit) {
		double wide = drill.diameter().map(Fact::value).orElse(0.0);
		return visit.hole().cuts().stream().anyMatch(made -> made.order() < drill.order() && made.tip() <= level + SAME
				&& (!made.kind().atEdge() || made.start() <= level + SAME
						|| made.widthAt(level).map(Fact::value).filter(width -> width < wide - SAME).isEmpty()));
	}

	/** Whether a tool may open a pocket: an end mill, or one of which nothing is known. */
	private static boolean mayPocket(ToolUse tool) {
		return tool.change().isPresent() && tool.facts().kind().map(Fact::value).filter(kind -> ON_AXIS.contains(kind)
				|| kind.threading()).isEmpty();
	}

	private static Stream<Cut> others(Cut cut, Visit visit) {
		return visit.hole().cuts().stream().filter(other -> other.tool().index() != cut.tool().index());
	}

	private static String level(double mm, Figures figures) {
		return Figures.number(mm / figures.unit().mm(), 4);
	}
}
