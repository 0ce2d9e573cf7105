package truelead.checker.program;

/** The working plane and with it the axis that drills, taps and helices advance along: 0 X, 1 Y, 2 Z. */
public enum Plane {
	XY(0, 1, 2), ZX(2, 0, 1), YZ(1, 2, 0);

	private final int first;
	private final int second;
	private final int axis;

	Plane(int first, int second, int axis) {
		this.first = first;
		this.second = second;
		this.axis = axis;
	}

	/** First axis of the plane, right-handed order. */
	public int first() {
		return first;
	}

	/** Second axis of the plane, right-handed order. */
	public int second() {
		return second;
	}

	/** The axis across the plane. */
	public int axis() {
		return axis;
	}
}
