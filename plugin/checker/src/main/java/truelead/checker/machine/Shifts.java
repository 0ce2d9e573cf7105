package truelead.checker.machine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Codes that shift, turn, scale or mirror what is programmed behind them. */
final class Shifts {

	private static final char[] LETTERS = {'X', 'Y', 'Z'};
	private static final char[] FACTORS = {'I', 'J', 'K'};
	private static final int AXIS_OF_TURN = Words.mask("IJK");

	private final MachineState state;
	private final Place place;
	private final Motion motion;
	private final Output out;
	private final double[] localShift = new double[3];
	private double angle;

	Shifts(MachineState state, Motion motion, Output out) {
		this.state = state;
		this.place = state.place;
		this.motion = motion;
		this.out = out;
	}

	/** What later blocks depend on. */
	List<Object> memory() {
		return List.of(angle, localShift[0], localShift[1], localShift[2]);
	}

	/** G52: a local zero; G52 X0 Y0 takes it back. */
	void local(Words words) {
		for (int axis = 0; axis < 3; axis++) {
			if (words.has(LETTERS[axis])) {
				motion.checkKnown(words, LETTERS[axis]);
				double value = state.mm(words, LETTERS[axis]);
				localShift[axis] = words.incremental(LETTERS[axis], !state.absolute) ? localShift[axis] + value : value;
			}
		}
		place.local(Frame.shift(localShift));
	}

	/** G92: the present place is called so. */
	void setPosition(Words words) {
		double[] programmed = {Double.NaN, Double.NaN, Double.NaN};
		for (int axis = 0; axis < 3; axis++) {
			if (words.has(LETTERS[axis])) {
				motion.checkKnown(words, LETTERS[axis]);
				programmed[axis] = state.mm(words, LETTERS[axis]);
			}
		}
		place.setPosition(programmed);
	}

	/**
	 * G68: a rotation about a point, the present one where none is said; with I, J, K out of the plane, whose places are not known here.
	 */
	void rotate(Words words) {
		Point now = place.programmed();
		double[] centre = {0, 0, 0};
		for (int axis = 0; axis < 3; axis++) {
			centre[axis] = words.has(LETTERS[axis]) ? state.mm(words, LETTERS[axis]) : now.along(axis);
		}
		if (words.any(AXIS_OF_TURN)) {
			tilt(words);
			return;
		}
		if (!words.has('R')) {
			out.notFollowed(words.block(), "a rotation has no angle R", Optional.empty());
			return;
		}
		motion.checkKnown(words, 'R');
		angle = words.incremental('R', !state.absolute) ? angle + words.value('R') : words.value('R');
		place.rotation(Frame.rotation(state.plane, centre, angle));
	}

	void rotationOff() {
		angle = 0;
		place.rotation(Frame.SAME);
	}

	/** G51: P for all axes, or I, J, K for each; below zero it mirrors. P without a point counts in thousandths. */
	void scale(Words words) {
		Point now = place.programmed();
		double[] centre = new double[3];
		double[] factors = {1, 1, 1};
		for (int axis = 0; axis < 3; axis++) {
			centre[axis] = words.has(LETTERS[axis]) ? state.mm(words, LETTERS[axis]) : now.along(axis);
			if (words.has('P')) {
				factors[axis] = factor(words, 'P');
			} else if (words.has(FACTORS[axis])) {
				factors[axis] = factor(words, FACTORS[axis]);
			}
		}
		if (factors[0] == 0 || factors[1] == 0 || factors[2] == 0) {
			out.notFollowed(words.block(), "a scale of 0 leaves nothing", Optional.empty());
			return;
		}
		place.scale(Frame.scale(centre, factors));
	}

	private double factor(Words words, char letter) {
		motion.checkKnown(words, letter);
		double value = words.value(letter);
		return words.withoutPoint(letter) && Math.abs(value) >= 10 ? value / 1000 : value;
	}

	/** G51.1: mirrored at the coordinate that each axis word says. */
	void mirror(Words words) {
		double[] centre = new double[3];
		double[] factors = {1, 1, 1};
		for (int axis = 0; axis < 3; axis++) {
			if (words.has(LETTERS[axis])) {
				centre[axis] = state.mm(words, LETTERS[axis]);
				factors[axis] = -1;
			}
		}
		place.mirror(Frame.scale(centre, factors).after(place.mirrorFrame()));
	}

	/** G50.1: ends the mirror of the axes that have words, or all. */
	void mirrorOff(Words words) {
		Frame left = place.mirrorFrame();
		double[] factors = new double[3];
		double[] centre = new double[3];
		boolean all = !words.any(Motion.AXES);
		Point zero = left.apply(new Point(0, 0, 0));
		for (int axis = 0; axis < 3; axis++) {
			boolean stays = !all && !words.has(LETTERS[axis]) && left.factor(axis) < 0;
			factors[axis] = stays ? -1 : 1;
			centre[axis] = zero.along(axis) / 2;
		}
		place.mirror(Frame.scale(centre, factors));
	}

	/** A plane turned in space: its places are in a frame of its own, named by the words. */
	void tilt(Words words) {
		List<Object> said = new ArrayList<>(List.of("tilt"));
		for (char letter : "XYZABCIJKPQR".toCharArray()) {
			if (words.has(letter)) {
				said.add(letter);
				said.add(words.value(letter));
			}
		}
		place.tilt(said);
	}

	void tiltOff() {
		place.tilt(List.of());
	}

	/** G10: data of a work offset; the size of the shift is taken as the data's name. Tool data is of no concern. */
	void setData(Words words) {
		double kind = words.has('L') ? words.value('L') : -1;
		boolean work = kind == 2 || kind == 20;
		if (!work || !motion.axisWords(words) && !words.has('R')) {
			return;
		}
		int number = words.has('P') && !Double.isNaN(words.value('P')) ? (int) words.value('P') : 0;
		int offset = number == 0 ? kind == 20 ? place.workOffset() : 53 : kind == 20 && number > 9 ? WorkOffset.FURTHER + number
				: WorkOffset.ofData(number);
		boolean consistent = kind == 2 && state.absolute;
		List<Object> data = new ArrayList<>(Arrays.asList(kind, consistent ? 0 : words.block()));
		for (char letter : "XYZABCR".toCharArray()) {
			if (words.has(letter)) {
				data.add(letter);
				data.add(words.value(letter));
			}
		}
		place.offsetData(offset, data);
	}
}
