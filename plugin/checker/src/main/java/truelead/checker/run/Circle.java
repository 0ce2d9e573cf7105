package truelead.checker.run;

import java.util.function.IntPredicate;

/**
 * A circle through points in a plane that lie on it but for rounding; mm.
 *
 * @param u      its centre along the plane's first axis
 * @param v      its centre along the second
 * @param radius its radius, of one that becomes wider or narrower that of the middle
 */
record Circle(double u, double v, double radius) {

	/** A pivot below this part of the largest one leaves the centre open: the points lie on a line. */
	private static final double FLAT = 1e-13;

	/**
	 * The circle that fits points best: of u² + v² = 2 a u + 2 b v + c, and where it may be a cone's + d w, the sum of squared differences
	 * is least (method of least squares); null where they lie on a line.
	 *
	 * @param points along the plane's first axis, along its second, and along the axis across it
	 * @param use    which of them count
	 * @param cone   whether the radius may change evenly along the axis
	 */
	static Circle through(double[][] points, int from, int to, IntPredicate use, boolean cone) {
		int unknowns = cone ? 4 : 3;
		double[][] sums = new double[unknowns][unknowns + 1];
		double[] row = new double[unknowns + 1];
		double u0 = points[0][from];
		double v0 = points[1][from];
		double w0 = points[2][from];
		for (int i = from; i <= to; i++) {
			if (!use.test(i)) {
				continue;
			}
			double u = points[0][i] - u0;
			double v = points[1][i] - v0;
			row[0] = u;
			row[1] = v;
			row[2] = 1;
			if (cone) {
				row[3] = points[2][i] - w0;
			}
			row[unknowns] = u * u + v * v;
			for (int j = 0; j < unknowns; j++) {
				for (int k = j; k <= unknowns; k++) {
					sums[j][k] += row[j] * row[k];
				}
			}
		}
		double[] solved = solve(sums);
		if (solved == null) {
			return null;
		}
		double a = solved[0] / 2;
		double b = solved[1] / 2;
		double middle = cone ? solved[3] * (points[2][to] - w0) / 2 : 0;
		double square = solved[2] + middle + a * a + b * b;
		return square > 0 ? new Circle(u0 + a, v0 + b, Math.sqrt(square)) : null;
	}

	/** Solves the normal equations, of which the upper half is given, by elimination; null where they leave something open. */
	private static double[] solve(double[][] sums) {
		int unknowns = sums.length;
		double largest = 0;
		for (int i = 0; i < unknowns; i++) {
			largest = Math.max(largest, sums[i][i]);
			for (int j = 0; j < i; j++) {
				sums[i][j] = sums[j][i];
			}
		}
		for (int i = 0; i < unknowns; i++) {
			if (!(sums[i][i] > FLAT * largest)) {
				return null;
			}
			for (int j = i + 1; j < unknowns; j++) {
				double part = sums[j][i] / sums[i][i];
				for (int k = i; k <= unknowns; k++) {
					sums[j][k] -= part * sums[i][k];
				}
			}
		}
		double[] solved = new double[unknowns];
		for (int i = unknowns - 1; i >= 0; i--) {
			double rest = sums[i][unknowns];
			for (int k = i + 1; k < unknowns; k++) {
				rest -= sums[i][k] * solved[k];
			}
			solved[i] = rest / sums[i][i];
		}
		return solved;
	}

	/** Distance of a point from the centre, mm. */
	double distance(double u, double v) {
		return Math.hypot(u - this.u, v - this.v);
	}

	/** How far a point lies from the circle, mm. */
	double beside(double u, double v) {
		return Math.abs(distance(u, v) - radius);
	}

	/** The angle about the centre from one point to another, radians between minus and plus half a turn, positive counter-clockwise. */
	double angle(double fromU, double fromV, double toU, double toV) {
		double a = fromU - u;
		double b = fromV - v;
		double c = toU - u;
		double d = toV - v;
		return Math.atan2(a * d - b * c, a * c + b * d);
	}
}
