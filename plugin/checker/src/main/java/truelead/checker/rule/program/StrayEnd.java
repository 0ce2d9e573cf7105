package truelead.checker.rule.program;

import java.util.Optional;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Location;
import truelead.checker.program.Plane;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Written;
import truelead.checker.work.ThreadMilling;

/**
 * An arc written with R whose end lies beside the circle of all others of its helix. The control finds a centre for every R and goes on;
 * only the other arcs tell that a number is wrong.
 *
 * @param arc    the arc
 * @param off    how far its end is from the circle, mm
 * @param radius radius of the circle, mm
 */
record StrayEnd(Step.Arc arc, double off, double radius) {

	/** What ends of arcs may lie beside their circle, as a part of the radius (common practice, no source). */
	private static final double PART = 0.01;
	/** How far from half a turn an arc is one half of a circle (geometry: R a hair larger than half the chord). */
	private static final double HALF = Math.toRadians(25);

	/**
	 * The one end of a pass that strays; empty where none does, or several do, as on a path of another form.
	 *
	 * @param taper what the thread's radius grows over a length, inside towards the surface, 1/32 for a pipe taper; 0 for a parallel thread
	 */
	static Optional<StrayEnd> of(MillPass pass, double taper) {
		if (pass.tapered()) {
			return Optional.empty();
		}
		Plane plane = pass.place().plane();
		Point middle = middle(pass);
		double grows = pass.widens() * taper;
		double level = pass.startLevel();
		double radius = pass.helix().stream().mapToDouble(arc -> atStart(arc, middle, plane, grows, level)).sorted()
				.skip(pass.helix().size() / 2).findFirst().orElse(0);
		double allowed = Math.max(PART * radius, 0.01 + 3 * Written.open(pass.resolution()));
		StrayEnd stray = null;
		for (Step.Arc arc : pass.helix()) {
			double off = Math.abs(atStart(arc, middle, plane, grows, level) - radius);
			if (off > allowed && stray != null) {
				return Optional.empty();
			}
			stray = off > allowed ? new StrayEnd(arc, off, radius) : stray;
		}
		return Optional.ofNullable(stray);
	}

	/** How far an arc ends from the middle, less what the taper has grown since the start of the helix, mm. */
	private static double atStart(Step.Arc arc, Point middle, Plane plane, double grows, double level) {
		return arc.to().distanceInPlane(middle, plane) - grows * (arc.to().along(plane.axis()) - level);
	}

	/** The middle of the arcs, by the median along both axes, which one wrong end does not move. */
	private static Point middle(MillPass pass) {
		Plane plane = pass.place().plane();
		Point any = pass.first().centre();
		return any.with(plane.first(), median(pass, plane.first())).with(plane.second(), median(pass, plane.second()));
	}

	private static double median(MillPass pass, int axis) {
		double[] centres = pass.helix().stream().mapToDouble(arc -> half(arc) ? (arc.from().along(axis) + arc.to().along(axis)) / 2
				: arc.centre().along(axis)).sorted().toArray();
		return centres[centres.length / 2];
	}

	/** Whether an arc is about half a circle: an R a hair larger moves its own centre far to the side. */
	private static boolean half(Step.Arc arc) {
		return Math.abs(Math.abs(arc.sweep()) - Math.PI) < HALF;
	}

	/** The finding. */
	Draft draft(ArcNotClosed rule, ThreadMilling milling) {
		Figures figures = new Figures(arc.modal().unit());
		return Draft.of(rule, Severity.ERROR, Location.of(arc.block()), "this arc ends " + figures.fine(off)
				+ " beside the circle of the others, whose radius is " + figures.fine(radius)
				+ ": with R the control takes another centre and goes on; see its end point").on(milling)
				.programmed("end beside the circle", figures.fine(off), arc.block());
	}
}
