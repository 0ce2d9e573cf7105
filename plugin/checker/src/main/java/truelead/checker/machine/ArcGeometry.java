package truelead.checker.machine;

/**
 * Centre and angle of an arc in its plane. The plane's axes are in right-handed order, so that counter-clockwise is positive; mm and
 * radians.
 *
 * @param first       the centre on the first axis
 * @param second      the centre on the second axis
 * @param sweep       angle swept, negative for clockwise; NaN where it cannot be told
 * @param startRadius distance of the start from the centre
 * @param endRadius   distance of the end from the centre; what it differs by is the gap that the control has to take
 */
record ArcGeometry(double first, double second, double sweep, double startRadius, double endRadius) {

	/** Ends nearer than this, mm, make a full circle. */
	private static final double SAME_PLACE = 1e-6;

	/** An arc about a centre. */
	static ArcGeometry about(double c1, double c2, double s1, double s2, double e1, double e2, boolean clockwise, int extraTurns) {
		double startRadius = Math.hypot(s1 - c1, s2 - c2);
		double endRadius = Math.hypot(e1 - c1, e2 - c2);
		double sweep;
		if (Math.hypot(e1 - s1, e2 - s2) < SAME_PLACE) {
			sweep = 2 * Math.PI;
		} else {
			double angle = Math.atan2(e2 - c2, e1 - c1) - Math.atan2(s2 - c2, s1 - c1);
			sweep = positive(clockwise ? -angle : angle);
		}
		sweep += extraTurns * 2 * Math.PI;
		return new ArcGeometry(c1, c2, clockwise ? -sweep : sweep, startRadius, endRadius);
	}

	/**
	 * An arc of a written radius; a negative one takes the long way. A radius too short to reach the end has its centre that far along the
	 * straight line, so that the end radius tells the gap.
	 */
	static ArcGeometry withRadius(double radius, double s1, double s2, double e1, double e2, boolean clockwise, double tolerance) {
		double chord = Math.hypot(e1 - s1, e2 - s2);
		double size = Math.abs(radius);
		double height = size * size - chord * chord / 4;
		double across = height > 0 ? Math.sqrt(height) : 0;
		double reach = chord - 2 * size > 2 * tolerance && chord > 0 ? size / chord : 0.5;
		boolean left = clockwise == radius < 0;
		double u1 = chord > 0 ? (e1 - s1) / chord : 0;
		double u2 = chord > 0 ? (e2 - s2) / chord : 0;
		double c1 = s1 + (e1 - s1) * reach + (left ? -u2 : u2) * across;
		double c2 = s2 + (e2 - s2) * reach + (left ? u1 : -u1) * across;
		double half = chord < 2 * size ? 2 * Math.asin(chord / 2 / size) : Math.PI;
		double sweep = radius < 0 ? 2 * Math.PI - half : half;
		return new ArcGeometry(c1, c2, clockwise ? -sweep : sweep, Math.hypot(s1 - c1, s2 - c2), Math.hypot(e1 - c1, e2 - c2));
	}

	private static double positive(double angle) {
		double turned = angle % (2 * Math.PI);
		return turned <= 1e-9 ? turned + 2 * Math.PI : turned;
	}
}
