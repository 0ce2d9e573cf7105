package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.DrillsThatTap;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The heights of a tapping cycle cannot be meant: the bottom not below R, R inside the stock, or the tap turning in the air above its hole.
 */
public final class PlaneHeightsWrong extends HoleRule {

	/**
	 * How far above level 0 a drill may start for level 0 to be taken for the top of the hole, mm (common practice, no source): where zero
	 * is the table or the centre of a rotary axis, R stands much higher.
	 */
	private static final double CLEARANCE = 6;

	/**
	 * A tap starts no more than this below the R of the drill, both below level 0: a drill starts as near to a pocket's floor, a tap
	 * further off (common practice, no source), mm.
	 */
	private static final double BELOW_DRILL = 3;

	/** No tap is fed so much farther above the hole than the drill starts, mm (common practice, no source). */
	private static final double FAR_FROM_DRILL = 10;

	/**
	 * So far above level 0, mm, and so many times farther than the hole goes below it, no drill starts that is to begin there (common
	 * practice, no source).
	 */
	private static final double FAR = 15;
	private static final double OUT_OF_PROPORTION = 3;

	public PlaneHeightsWrong() {
		super("plane-heights-wrong");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.HEIGHTS_MISREAD);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.LEFT_ON, Slip.OTHER_AXIS, Slip.UNIT_WORD, Slip.OTHER_UNIT);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (!work.shop().profile().isLathe()) {
			signs(operation, visits, work).ifPresent(found);
		}
		if (operation instanceof Tapping tapping && tapping.method().taps()) {
			for (TapStroke stroke : tapping.strokes().typical()) {
				Optional<Draft> draft = work.shop().profile().isLathe() ? DrillAway.of(this, stroke, work) : Optional.empty();
				draft = draft.isPresent() ? draft : stroke.step() instanceof Step.Stroke step ? heights(tapping, stroke, step, work)
						: stroke.step() instanceof Step.Synchronised move && move.goesIn() ? away(stroke, move) : Optional.empty();
				if (draft.isPresent()) {
					found.accept(draft.get());
					return;
				}
			}
		}
	}

	/** A sign lost in the heights of the drills, or above the tap's cycle. */
	private Optional<Draft> signs(ThreadingOperation operation, Visits visits, Work work) {
		DrillHeights heights = new DrillHeights(this, work, operation.wanted().surface());
		Optional<Draft> draft = Optional.empty();
		for (Visit visit : visits.typical()) {
			draft = draft.isPresent() ? draft : heights.wrong(visit, () -> ThreadStart.of(operation, visit));
		}
		for (TapStroke stroke : operation instanceof Tapping tapping && draft.isEmpty() ? tapping.strokes().typical()
				: List.<TapStroke>of()) {
			draft = draft.isEmpty() && stroke.step() instanceof Step.Stroke step ? heights.below(step, operation.tool()) : draft;
		}
		return draft;
	}

	/** A move that takes the tap in, as G33.1 and G331, and leaves the hole or ends above it. */
	private Optional<Draft> away(TapStroke stroke, Step.Synchronised move) {
		Optional<Cut> cut = stroke.hole().deepestBefore(stroke.order())
				.filter(made -> made.direction() * (stroke.bottom() - stroke.start()) < 0 || above(stroke.bottom(), made));
		Figures figures = new Figures(stroke.modal().unit());
		char axis = "XYZ".charAt(stroke.place().plane().axis());
		return cut.map(made -> Draft.of(this, Severity.ERROR, Location.of(move.block()), "the move goes from " + axis
				+ level(stroke.start(), figures) + " to " + axis + level(stroke.bottom(), figures) + ", the hole is drilled from " + axis
				+ level(made.start(), figures) + " to " + axis + level(made.tip(), figures)
				+ ": the tap does not come into the hole and nothing is threaded; see the sign of the depth")
				.programmed("level of the bottom", figures.length(stroke.bottom()), move.block()).related(made.block(), "the drill block"));
	}

	/** Whether a level is not below level 0, where a hole begins that is drilled from right above it. */
	static boolean above(double level, Cut made) {
		return made.direction() * level <= 1e-6 && made.direction() * made.tip() > 0 && made.direction() * made.start() <= 0
				&& Math.abs(made.start()) <= CLEARANCE;
	}

	private Optional<Draft> heights(Tapping tapping, TapStroke stroke, Step.Stroke step, Work work) {
		if (Double.isNaN(step.bottom()) || Double.isNaN(step.rLevel())) {
			return fromNowhere(stroke, step);
		}
		int into = into(stroke, step);
		Figures figures = new Figures(stroke.modal().unit());
		char axis = "XYZ".charAt(step.modal().plane().axis());
		Supplier<String> levels = () -> "R is at " + axis + level(step.rLevel(), figures) + " and the bottom at " + axis
				+ level(step.bottom(), figures);
		String incremental = !step.relative() ? "" : " (under G91, R counts from the level before and the depth from R)";
		if (into * (step.bottom() - step.rLevel()) <= 1e-6) {
			return Optional.of(draft(step, axis, levels.get() + incremental
					+ ": the bottom is not below R, nothing is threaded; see the sign of the depth", figures));
		}
		OptionalDouble mouth = DrillsThatTap.of(work).before(stroke.place(), stroke.order()) ? OptionalDouble.empty()
				: mouth(tapping, stroke, step);
		if (mouth.isPresent() && into * (step.rLevel() - mouth.getAsDouble()) > 1e-3) {
			return Optional.of(withFix(draft(step, 'R', levels.get() + incremental + ": R is inside the stock, whose surface is at " + axis
					+ level(mouth.getAsDouble(), figures) + alone(tapping, stroke, step) + ", and the tap is driven there in rapid; "
					+ drilledFrom(stroke, into, mouth.getAsDouble()).map(start -> "R" + level(start, figures)
							+ ", where the drill starts").orElse("R above the surface"), figures), stroke, step, into,
					mouth.getAsDouble()));
		}
		Optional<Cut> cut = stroke.hole().deepestBefore(stroke.order());
		if (cut.isPresent() && cut.get().step() instanceof Step.Stroke drill && belowTheDrill(stroke, step, into)) {
			double start = drill.rLevel();
			return Optional.of(draft(farAbove(cut.get(), into) ? Severity.ERROR : Severity.WARNING, step, 'R', levels.get() + ": R is "
					+ figures.length(Math.abs(step.rLevel() - start)) + " below " + axis + level(start, figures)
					+ ", where the drill starts, and the tap is driven there in rapid; R" + level(start, figures) + " or above", figures)
					.related(cut.get().block(), "the drill block"));
		}
		boolean stated = tapping.wanted().surface().stated();
		double surface = stated ? tapping.wanted().surface().value() : 0;
		boolean level = cut.isPresent() && into * (cut.get().start() - surface) <= 0 && into * (cut.get().tip() - surface) > 0
				&& (stated || Math.abs(cut.get().start() - surface) <= CLEARANCE);
		double mouthLevel = level ? surface : cut.map(Cut::start).orElse(Double.NaN);
		if (cut.isPresent() && into == cut.get().direction() && into * (step.bottom() - mouthLevel) <= 1e-6) {
			return Optional.of(draft(step, axis, levels.get() + incremental + ", the hole is drilled from " + axis
					+ level(cut.get().start(), figures) + " to " + axis + level(cut.get().tip(), figures)
					+ ": the tap turns in the air above it; see the " + (step.relative() ? "distance mode of the heights"
							: "sign of the depth"), figures).related(cut.get().block(), "the drill block"));
		}
		if (cut.isPresent() && cut.get().step() instanceof Step.Stroke drill && !work.shop().profile().isLathe()
				&& withoutR(step, drill, into)) {
			String from = axis + level(step.rLevel(), figures);
			return Optional.of(draft(Severity.WARNING, step, 'G', "no R in the cycle: the tap is fed from " + from
					+ " on, where it stands, or the control stops or takes another R; the drill starts at R"
					+ level(drill.rLevel(), figures), figures).related(cut.get().block(), "the drill block"));
		}
		if (step.relative() && into * (step.rLevel() - step.initial()) < -1e-3) {
			return Optional.of(draft(step, 'R', levels.get() + incremental + ": R lies above the level before, "
					+ axis + level(step.initial(), figures) + ", as absolute heights do; see the distance mode of the heights", figures));
		}
		return Optional.empty();
	}

	/**
	 * Whether a hole that does not open at level 0, as in the floor of a pocket or on a pad, is entered in rapid further in than any of its
	 * drills, which nothing has opened wider.
	 */
	private static boolean belowTheDrill(TapStroke stroke, Step.Stroke step, int into) {
		// a spot drill that ends above level 0 has met a surface there
		boolean raised = stroke.hole().edgeBefore(stroke.order()).stream().anyMatch(edge -> into * edge.tip() < 0);
		boolean onPad = into * step.bottom() <= 0;
		// a counterbore that ends above the tap's R has opened nothing there
		return stroke.hole().makingBefore(stroke.order()).stream().filter(made -> !endsAbove(made, step.rLevel(), into))
				.allMatch(made -> (into * step.rLevel() > 0 && into * made.start() > 0 || raised || onPad && farBelow(step, made, into)
						|| farAbove(made, into)) && into * (step.rLevel() - made.start()) > BELOW_DRILL && made.kind() != Cut.Kind.MILL
						&& made.kind() != Cut.Kind.BORE);
	}

	/**
	 * Whether a tap starts farther below the drill's R than it is fed: no room over clamps, which a drill alone jumps, explains it where
	 * the thread ends above level 0 (common practice, no source).
	 */
	private static boolean farBelow(Step.Stroke step, Cut made, int into) {
		return into * (step.rLevel() - made.start()) > into * (step.bottom() - step.rLevel());
	}

	/** Whether a cycle says no R where that of the drill does, and begins far above it. */
	private static boolean withoutR(Step.Stroke step, Step.Stroke drill, int into) {
		boolean said = step.cycle().word('R').isPresent() || step.cycle().gWord().address() != 'G'
				|| drill.cycle().gWord().address() != 'G';
		return !said && drill.cycle().word('R').isPresent() && Math.abs(step.rLevel() - step.initial()) < 1e-6
				&& into * (drill.rLevel() - step.rLevel()) > FAR_FROM_DRILL;
	}

	/** Whether level 0 seems to be the underside of the part: a drill starts far above it, and ends above it or right below. */
	static boolean farAbove(Cut made, int into) {
		double above = -into * made.start();
		return above > FAR && above > OUT_OF_PROPORTION * into * made.tip();
	}

	/** A subprogram by itself, whose levels count from one that is not known: the signs alone. */
	private Optional<Draft> fromNowhere(TapStroke stroke, Step.Stroke step) {
		Figures figures = new Figures(stroke.modal().unit());
		char axis = "XYZ".charAt(step.modal().plane().axis());
		if (axis == 'Z' && Double.isNaN(step.bottom()) && step.way() >= 0) {
			return Optional.of(draft(step, axis, "Z" + level(step.way(), figures)
					+ " counts from R under G91: the bottom is not below R, nothing is threaded; see the sign of the depth", figures));
		}
		return axis == 'Z' && Double.isNaN(step.rLevel()) && step.incremental('R') > 1e-3
				? Optional.of(draft(step, 'R', "R" + level(step.incremental('R'), figures)
						+ " counts from the level before under G91: R lies above it, as absolute heights do; see the distance mode of "
						+ "the heights", figures)) : Optional.empty();
	}

	/**
	 * Which way the tap must go: as the drill went, or one of them, as into the other end of a part on a second spindle; else down along Z,
	 * and along the others away from the level before, or as it goes.
	 */
	private static int into(TapStroke stroke, Step.Stroke step) {
		Optional<Cut> cut = stroke.hole().deepestBefore(stroke.order());
		if (cut.isPresent()) {
			boolean one = stroke.hole().makingBefore(stroke.order()).stream().anyMatch(made -> made.direction() == stroke.direction());
			return one ? stroke.direction() : cut.get().direction();
		}
		boolean away = step.modal().plane().axis() != 2 && Math.abs(step.rLevel() - step.initial()) > 1e-6;
		boolean side = step.modal().plane().axis() != 2 && step.bottom() > step.rLevel();
		return away ? step.rLevel() > step.initial() ? 1 : -1 : side ? 1 : -1;
	}

	/**
	 * A level that the surface is surely not below: as stated, at the floor of a wider opening, where a spot drill or a countersink ended,
	 * or level 0 for a hole that nothing opens.
	 */
	private static OptionalDouble mouth(Tapping tapping, TapStroke stroke, Step.Stroke step) {
		Fact<Double> surface = tapping.wanted().surface();
		if (surface.stated() || nothingWider(tapping, stroke, step.rLevel())) {
			return OptionalDouble.of(surface.stated() ? surface.value() : 0);
		}
		OptionalDouble edge = stroke.hole().edgeBefore(stroke.order()).stream().filter(c -> !Double.isNaN(c.tip()))
				.mapToDouble(Cut::tip).findFirst();
		double wide = tapping.wanted().thread().map(t -> t.value().diameter()).orElse(0.0);
		for (Cut cut : stroke.hole().makingBefore(stroke.order())) {
			// through a clearance drilled wider than the thread the tap may go in rapid
			boolean deeper = edge.isPresent() && stroke.direction() * (cut.tip() - edge.getAsDouble()) > 0;
			edge = deeper && cut.diameter().filter(d -> d.value() > wide).isPresent() && cut.tip() != stroke.hole().deepestBefore(
					stroke.order()).map(Cut::tip).orElse(Double.NaN) ? OptionalDouble.of(cut.tip()) : edge;
		}
		// what is implied is no lower than the lowest R, unless it is the floor of a wider opening
		return edge.isPresent() || surface.source() != FactSource.IMPLIED ? edge : OptionalDouble.of(surface.value());
	}

	private static String alone(Tapping tapping, TapStroke stroke, Step.Stroke step) {
		return !tapping.wanted().surface().stated() && nothingWider(tapping, stroke, step.rLevel())
				? " (the hole's other tools start above it and nothing wider is cut there)" : "";
	}

	/**
	 * Whether the other tools at the hole start above level 0, and none but the drill, which goes deepest, has opened the hole down to
	 * where the tap starts, mm.
	 */
	private static boolean nothingWider(Tapping tapping, TapStroke stroke, double start) {
		double thread = tapping.wanted().thread().map(t -> t.value().diameter()).orElse(Double.NaN);
		double drill = stroke.hole().threadedBefore(stroke.order(), thread).flatMap(Cut::diameter).map(Fact::value).orElse(Double.NaN);
		List<Cut> making = stroke.hole().makingBefore(stroke.order());
		boolean alone = making.stream().filter(cut -> !endsAbove(cut, start, stroke.direction())).count() == 1;
		for (Cut cut : stroke.hole().cuts()) {
			boolean narrow = !cut.kind().makesHole() || endsAbove(cut, start, stroke.direction()) || alone
					|| cut.diameter().map(Fact::value).filter(d -> d <= drill + 1e-6).isPresent();
			if (cut.order() < stroke.order() && !(stroke.direction() * cut.start() <= 0 && narrow)) {
				return false;
			}
		}
		return !making.isEmpty();
	}

	private static boolean endsAbove(Cut cut, double level, int into) {
		return into * (level - cut.tip()) > 0;
	}

	/** The level that the hole was made from, where it lies above the surface. */
	private static Optional<Double> drilledFrom(TapStroke stroke, int into, double mouth) {
		return stroke.hole().deepestBefore(stroke.order()).map(Cut::start).filter(start -> into * (start - mouth) < 0);
	}

	private static Draft withFix(Draft draft, TapStroke stroke, Step.Stroke step, int into, double mouth) {
		drilledFrom(stroke, into, mouth).flatMap(start -> LevelFix.start(step, start, false, "see that the tap has its run-up from there"))
				.ifPresent(draft::fix);
		return draft;
	}

	private static String level(double mm, Figures figures) {
		return Figures.number(mm / figures.unit().mm(), 4);
	}

	private Draft draft(Step.Stroke step, char address, String message, Figures figures) {
		return draft(Severity.ERROR, step, address, message, figures);
	}

	private Draft draft(Severity severity, Step.Stroke step, char address, String message, Figures figures) {
		Setting word = step.cycle().word(address).orElse(Setting.NONE);
		Draft draft = Draft.of(this, severity, word.word().map(Location::of).orElse(step.cycle().gWord().address() == 'C'
				? Location.of(step.cycle().gWord()) : Location.of(step.block())), message)
				.programmed("level of R", figures.length(step.rLevel()), step.cycle().word('R').orElse(Setting.NONE))
				.programmed("level of the bottom", figures.length(step.bottom()),
						step.cycle().word("XYZ".charAt(step.modal().plane().axis())).orElse(Setting.NONE));
		return !step.relative() ? draft : draft.from("distance mode", "G91", "programmed").tells(Slip.DISTANCE_MODE);
	}
}
