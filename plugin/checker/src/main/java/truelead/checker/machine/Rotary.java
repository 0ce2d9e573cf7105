package truelead.checker.machine;

/**
 * Where the rotary axes A, B and C stand, degrees as programmed; 0 for an axis that has not moved, NaN where it is not known. Holes at one
 * place under two different positions are two holes.
 */
public record Rotary(double a, double b, double c) {

	/** No rotary axis has moved. */
	public static final Rotary NONE = new Rotary(0, 0, 0);

	/** By hand, like the hash: asked at every motion, and what the compiler makes of it takes milliseconds to set up. */
	@Override
	public boolean equals(Object other) {
		return other instanceof Rotary turned && Double.compare(a, turned.a) == 0 && Double.compare(b, turned.b) == 0
				&& Double.compare(c, turned.c) == 0;
	}

	@Override
	public int hashCode() {
		return 31 * (31 * Double.hashCode(a) + Double.hashCode(b)) + Double.hashCode(c);
	}

	/** The same position within one turn, 0 to below 360 degrees, to a ten-thousandth: at A360 the work stands as at A0. */
	public Rotary turned() {
		return equals(NONE) ? this : new Rotary(turned(a), turned(b), turned(c));
	}

	private static double turned(double degrees) {
		double within = Math.rint((degrees - 360 * Math.floor(degrees / 360)) * 1e4) / 1e4;
		return within >= 360 ? 0 : within + 0.0;
	}

	/** Angle of axis 0 A, 1 B, 2 C; degrees. */
	public double along(int axis) {
		return axis == 0 ? a : axis == 1 ? b : c;
	}

	/** The same position with those axes turned that are said, in degrees; NaN for the others. */
	Rotary to(double newA, double newB, double newC) {
		boolean said = newA == newA || newB == newB || newC == newC;
		return said ? new Rotary(newA == newA ? newA : a, newB == newB ? newB : b, newC == newC ? newC : c) : this;
	}

	/** The same position with one axis turned: 0 A, 1 B, 2 C; degrees. */
	public Rotary with(int axis, double degrees) {
		return switch (axis) {
			case 0 -> new Rotary(degrees, b, c);
			case 1 -> new Rotary(a, degrees, c);
			default -> new Rotary(a, b, degrees);
		};
	}
}
