package truelead.checker.pass;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Plane;
import truelead.checker.program.Setting;
import truelead.checker.run.ArcRun;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/** One helical pass of a thread mill at one place: what leads in, the helix itself, what leads out. Levels in mm along the axis. */
public final class MillPass {

	/**
	 * What the centres of arcs written with R leave open, mm (geometry: a radius 0.001 over half the chord moves the centre by 0.09 at R4).
	 */
	private static final double OPEN = 0.1;
	/** What computed numbers leave open, mm: a place worked out by a macro has no written decimals. */
	private static final double COMPUTED = 0.001;
	/** Half of the third decimal of an inch, mm: who writes fewer decimals means the value (common practice, no source). */
	private static final double COARSEST = 0.0127;
	/** What a way within the hole may be longer than the path is wide, mm (common practice, no source). */
	private static final double ANOTHER_PLACE = 1;
	/** A move that goes less than this in the plane goes along the axis alone, mm. */
	private static final double JOINED = 1e-4;
	/** Turns of a helix that goes round, but for rounding. */
	private static final double WHOLE = 0.99;

	private final int order;
	private final ToolUse tool;
	private final Optional<Step.Move> rapidIn;
	private final List<Step> entry;
	private final List<Step.Arc> helix;
	private final List<Step> exit;
	private final Hole hole;
	private final boolean external;
	private final double turns;
	/** What every rule asks for, worked out for the first. */
	private volatile HelixMeasures measures;
	private volatile Object derived;

	/**
	 * A pass.
	 *
	 * @param order    number of the helix's first arc in the order of execution
	 * @param rapidIn  the last move at rapid across the axis before the entry, with nothing but rapid moves between
	 * @param entry    moves and lead-in arcs from the last position clear of the wall to the helix, in order; at most
	 *                 {@value ArcRun#MOST_AROUND}
	 * @param helix    the arcs about the hole's centre at the pass's radius, in order; never empty
	 * @param exit     lead-out arcs and moves from the end of the helix until the cutter moves away along the axis, in order; as many at
	 *                 most
	 * @param hole     what else was done at the place, {@link Hole#untouched} where nothing
	 * @param external whether the cutter comes to the helix from outside, cutting a bolt thread on a stud
	 * @param turns    full turns of the helix about the centre, a number with decimals: half a turn is 0.5
	 */
	public MillPass(int order, ToolUse tool, Optional<Step.Move> rapidIn, List<Step> entry, List<Step.Arc> helix, List<Step> exit,
			Hole hole, boolean external, double turns) {
		this.order = order;
		this.tool = tool;
		this.rapidIn = rapidIn;
		this.entry = List.copyOf(entry);
		this.helix = List.copyOf(helix);
		this.exit = List.copyOf(exit);
		this.hole = hole;
		this.external = external;
		this.turns = turns;
	}

	/** Number of the helix's first arc in the order of execution. */
	public int order() {
		return order;
	}

	/** The stay of the cutter. */
	public ToolUse tool() {
		return tool;
	}

	/** The last move at rapid across the axis before the entry, with nothing but rapid moves between. */
	public Optional<Step.Move> rapidIn() {
		return rapidIn;
	}

	/** Moves and lead-in arcs from the last position clear of the wall to the helix, in order. */
	public List<Step> entry() {
		return entry;
	}

	/** The arcs about the hole's centre at the pass's radius, in order; never empty. */
	public List<Step.Arc> helix() {
		return helix;
	}

	/** Lead-out arcs and moves from the end of the helix until the cutter moves away along the axis, in order. */
	public List<Step> exit() {
		return exit;
	}

	/** What else was done at the place, {@link Hole#untouched} where nothing. */
	public Hole hole() {
		return hole;
	}

	/** Whether the cutter comes to the helix from outside, cutting a bolt thread on a stud. */
	public boolean external() {
		return external;
	}

	/** Full turns of the helix about the centre, a number with decimals: half a turn is 0.5. */
	public double turns() {
		return turns;
	}

	private HelixMeasures measures() {
		HelixMeasures known = measures;
		if (known == null) {
			known = HelixMeasures.of(helix, place().plane());
			measures = known;
		}
		return known;
	}

	/** What rules work out of a pass by itself, made once; the answer of the kind that was asked for last is kept. */
	public <T> T derived(Class<T> kind, Function<MillPass, T> maker) {
		Object known = derived;
		if (!kind.isInstance(known)) {
			known = maker.apply(this);
			derived = known;
		}
		return kind.cast(known);
	}

	/**
	 * The move at rapid that brings the cutter from another place; inside the hole it cannot come from farther than its path lies from the
	 * middle, but for {@value #ANOTHER_PLACE} mm.
	 */
	public Optional<Step.Move> across() {
		return rapidIn.filter(move -> elsewhere(move.from()));
	}

	/** Whether a point lies at another place than this one: no cutter on this path is there, but for {@value #ANOTHER_PLACE} mm. */
	public boolean elsewhere(Point point) {
		return elsewhere(point, place(), radius());
	}

	static boolean elsewhere(Point point, Place place, double radius) {
		double u = point.along(place.plane().first()) - place.u();
		double v = point.along(place.plane().second()) - place.v();
		return Math.hypot(u, v) > 2 * radius + ANOTHER_PLACE;
	}

	/** The first arc of the helix. */
	public Step.Arc first() {
		return helix.get(0);
	}

	/** The pass as if one of its arcs were all of its helix. */
	public MillPass only(Step.Arc arc) {
		return new MillPass(order, tool, rapidIn, entry, List.of(arc), exit, hole, external, Math.abs(arc.sweep()) / (2 * Math.PI));
	}

	/** The last arc of the helix. */
	public Step.Arc last() {
		return helix.get(helix.size() - 1);
	}

	/** The block of the helix's first arc. */
	public BlockRef block() {
		return first().block();
	}

	/** State in force at the helix. */
	public Modal modal() {
		return first().modal();
	}

	/** Where the centre is. */
	public Place place() {
		return hole.place();
	}

	/** Where the arcs' mean centre is in the plane, along its first axis and along its second, mm. */
	private double[] ownCentre() {
		return new double[] {measures().u(), measures().v()};
	}

	/** How far the mean centre of a helix of a turn or more lies from the hole, mm, where it is more than rounding; else 0. */
	public double besideHole() {
		if (!(turns > WHOLE)) {
			return 0;
		}
		double distance = Math.hypot(measures().u() - place().u(), measures().v() - place().v());
		return distance > COMPUTED && distance > open() ? distance : 0;
	}

	/** How far the mean centre may lie beside the hole by rounding, mm. */
	private double open() {
		return measures().byRadius() ? OPEN : Math.max(COMPUTED, 3 * Math.min(resolution(), COARSEST));
	}

	/** Where the axis of the helix is in the plane, along its first axis and along its second, mm: that of the hole, but for rounding. */
	public double[] centre() {
		return besideHole() > 0 ? ownCentre() : new double[] {place().u(), place().v()};
	}

	/** Radius of the programmed path, mean over the arcs weighted by their sweep, mm. */
	public double radius() {
		return measures().radius();
	}

	/** Level where the helix starts, mm. */
	public double startLevel() {
		return first().from().along(axis());
	}

	/** Level where the helix ends, mm. */
	public double endLevel() {
		return last().to().along(axis());
	}

	/** Signed advance in a full turn over the whole helix, mm: positive towards larger numbers along the axis. */
	public double lead() {
		return advance() / turns;
	}

	/** Signed advance along the axis over the whole helix, mm; known for increments from an unknown level too. */
	public double advance() {
		double between = endLevel() - startLevel();
		return Double.isNaN(between) ? helix.stream().mapToDouble(Step.Arc::rise).sum() : between;
	}

	/** Whether the sweep is counter-clockwise seen against the axis (G3 in an unmirrored plane). */
	public boolean counterclockwise() {
		return first().sweep() > 0;
	}

	/**
	 * Whether the helix makes a right-hand thread: counter-clockwise and rising, or clockwise and falling. A helix turning mathematically
	 * positive about an axis while advancing along it is right-handed whichever way it is looked at.
	 */
	public boolean rightHand() {
		return counterclockwise() == lead() > 0;
	}

	/** Whether every arc's radius changes by as much of its advance as a pipe taper does, within the decimals written. */
	public boolean tapered() {
		return helix.stream().allMatch(arc -> {
			double advance = Math.abs(arc.to().along(axis()) - arc.from().along(axis()));
			double change = Math.abs(arc.endRadius() - arc.startRadius());
			return advance > 0 && change > 0
					&& Math.abs(change - advance * ThreadSpec.PIPE_TAPER / 2) <= 3 * Math.min(arc.resolution(), 0.005);
		});
	}

	/** The axis of the helix: 0 X, 1 Y, 2 Z. */
	public int axis() {
		return place().plane().axis();
	}

	/**
	 * -1 where the tool goes into the hole towards smaller numbers along the axis, the usual way; +1 where it comes from the other side, as
	 * in an angle head.
	 */
	public int direction() {
		Optional<Cut> deepest = hole.deepestBefore(order);
		if (deepest.isPresent()) {
			return deepest.get().direction();
		}
		double in = rapidIn.map(move -> first().from().along(axis()) - move.to().along(axis())).orElse(0.0);
		if (Math.abs(in) > JOINED) {
			return in < 0 ? -1 : 1;
		}
		return place().plane() != Plane.XY && outwards() < 0 ? 1 : -1;
	}

	/**
	 * 1 where a taper thread is wider towards larger numbers along the axis, else -1: inside it is towards the surface, outside away from
	 * it.
	 */
	public int widens() {
		return external == direction() > 0 ? 1 : -1;
	}

	/**
	 * The way a rapid along the axis alone takes the cutter out beyond the helix: below 0 towards smaller numbers, 0 where none does, as
	 * where it goes back for the next pass.
	 */
	private int outwards() {
		for (Step step : exit) {
			if (step instanceof Step.Move move && move.rapid() && move.from().distanceInPlane(move.to(), place().plane()) < JOINED) {
				double to = move.to().along(axis());
				return to > Math.max(startLevel(), endLevel()) ? 1 : to < Math.min(startLevel(), endLevel()) ? -1 : 0;
			}
		}
		return 0;
	}

	/** How far a level lies in the hole below another one, seen the way the tool goes, mm; below 0 where it lies above. */
	public double below(double level, double surface) {
		return direction() * (level - surface);
	}

	/** Cutter radius compensation on the helix. */
	public Compensation compensation() {
		return modal().compensation();
	}

	/** D in force on the helix. */
	public Setting compensationOffset() {
		return modal().compensationOffset();
	}

	/** Half of the coarsest last decimal written in the helix's blocks, mm. */
	public double resolution() {
		return measures().resolution();
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof MillPass pass && order == pass.order && external == pass.external && Double.compare(turns,
				pass.turns) == 0 && tool.equals(pass.tool) && entry.equals(pass.entry) && helix.equals(pass.helix) && exit.equals(pass.exit)
				&& hole.equals(pass.hole);
	}

	@Override
	public int hashCode() {
		return 31 * order + hole.hashCode();
	}
}
