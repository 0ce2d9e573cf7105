package truelead.checker.machine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * Finds the contours of a chunk. A block belongs to one if it has nothing but N, X, Y, Z and one G0 or G1 with plain numbers, and X or Y
 * differs from the word before it in the chunk. Eight moves on either side of a contour are left as they are: whoever looks for the way into
 * and out of an arc or a cycle finds them there.
 */
final class ContourFinder {

	private static final int AROUND = 8;
	private static final int WORTH = 4;

	private static final byte BLANK = 0;
	private static final byte OTHER = 1;
	private static final byte MOVE = 2;
	private static final byte CONTOUR = 3;
	private static final byte STATE = 4;

	private final byte[] kinds;
	private final byte[] codes;
	private final boolean[] levels;
	private final double[][] values;
	private final double[] before = {Double.NaN, Double.NaN, Double.NaN};

	ContourFinder(int lines) {
		kinds = new byte[lines];
		codes = new byte[lines];
		levels = new boolean[lines];
		values = new double[3][lines];
	}

	/** Takes the lines in order. */
	void read(int line, Block block) {
		int code = -1;
		boolean feed = false;
		boolean axes = false;
		for (double[] axis : values) {
			axis[line] = Double.NaN;
		}
		for (Element element : block.elements()) {
			if (element instanceof Element.Comment) {
				continue;
			}
			if (!(element instanceof Element.Word word) || !(word.value() instanceof Expression.Number value) || word.extension() >= 0) {
				other(line);
				return;
			}
			int axis = word.address() - 'X';
			boolean straight = word.address() == 'G' && code < 0 && (value.value() == 0 || value.value() == 1);
			if (axis >= 0 && axis <= 2) {
				axes = true;
				values[axis][line] = value.value();
			} else if (straight) {
				code = (int) value.value();
			} else if (word.address() == 'F') {
				feed = true;
			} else if (word.address() != 'N') {
				other(line);
				return;
			}
		}
		codes[line] = (byte) code;
		if (!axes) {
			kinds[line] = code >= 0 || feed ? STATE : BLANK;
			return;
		}
		kinds[line] = !feed && aside(line) ? CONTOUR : MOVE;
		for (int axis = 0; axis < 3; axis++) {
			before[axis] = Double.isNaN(values[axis][line]) ? before[axis] : values[axis][line];
		}
	}

	private void other(int line) {
		kinds[line] = OTHER;
		Arrays.fill(before, Double.NaN);
	}

	/** Whether the block surely moves aside, and whether it changes level is known. */
	private boolean aside(int line) {
		double z = values[2][line];
		levels[line] = !Double.isNaN(z) && z != before[2];
		return (differs(values[0][line], before[0]) || differs(values[1][line], before[1])) && (Double.isNaN(z) || !Double.isNaN(before[2]));
	}

	private static boolean differs(double value, double before) {
		return !Double.isNaN(value) && !Double.isNaN(before) && value != before;
	}

	/** Whether the first moves are plain ones, as many as have to stand beside a contour. */
	boolean plainHead() {
		int moves = 0;
		for (int line = 0; line < kinds.length && kinds[line] != OTHER && moves < AROUND; line++) {
			moves = moves(moves, line);
		}
		return moves == AROUND;
	}

	/** Whether the last moves are plain ones. */
	boolean plainTail() {
		int moves = 0;
		for (int line = kinds.length - 1; line >= 0 && kinds[line] != OTHER && moves < AROUND; line--) {
			moves = moves(moves, line);
		}
		return moves == AROUND;
	}

	/** The contours of the lines read; {@code before} and {@code behind} tell whether plain moves enough stand there in the next chunks. */
	Contour[] contours(boolean before, boolean behind) {
		boolean[] inner = new boolean[kinds.length];
		for (int line = 0, moves = before ? AROUND : 0; line < kinds.length; line++) {
			inner[line] = moves >= AROUND;
			moves = moves(moves, line);
		}
		for (int line = kinds.length - 1, moves = behind ? AROUND : 0; line >= 0; line--) {
			inner[line] &= moves >= AROUND;
			moves = moves(moves, line);
		}
		List<Contour> found = new ArrayList<>();
		int line = 0;
		while (line < kinds.length) {
			int end = kinds[line] == CONTOUR && inner[line] ? end(line, inner) : line;
			if (end - line >= WORTH) {
				found.add(contour(line, end));
			}
			line = Math.max(end, line + 1);
		}
		return found.toArray(Contour[]::new);
	}

	private int moves(int count, int line) {
		return kinds[line] == OTHER ? 0 : kinds[line] == MOVE || kinds[line] == CONTOUR ? count + 1 : count;
	}

	/** Line behind the last one that goes on in the same way. */
	private int end(int from, boolean[] inner) {
		int code = codes[from];
		int end = from + 1;
		while (end < kinds.length && inner[end] && (kinds[end] == CONTOUR && (codes[end] < 0 || codes[end] == code) || kinds[end] == BLANK)) {
			end++;
		}
		return end;
	}

	private Contour contour(int from, int to) {
		double[] last = {Double.NaN, Double.NaN, Double.NaN};
		int moves = 0;
		boolean level = false;
		for (int line = from; line < to; line++) {
			if (kinds[line] == CONTOUR) {
				moves++;
				level |= levels[line];
				for (int axis = 0; axis < 3; axis++) {
					last[axis] = Double.isNaN(values[axis][line]) ? last[axis] : values[axis][line];
				}
			}
		}
		return new Contour(from, to, moves, codes[from], last[0], last[1], last[2], level);
	}
}
