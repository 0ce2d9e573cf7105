package truelead.checker.lesson;

/** The points of a curve, in order; as many across as up. */
public final class Track {
	private final double[] across;
	private final double[] up;

	Track(double[] across, double[] up) {
		this.across = across.clone();
		this.up = up.clone();
	}

	/** A track through points given as across, up, across, up... */
	static Track through(double... pairs) {
		double[] across = new double[pairs.length / 2];
		double[] up = new double[pairs.length / 2];
		for (int i = 0; i < across.length; i++) {
			across[i] = pairs[2 * i];
			up[i] = pairs[2 * i + 1];
		}
		return new Track(across, up);
	}

	/** A full circle, mm. */
	static Track circle(double u, double v, double radius) {
		int parts = 72;
		double[] across = new double[parts + 1];
		double[] up = new double[parts + 1];
		for (int i = 0; i <= parts; i++) {
			across[i] = u + radius * Math.cos(2 * Math.PI * i / parts);
			up[i] = v + radius * Math.sin(2 * Math.PI * i / parts);
		}
		return new Track(across, up);
	}

	/** Number of points. */
	public int size() {
		return across.length;
	}

	/** Where a point stands across, in the unit of that axis of the {@link Plot}. */
	public double across(int point) {
		return across[point];
	}

	/** Where a point stands up, in the unit of that axis of the {@link Plot}. */
	public double up(int point) {
		return up[point];
	}
}
