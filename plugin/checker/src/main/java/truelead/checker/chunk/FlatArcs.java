package truelead.checker.chunk;

/**
 * Tells from the text alone which arcs a contour may take along: flat ones from a known place about a written centre or by a positive R, in
 * the plane XY, that nearly close and that with those before them about the same centre stay below the 0.95 turns of a circle that makes a
 * hole. Program units.
 */
final class FlatArcs {

	/** Ends nearer than this may be a full circle to the machine. */
	private static final double CHORD = 1e-4;
	/** Wider open ones are looked at one by one; the control's tolerance, 0.005 mm or 0.0005 inch as a rule, decides about the others. */
	private static final double OPEN = 0.004;
	/** Sine of an angle by which a quarter or half turn may be too long, and still count as one. */
	private static final double SLACK = 0.08;
	/** Most degrees of one arc, and of those about one centre one behind the other: below 0.95 turns. */
	private static final double MOST = 341;
	/** Arcs further apart than this, in radii, go round other centres or at other radii to everyone. */
	private static final double OTHER_CENTRE = 0.121;
	private static final double OTHER_RADIUS = 0.031;

	private double degrees;
	private int turn;
	private double centreX;
	private double centreY;
	private double radius;

	/** A straight move stands between the arcs before and those behind. */
	void interrupt() {
		turn = 0;
	}

	/**
	 * By how much the distances of an arc's ends from its centre differ; NaN where it is none that a contour may take along.
	 *
	 * @param code 2 or 3
	 * @param x    where it starts; NaN where that is not known, y too
	 * @param dx   from there to its end, dy too
	 * @param i    from the start to the centre, NaN where none is written, j too
	 * @param r    the radius; NaN where none is written
	 */
	double gap(int code, double x, double y, double dx, double dy, double i, double j, double r) {
		double chord = dx * dx + dy * dy;
		if (!(chord > CHORD * CHORD)) {
			return Double.NaN;
		}
		boolean centred = PlainLines.said(i) || PlainLines.said(j);
		double cx = PlainLines.said(i) ? i : 0;
		double cy = PlainLines.said(j) ? j : 0;
		if (!centred) {
			double height = r > 0 ? Math.sqrt(r * r / chord - 0.25) * (code == 3 ? 1 : -1) : Double.NaN;
			cx = dx / 2 - dy * height;
			cy = dy / 2 + dx * height;
		}
		double start = Math.sqrt(cx * cx + cy * cy);
		double end = Math.sqrt((dx - cx) * (dx - cx) + (dy - cy) * (dy - cy));
		double product = start * end;
		double along = (cx * cx + cy * cy - cx * dx - cy * dy) / product;
		double across = (cy * dx - cx * dy) / product * (code == 3 ? 1 : -1);
		double gap = Math.abs(start - end);
		return gap < OPEN && goesOn(code, x + cx, y + cy, start, end, degrees(along, across)) ? gap : Double.NaN;
	}

	/** Degrees that an arc sweeps at most, by the cosine and sine of its angle. */
	private static double degrees(double along, double across) {
		if (Math.abs(across) < 1e-9 && along > 0) {
			return Double.POSITIVE_INFINITY;
		} else if (across > 0 && along > -SLACK) {
			return along > 0 ? 90.1 * across + 0.01 : 95;
		} else if (along < 0 && across > -SLACK) {
			return 185;
		} else if (along < SLACK) {
			return 275;
		}
		return along < 0.939 ? 340 : Double.POSITIVE_INFINITY;
	}

	private boolean goesOn(int code, double x, double y, double start, double end, double sweep) {
		boolean same = code == turn && Math.abs(start - radius) <= OTHER_RADIUS * radius
				&& (x - centreX) * (x - centreX) + (y - centreY) * (y - centreY) <= OTHER_CENTRE * OTHER_CENTRE * radius * radius;
		degrees = same ? degrees + sweep : sweep;
		turn = code;
		centreX = x;
		centreY = y;
		radius = end;
		return degrees <= MOST;
	}
}
