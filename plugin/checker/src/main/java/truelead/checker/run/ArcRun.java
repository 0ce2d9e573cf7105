package truelead.checker.run;

import java.util.List;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;
import truelead.checker.tool.ToolLog;

/**
 * Arcs one after another about one centre at one radius: a helix, a full circle, or a lead-in of half a turn.
 *
 * @param order  number of the first arc's step
 * @param last   number of the last arc's step
 * @param before the motions before it, nearest last; at most {@value #MOST_AROUND}
 * @param arcs   in order, never empty
 * @param after  the motions after it, nearest first; at most {@value #MOST_AROUND}, up to a move along the axis that clears the run
 */
public record ArcRun(int order, int last, ToolLog tool, List<Step> before, List<Step.Arc> arcs, List<Step> after) {

	/** Motions that are kept before and after a run: what leads in and out has fewer. */
	public static final int MOST_AROUND = 8;

	private static final double HALF = Math.toRadians(25);
	/**
	 * Radii of chords and of an arc behind them are one up to so many halves of the last decimal: centre and corner are rounded each along
	 * two axes.
	 */
	private static final double ROUNDED = 2 * Math.sqrt(2);

	public ArcRun {
		before = List.copyOf(before);
		arcs = List.copyOf(arcs);
		after = List.copyOf(after);
	}

	/** Whether another run is the same, but for the tool. */
	public boolean same(ArcRun other) {
		return new ArcRun(order, last, other.tool, before, arcs, after).equals(other);
	}

	/** The plane of its arcs. */
	public Plane plane() {
		return arcs.get(0).modal().plane();
	}

	/** Where the first arc begins. */
	public Point start() {
		return arcs.get(0).from();
	}

	/** Where the last arc ends. */
	public Point end() {
		return arcs.get(arcs.size() - 1).to();
	}

	/** Sum of the sweeps, radians, without sign. */
	public double sweep() {
		return sweep(arcs);
	}

	/** The same of any arcs, radians. */
	static double sweep(List<Step.Arc> arcs) {
		double sweep = 0;
		for (Step.Arc arc : arcs) {
			sweep += Math.abs(arc.sweep());
		}
		return sweep;
	}

	/** Mean radius weighted by sweep, mm. */
	public double radius() {
		double sum = 0;
		for (Step.Arc arc : arcs) {
			sum += (arc.startRadius() + arc.endRadius()) / 2 * Math.abs(arc.sweep());
		}
		return sum / sweep();
	}

	/**
	 * The centre in the plane: the mean of the arcs' centres, weighted by sweep. Of an arc of about half a turn written with R the middle
	 * of the chord is taken: R a hair larger than half the chord moves the arc's own centre far to the side, but not the hole.
	 */
	public Point centre() {
		double x = 0;
		double y = 0;
		double z = 0;
		double all = sweep();
		for (Step.Arc arc : arcs) {
			double weight = Math.abs(arc.sweep()) / all;
			boolean half = arc.byRadius() && Math.abs(Math.abs(arc.sweep()) - Math.PI) < HALF;
			x += weight * (half ? (arc.from().x() + arc.to().x()) / 2 : arc.centre().x());
			y += weight * (half ? (arc.from().y() + arc.to().y()) / 2 : arc.centre().y());
			z += weight * (half ? (arc.from().z() + arc.to().z()) / 2 : arc.centre().z());
		}
		return new Point(x, y, z);
	}

	/** Turns about that centre, from the ends of the arcs: two half arcs are one turn whatever their R. */
	public double turns() {
		Point centre = centre();
		double angle = 0;
		for (Step.Arc arc : arcs) {
			double between = Math.signum(arc.sweep()) * (angle(arc.to(), centre) - angle(arc.from(), centre));
			double swept = Math.abs(arc.sweep());
			angle += between + 2 * Math.PI * Math.round((swept - between) / (2 * Math.PI));
		}
		return angle / (2 * Math.PI);
	}

	private double angle(Point at, Point centre) {
		Plane plane = plane();
		return Math.atan2(at.along(plane.second()) - centre.along(plane.second()), at.along(plane.first()) - centre.along(plane.first()));
	}

	/** Level where it starts, mm. */
	public double from() {
		return arcs.get(0).from().along(plane().axis());
	}

	/** Level where it ends, mm. */
	public double to() {
		return arcs.get(arcs.size() - 1).to().along(plane().axis());
	}

	/** Whether it advances along the axis. */
	public boolean helical() {
		return Math.abs(advance()) > 1e-6;
	}

	/** Advance along the axis, mm, signed; NaN where it is not known. */
	public double advance() {
		double between = to() - from();
		return Double.isNaN(between) ? arcs.stream().mapToDouble(Step.Arc::rise).sum() : between;
	}

	/** Whether it is written in chords. */
	public boolean inChords() {
		return arcs.get(0).inChords();
	}

	/**
	 * Whether it goes round once and more on one radius, as far as it is written, as a bore does and what is finished along a curved
	 * surface does not.
	 */
	public boolean bores() {
		double radius = arcs.get(0).startRadius();
		double rounded = ROUNDED * resolution();
		return sweep() > ArcRuns.CIRCLE && arcs.stream().allMatch(arc -> Math.abs(arc.startRadius() - radius) <= rounded
				&& Math.abs(arc.endRadius() - radius) <= rounded);
	}

	/** Half of the coarsest last decimal written in its blocks, mm. */
	public double resolution() {
		double coarsest = 0;
		for (Step.Arc arc : arcs) {
			coarsest = Math.max(coarsest, arc.resolution());
		}
		return coarsest;
	}

	/** Deepest level in a direction, -1 for towards smaller numbers, mm. */
	public double deepest(int direction) {
		return direction < 0 ? Math.min(from(), to()) : Math.max(from(), to());
	}
}
