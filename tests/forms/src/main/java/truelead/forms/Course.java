package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import truelead.grammar.Block;

/**
 * Where the tool stands and what is in force before each block of a plain program; worked out here a second time, without the checker's
 * machine.
 */
final class Course {

	private static final String AXES = "XYZ";

	/**
	 * What holds before a block.
	 *
	 * @param place   X, Y and Z as programmed, NaN where they are not known
	 * @param motion  code of the motion in force, 0 to 3, or 32, 33, 76 or 92; -1 where none is
	 * @param cycle   code of the canned cycle in force, 0 for none
	 * @param relative whether G91 is in force
	 */
	record State(double[] place, int motion, int cycle, boolean relative) {

		double x() {
			return place[0];
		}

		double y() {
			return place[1];
		}

		double z() {
			return place[2];
		}

		/** Where the block leads along an axis. */
		double end(Block block, char axis) {
			double from = place[AXES.indexOf(axis)];
			return relative ? from + Words.number(block, axis, 0) : Words.number(block, axis, from);
		}
	}

	private Course() {
	}

	/** The states before the blocks of a program, in their order. */
	static List<State> of(Program program) {
		List<State> states = new ArrayList<>();
		State now = new State(new double[] {Double.NaN, Double.NaN, Double.NaN}, -1, 0, false);
		for (Block block : program.blocks()) {
			boolean relative = Words.says(block, 'G', 91) || now.relative() && !Words.says(block, 'G', 90);
			State during = new State(now.place(), motion(block, now.motion()), cycle(block, now.cycle()), relative);
			states.add(new State(now.place(), now.motion(), now.cycle(), relative));
			now = new State(behind(block, during), during.motion(), during.cycle(), relative);
		}
		return states;
	}

	private static int motion(Block block, int before) {
		for (int code : new int[] {0, 1, 2, 3, 32, 33, 76, 92}) {
			if (Words.says(block, 'G', code, code + 0.1)) {
				return code;
			}
		}
		return Words.cycle(block) > 0 || Words.says(block, 'G', 80) ? -1 : before;
	}

	private static int cycle(Block block, int before) {
		return Words.cycle(block) > 0 ? Words.cycle(block) : Words.says(block, 'G', 0, 1, 2, 3, 32, 33, 76, 80) ? 0 : before;
	}

	private static double[] behind(Block block, State during) {
		double[] place = during.place().clone();
		boolean lost = Words.call(block) || Words.skipped(block) || during.motion() == 76 || during.motion() == 92
				|| Words.says(block, 'G', 70, 71, 72);
		boolean shifted = Words.says(block, 'G', 54, 55, 56, 57, 58, 59, 52, 54.1, 92, 68, 69, 15, 16, 51, 50) || Words.has(block, "O");
		for (int axis = 0; axis < place.length; axis++) {
			char letter = AXES.charAt(axis);
			boolean named = Words.has(block, String.valueOf(letter));
			boolean away = axis == 2 && (during.cycle() > 0 || Words.says(block, 'G', 43, 44, 49) || Words.toolChange(block));
			if (Words.says(block, 'G', 4)) {
				continue;
			}
			place[axis] = lost && (named || !Words.has(block, AXES)) || axis == 2 && during.cycle() > 0 ? Double.NaN : named
					? during.end(block, letter) : shifted || away ? Double.NaN : place[axis];
		}
		return place;
	}
}
