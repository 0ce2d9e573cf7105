package truelead.checker.rule.milling;

import truelead.checker.machine.Compensation;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Plane;
import truelead.checker.run.ArcRuns;
import truelead.checker.run.Decimals;

/**
 * The geometry of one pass of a thread mill, measured about its axis. Two half arcs whose R is a hair larger than half the chord sweep less
 * than a turn about their own centres and still come back to where they began, so turns are counted by the angle about the hole, not by the
 * sum of sweeps. Lengths mm, angles radians.
 */
final class HelixForm {

	private static final double FULL = 2 * Math.PI;

	private final MillPass pass;
	private final double[] centre;
	/** Turns round the hole's centre; negative until they are asked for. */
	private volatile double turns = -1;
	/** Which way it goes along the axis, 1 or -1; 0 until it is asked for. */
	private volatile double way;

	private HelixForm(MillPass pass) {
		this.pass = pass;
		this.centre = pass.centre();
	}

	/** The form of a pass, which rule after rule asks for. */
	static HelixForm of(MillPass pass) {
		return pass.derived(HelixForm.class, HelixForm::new);
	}

	/** The angle an arc goes round the hole's centre, without sign; the sweep itself where an end lies on the centre. */
	double angle(Step.Arc arc) {
		double swept = Math.abs(arc.sweep());
		Plane plane = pass.place().plane();
		double from = bearing(arc.from(), plane);
		double to = bearing(arc.to(), plane);
		if (Double.isNaN(from) || Double.isNaN(to)) {
			return swept;
		}
		double turned = arc.sweep() > 0 ? to - from : from - to;
		// half an arc whose ends lie on one side of the hole goes round it half a turn either way: the last digit of a place may not tell
		// which
		return turned + FULL * Math.round((swept - turned) / FULL + 1e-9);
	}

	/** Whether it goes round once, but for rounding. */
	boolean goesRound() {
		return FULL * turns() >= ArcRuns.CIRCLE;
	}

	/** Turns round the hole's centre. */
	double turns() {
		if (turns < 0) {
			// summed with the errors of the sum, which decide where arcs share a lead evenly
			turns = pass.helix().stream().mapToDouble(this::angle).sum() / FULL;
		}
		return turns;
	}

	/** Advance along the axis in a full turn, mm, without sign. */
	double lead() {
		return Math.abs(pass.advance()) / turns();
	}

	/** What an arc advances along the axis the way the helix does, mm; below 0 for one that goes back. */
	double advance(Step.Arc arc) {
		return rising() * arc.rise();
	}

	/** 1 where most arcs go towards larger numbers, else -1: one level that is far off does not turn the helix round. */
	private double rising() {
		if (way == 0) {
			way = pass.helix().stream().mapToDouble(arc -> Math.signum(arc.rise())).sum() < 0 ? -1 : 1;
		}
		return way;
	}

	/** What the last decimal of a step leaves open, mm. */
	static double open(Step step, double resolution) {
		return Decimals.open(step.modal().unit(), resolution);
	}

	/** How far the decimals of the helix's blocks leave a coordinate open, mm. */
	double open() {
		return open(pass.first(), pass.resolution());
	}

	/** How far the decimals written leave the lead open, mm a turn: two ends in absolute distances, every arc in incremental ones. */
	double leadRounding() {
		double ends = pass.modal().absolute() ? 2 : pass.helix().size();
		return ends * open() / turns() + 1e-9;
	}

	/** How far the decimals written leave a diameter open, mm: both coordinates of the radius at both sides. */
	double diameterRounding() {
		return 4 * open() + 1e-6;
	}

	/** Diameter of the programmed path, mm. */
	double pathDiameter() {
		return 2 * pass.radius();
	}

	/**
	 * Whether the path is the thread's wall with compensation moving the cutter off it, as against the cutter's centre: with compensation
	 * on, the reading that comes nearer to the diameter wanted.
	 */
	boolean onContour(double wanted, double cutter) {
		return pass.compensation() != Compensation.OFF && Math.abs(pathDiameter() - wanted) <= Math.abs(pathDiameter() + cutter - wanted);
	}

	/** The major diameter that is cut, mm. */
	double cutDiameter(double wanted, double cutter) {
		return onContour(wanted, cutter) ? pathDiameter() : pathDiameter() + cutter;
	}

	/** How far the helix's deeper end lies below a level, mm. */
	double deepest(double surface) {
		return Math.max(pass.below(pass.startLevel(), surface), pass.below(pass.endLevel(), surface));
	}

	/** How far the helix's end next to the surface lies below a level, mm. */
	double highest(double surface) {
		return Math.min(pass.below(pass.startLevel(), surface), pass.below(pass.endLevel(), surface));
	}

	/** Distance of a point from the hole's axis, mm. */
	double fromAxis(Point point) {
		Plane plane = pass.place().plane();
		return Math.hypot(point.along(plane.first()) - centre[0], point.along(plane.second()) - centre[1]);
	}

	private double bearing(Point point, Plane plane) {
		double u = point.along(plane.first()) - centre[0];
		double v = point.along(plane.second()) - centre[1];
		return Math.hypot(u, v) < 1e-6 ? Double.NaN : Math.atan2(v, u);
	}
}
