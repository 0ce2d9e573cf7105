package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/**
 * An arc or helix about a centre given by I and J from its start, all of it known.
 *
 * @param code 2 clockwise, 3 the other way
 * @param from X, Y and Z of its start
 * @param to   X, Y and Z of its end
 * @param i    centre less start along X
 * @param j    centre less start along Y
 * @param rest its other words (feed, compensation, ...), parted by spaces
 */
record Arc(Block block, int code, double[] from, double[] to, double i, double j, String rest) {

	private static final double SAME = 1e-6;

	/** The arc of a block, where it is one and nothing of it is open. */
	static Optional<Arc> of(Block block, Course.State before) {
		boolean named = Words.says(block, 'G', 2, 3);
		int code = Words.says(block, 'G', 2) ? 2 : Words.says(block, 'G', 3) ? 3 : before.motion();
		boolean arc = (code == 2 || code == 3) && (named || before.cycle() == 0 && !Words.says(block, 'G', 0, 1, 80))
				&& Words.has(block, "IJ") && !Words.has(block, "RKPL");
		if (!arc || before.relative() || Words.call(block) || Words.says(block, 'G', 43, 49)) {
			return Optional.empty();
		}
		double[] to = {before.end(block, 'X'), before.end(block, 'Y'), before.end(block, 'Z')};
		double known = before.x() + before.y() + before.z() + to[0] + to[1] + to[2];
		StringBuilder rest = new StringBuilder();
		block.words().stream().filter(word -> "XYZIJN".indexOf(word.address()) < 0 && !(word.address() == 'G' && Words.value(word) == code))
				.forEach(word -> rest.append(' ').append(Words.written(block, word)));
		return Double.isNaN(known) ? Optional.empty()
				: Optional.of(new Arc(block, code, before.place(), to, Words.number(block, 'I', 0), Words.number(block, 'J', 0),
						rest.toString().strip()));
	}

	boolean full() {
		return Math.hypot(to[0] - from[0], to[1] - from[1]) < SAME;
	}

	double radius() {
		return Math.hypot(i, j);
	}

	/** The angle it goes through, in radians, above 0. */
	double sweep() {
		double start = Math.atan2(-j, -i);
		double end = Math.atan2(to[1] - from[1] - j, to[0] - from[0] - i);
		double turned = (code == 3 ? end - start : start - end) % (2 * Math.PI);
		return full() ? 2 * Math.PI : turned < 0 ? turned + 2 * Math.PI : turned;
	}

	/** X, Y and Z where so much of it, 0 to 1, is done. */
	double[] at(double share) {
		double angle = Math.atan2(-j, -i) + (code == 3 ? 1 : -1) * sweep() * share;
		return new double[] {from[0] + i + radius() * Math.cos(angle), from[1] + j + radius() * Math.sin(angle),
				from[2] + (to[2] - from[2]) * share};
	}

	/** The same in so many arcs one behind the other, each a block. */
	String inParts(int parts, int decimals) {
		StringBuilder text = new StringBuilder();
		double[] start = from;
		for (int part = 1; part <= parts; part++) {
			double[] end = part == parts ? to : at((double) part / parts);
			text.append("G").append(code);
			for (int axis = 0; axis < 3; axis++) {
				text.append(' ').append("XYZ".charAt(axis)).append(Figures.of(end[axis], decimals));
			}
			text.append(" I").append(Figures.of(from[0] + i - start[0], decimals)).append(" J")
					.append(Figures.of(from[1] + j - start[1], decimals));
			text.append(part == 1 && !rest.isEmpty() ? " " + rest : "").append(part == 1 ? " " + Words.comments(block) : "")
					.append(part < parts ? "\n" : "");
			start = end;
		}
		return text.toString();
	}
}
