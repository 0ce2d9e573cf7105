package truelead.checker.thread;

/** The cone at the end of a drill. */
public final class DrillPoint {
	/** The point of an ordinary twist drill, radians (DIN 338; 118 degrees). */
	public static final double ORDINARY = Math.toRadians(118);

	private DrillPoint() {
	}

	/**
	 * The length of the point, d / 2 / tan(angle / 2): 10 mm at 118 degrees 3.004 mm.
	 *
	 * @param diameter   any unit; the length is in the same
	 * @param pointAngle included angle, radians, over 0 and up to π (flat)
	 */
	public static double length(double diameter, double pointAngle) {
		return Math.max(0, diameter / 2 / Math.tan(pointAngle / 2));
	}
}
