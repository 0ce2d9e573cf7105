package truelead.checker.machine;

import truelead.checker.program.Plane;

/**
 * A position in the frame of the work offset in force, mm; a coordinate that is not known is NaN. Local shifts, rotation, scale and mirror
 * are applied.
 */
public record Point(double x, double y, double z) {

	/** Nothing is known. */
	public static final Point UNKNOWN = new Point(Double.NaN, Double.NaN, Double.NaN);

	/** Coordinate along axis 0 X, 1 Y, 2 Z; mm. */
	public double along(int axis) {
		return axis == 0 ? x : axis == 1 ? y : z;
	}

	/** The same position with one coordinate changed: along axis 0 X, 1 Y, 2 Z; mm. */
	public Point with(int axis, double value) {
		return switch (axis) {
			case 0 -> new Point(value, y, z);
			case 1 -> new Point(x, value, z);
			default -> new Point(x, y, value);
		};
	}

	/** Distance to another position in a plane, mm; NaN where a coordinate is not known. */
	public double distanceInPlane(Point other, Plane plane) {
		return Math.hypot(along(plane.first()) - other.along(plane.first()), along(plane.second()) - other.along(plane.second()));
	}

	/** Whether all three coordinates are known. */
	public boolean known() {
		return !Double.isNaN(x) && !Double.isNaN(y) && !Double.isNaN(z);
	}
}
