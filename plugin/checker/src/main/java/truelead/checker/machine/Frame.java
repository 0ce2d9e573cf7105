package truelead.checker.machine;

import java.util.Arrays;
import truelead.checker.arithmetic.Functions;
import truelead.checker.program.Plane;

/**
 * How programmed coordinates lie in the frame of the work offset: a matrix of turn, scale and mirror, and a shift. Immutable. Terms with a
 * zero factor are left out, so that an axis that is not known does not spoil the others.
 */
final class Frame {

	static final Frame SAME = new Frame(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1}, new double[3]);

	private final double[] turn;
	private final double[] shift;
	private final boolean same;

	private Frame(double[] turn, double[] shift) {
		this.turn = turn;
		this.shift = shift;
		boolean plain = true;
		for (int i = 0; i < 9; i++) {
			plain &= turn[i] == (i % 4 == 0 ? 1 : 0);
		}
		this.same = plain && shift[0] == 0 && shift[1] == 0 && shift[2] == 0;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Frame frame && Arrays.equals(turn, frame.turn) && Arrays.equals(shift, frame.shift);
	}

	@Override
	public int hashCode() {
		return 31 * Arrays.hashCode(turn) + Arrays.hashCode(shift);
	}

	/** Shifted by some mm along each axis. */
	static Frame shift(double[] mm) {
		return new Frame(SAME.turn, mm.clone());
	}

	/** Turned about a point in a plane, counter-clockwise; angle in degrees. */
	static Frame rotation(Plane plane, double[] centre, double degrees) {
		double[] turn = SAME.turn.clone();
		double sine = Functions.sine(degrees);
		double cosine = Functions.cosine(degrees);
		turn[plane.first() * 4] = cosine;
		turn[plane.second() * 4] = cosine;
		turn[plane.first() * 3 + plane.second()] = -sine;
		turn[plane.second() * 3 + plane.first()] = sine;
		return about(turn, centre);
	}

	/** Scaled about a point by a factor for each axis; a negative one mirrors. */
	static Frame scale(double[] centre, double[] factors) {
		return about(new double[] {factors[0], 0, 0, 0, factors[1], 0, 0, 0, factors[2]}, centre);
	}

	private static Frame about(double[] turn, double[] centre) {
		double[] shift = new double[3];
		for (int row = 0; row < 3; row++) {
			shift[row] = centre[row];
			for (int column = 0; column < 3; column++) {
				shift[row] -= product(turn[row * 3 + column], centre[column]);
			}
			if (turn[row * 4] == 1 && Double.isNaN(shift[row])) {
				shift[row] = 0;
			}
		}
		return new Frame(turn, shift);
	}

	/** First the other, then this. */
	Frame after(Frame other) {
		if (same) {
			return other;
		}
		if (other.same) {
			return this;
		}
		double[] product = new double[9];
		for (int row = 0; row < 3; row++) {
			for (int column = 0; column < 3; column++) {
				for (int k = 0; k < 3; k++) {
					product[row * 3 + column] += product(turn[row * 3 + k], other.turn[k * 3 + column]);
				}
			}
		}
		return new Frame(product, new double[] {apply(0, other.shift[0], other.shift[1], other.shift[2]),
				apply(1, other.shift[0], other.shift[1], other.shift[2]), apply(2, other.shift[0], other.shift[1], other.shift[2])});
	}

	/** Whether programmed coordinates are those of the work offset. */
	boolean same() {
		return same;
	}

	/** A programmed position in the frame of the work offset. */
	Point apply(Point programmed) {
		if (same) {
			return programmed;
		}
		return new Point(apply(0, programmed.x(), programmed.y(), programmed.z()), apply(1, programmed.x(), programmed.y(), programmed.z()),
				apply(2, programmed.x(), programmed.y(), programmed.z()));
	}

	private double apply(int row, double x, double y, double z) {
		return product(turn[row * 3], x) + product(turn[row * 3 + 1], y) + product(turn[row * 3 + 2], z) + shift[row];
	}

	/** The programmed position of a place; scale and turn are perpendicular, so the inverse is the transposed over the squared factor. */
	Point programmed(Point place) {
		if (same) {
			return place;
		}
		double x = place.x() - shift[0];
		double y = place.y() - shift[1];
		double z = place.z() - shift[2];
		return new Point(back(0, x, y, z), back(1, x, y, z), back(2, x, y, z));
	}

	private double back(int column, double x, double y, double z) {
		double determinant = determinant();
		int[] other = {(column + 1) % 3, (column + 2) % 3};
		double sum = 0;
		for (int row = 0; row < 3; row++) {
			int r1 = (row + 1) % 3;
			int r2 = (row + 2) % 3;
			double cofactor = turn[r1 * 3 + other[0]] * turn[r2 * 3 + other[1]] - turn[r1 * 3 + other[1]] * turn[r2 * 3 + other[0]];
			sum += product(cofactor / determinant, row == 0 ? x : row == 1 ? y : z);
		}
		return sum;
	}

	private double determinant() {
		return turn[0] * (turn[4] * turn[8] - turn[5] * turn[7]) - turn[1] * (turn[3] * turn[8] - turn[5] * turn[6])
				+ turn[2] * (turn[3] * turn[7] - turn[4] * turn[6]);
	}

	/** Whether hands are turned about. */
	boolean mirrored() {
		return !same && determinant() < 0;
	}

	/** Whether lengths change. */
	boolean scaled() {
		return !same && (Math.abs(Math.abs(determinant()) - 1) > 1e-9
				|| Math.abs(turn[0] * turn[0] + turn[3] * turn[3] + turn[6] * turn[6] - 1) > 1e-9);
	}

	/** Factor along an axis that is not turned. */
	double factor(int axis) {
		return turn[axis * 4];
	}

	/** Whether the plane's arcs turn the other way round. */
	boolean flips(Plane plane) {
		int a = plane.first();
		int b = plane.second();
		return turn[a * 4] * turn[b * 4] - turn[a * 3 + b] * turn[b * 3 + a] < 0;
	}

	private static double product(double factor, double value) {
		return factor == 0 ? 0 : factor * value;
	}
}
