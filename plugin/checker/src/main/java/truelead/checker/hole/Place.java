package truelead.checker.hole;

import truelead.checker.machine.Rotary;
import truelead.checker.program.Plane;

/**
 * Where a hole is: the frame that positions are in, the plane across the hole's axis, and the position in it.
 *
 * @param frame      as in {@link truelead.checker.machine.Modal#frame()}, set apart for each further program of the file
 * @param workOffset as in {@link truelead.checker.machine.Modal#workOffset()}
 * @param rotary     where the rotary axes stand
 * @param plane      the plane across the hole; {@link Plane#axis()} is the hole's axis
 * @param u          coordinate along the plane's first axis, mm; NaN where not known
 * @param v          coordinate along the plane's second axis, mm; NaN where not known
 */
public record Place(int frame, int workOffset, Rotary rotary, Plane plane, double u, double v) {

	/** Frames that a program of a file can have at most; each further program counts its own from there. */
	static final int FRAMES = 100_000;

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Place place && Double.compare(u, place.u) == 0 && Double.compare(v, place.v) == 0
				&& comparable(place);
	}

	/**
	 * Coordinates are round numbers, of which an ordinary hash makes the same few again and again; thousands of holes may differ by their
	 * turned part alone.
	 */
	@Override
	public int hashCode() {
		return scatter(Double.doubleToLongBits(u) * 31 + frame, Double.doubleToLongBits(v) * 31 + workOffset
				+ ((long) rotary.hashCode() << Integer.SIZE));
	}

	/** A hash of two numbers that spreads the cells of a grid too. */
	static int scatter(long one, long other) {
		long mixed = (one * 0x9E3779B97F4A7C15L ^ other) * 0xC2B2AE3D27D4EB4FL;
		return (int) (mixed >>> 32);
	}

	/** Whether both coordinates are known. */
	public boolean known() {
		return !Double.isNaN(u) && !Double.isNaN(v);
	}

	/** Whether both are positions that can be compared: same frame, work offset, rotary position and plane. */
	public boolean comparable(Place other) {
		return frame == other.frame && workOffset == other.workOffset && plane == other.plane && rotary.equals(other.rotary);
	}

	/** Number of the program in the file that it belongs to, from 0. */
	public int part() {
		return frame / FRAMES;
	}

	/** Whether both are positions in the same program of the file. */
	public boolean sameProgram(Place other) {
		return part() == other.part();
	}

	/** Distance in the plane, mm; infinite where the two cannot be compared, NaN where a coordinate is not known. */
	public double distance(Place other) {
		return comparable(other) ? Math.hypot(u - other.u, v - other.v) : Double.POSITIVE_INFINITY;
	}

	/** The same frame, plane and rotary position at another point, mm in the plane; NaN where a coordinate is not known. */
	public Place at(double otherU, double otherV) {
		return new Place(frame, workOffset, rotary, plane, otherU, otherV);
	}
}
