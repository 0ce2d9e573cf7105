package truelead.checker.machine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Plane;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** The G codes of a block that set modes, and the one that takes the block's axis words for something other than a motion. */
final class Modes {

	private static final int CONTOUR = Words.mask("PQR");
	private static final int NUMBER = Words.mask("P");

	private final MachineState state;
	private final Motion motion;
	private final Shifts shifts;
	private final Output out;

	Modes(MachineState state, Motion motion, Shifts shifts, Output out) {
		this.state = state;
		this.motion = motion;
		this.shifts = shifts;
		this.out = out;
	}

	/** Sets the modes of a block; the meaning that takes its axis words, or NONE. */
	Meaning before(Words words) {
		Meaning taker = Meaning.NONE;
		for (int i = 0; i < words.gCount(); i++) {
			List<Meaning> meanings = state.profile.gCode(words.gCode(i));
			if (meanings.isEmpty()) {
				unknownCode(words, i);
			}
			boolean pass = false;
			for (int m = 0; m < meanings.size(); m++) {
				pass |= meanings.get(m).motionByAxisWords();
			}
			pass = pass && moves(words, i);
			for (int m = 0; m < meanings.size(); m++) {
				Meaning meaning = meanings.get(m);
				if (pass && !meaning.motionByAxisWords()) {
					continue;
				}
				taker = takes(meaning, words) ? meaning : taker;
				mode(meaning, words, i);
			}
		}
		return taker;
	}

	/** Whether a code that can stand for a motion does: with axis words and no other motion in its block. */
	boolean moves(Words words, int index) {
		for (int i = 0; i < words.gCount(); i++) {
			Meaning other = motionMeaning(words.gCode(i));
			if (i != index && other != Meaning.NONE && !other.motionByAxisWords()) {
				return false;
			}
		}
		return motion.linearWords(words);
	}

	private boolean takes(Meaning meaning, Words words) {
		if (meaning == Meaning.MACHINE_COORDINATES) {
			return motion.linearWords(words);
		}
		if (meaning == Meaning.TURNING_CYCLE || meaning == Meaning.THREADING_CYCLE) {
			return words.gCount() > 0 && (motion.linearWords(words) || words.any(CONTOUR));
		}
		return meaning.takesAxisWords();
	}

	private void mode(Meaning meaning, Words words, int index) {
		switch (meaning) {
			case INCH -> unit(LengthUnit.INCH);
			case MILLIMETRE -> unit(LengthUnit.MM);
			case PLANE_XY -> state.plane = Plane.XY;
			case PLANE_ZX -> state.plane = Plane.ZX;
			case PLANE_YZ -> state.plane = Plane.YZ;
			case ABSOLUTE -> state.absolute = true;
			case INCREMENTAL -> state.absolute = false;
			case ARC_CENTRE_ABSOLUTE -> state.arcCentreAbsolute = true;
			case ARC_CENTRE_INCREMENTAL -> state.arcCentreAbsolute = false;
			case INVERSE_TIME -> feedMode(FeedMode.INVERSE_TIME, words.gRef(index));
			case FEED_PER_MINUTE -> feedMode(FeedMode.PER_MINUTE, words.gRef(index));
			case FEED_PER_REVOLUTION -> feedMode(FeedMode.PER_REVOLUTION, words.gRef(index));
			case CONSTANT_SURFACE_SPEED -> state.constantSurface = true;
			case CONSTANT_SPINDLE_SPEED -> state.constantSurface = false;
			case RETURN_INITIAL -> state.returnToInitial = true;
			case RETURN_R_LEVEL -> state.returnToInitial = false;
			case TAPPING_MODE -> state.tappingMode = true;
			case CUTTING_MODE -> state.tappingMode = false;
			case COMPENSATION_OFF -> compensation(Compensation.OFF, words);
			case COMPENSATION_LEFT -> compensation(Compensation.LEFT, words);
			case COMPENSATION_RIGHT -> compensation(Compensation.RIGHT, words);
			case LENGTH_OFFSET -> lengthOffset(words, index);
			case LENGTH_OFFSET_SUBTRACTED -> lengthOffset(subtracted(words, index));
			case LENGTH_OFFSET_OFF -> lengthOffset(Setting.NONE);
			case WORK_OFFSET -> workOffset(words, WorkOffset.ofCode(words.gCode(index)), index);
			case EXTENDED_WORK_OFFSET -> extendedOffset(words, index);
			case POLAR -> motion.polar().turnOn();
			case POLAR_OFF -> motion.polar().turnOff();
			case ROTATION_OFF -> shifts.rotationOff();
			case SCALE_OFF -> state.place.scale(Frame.SAME);
			case TILTED_PLANE_OFF -> shifts.tiltOff();
			case CANCEL_POSITION -> state.place.cancelPosition();
			default -> {
				return;
			}
		}
		state.changed();
	}

	private void unit(LengthUnit unit) {
		state.unit = unit;
		state.unitStated = true;
	}

	private void feedMode(FeedMode mode, WordRef word) {
		state.feedMode = mode;
		state.feedModeStated = Optional.of(word);
	}

	private void compensation(Compensation side, Words words) {
		state.compensation = side;
		if (side == Compensation.OFF) {
			state.compensationOffset = Setting.NONE;
		} else if (words.has('D')) {
			state.compensationOffset = words.setting('D');
		}
	}

	/** H and D words of a block without a code of their own change the offset in force. */
	void offsets(Words words) {
		if (words.has('D') && state.compensation != Compensation.OFF) {
			state.compensationOffset = words.setting('D');
			state.changed();
		}
		boolean milling = !state.profile.is(ProfileKey.TOOL_WORD, "turret");
		if (words.has('H') && milling && state.lengthOffset.isSet()) {
			Setting said = state.lengthOffset.value() < 0 ? negative(words.setting('H')) : words.setting('H');
			lengthOffset(said.known() && ofToolBefore(state.lengthOffset)
					? new Setting(said.value(), said.word(), Modal.CODE_OF_TOOL_BEFORE) : said);
			state.changed();
		}
	}

	/** Whether a word that stands above the tool change set it. */
	private boolean ofToolBefore(Setting offset) {
		return state.toolChange.isPresent() && offset.word().filter(word -> word.block().above(state.toolChange.get())).isPresent();
	}

	/** H under G44, told from the same number under G43 by its sign. */
	private Setting subtracted(Words words, int index) {
		return negative(words.has('H') ? words.setting('H') : new Setting(state.tool.value(), Optional.of(words.gRef(index)),
				Reason.of("no H word: the tool's own")));
	}

	private static Setting negative(Setting offset) {
		return new Setting(-offset.value(), offset.word(), offset.why());
	}

	private void lengthOffset(Words words, int index) {
		if (words.has('H')) {
			lengthOffset(words.setting('H'));
		} else if (!state.lengthOffset.isSet() || state.lengthOffset.word().filter(word -> word.address() == 'G').isPresent()) {
			lengthOffset(new Setting(state.tool.value(), Optional.of(words.gRef(index)), Reason.of("no H word: the tool's own")));
		}
	}

	private void lengthOffset(Setting offset) {
		if (offset.value() != state.lengthOffset.value()) {
			state.place.lose(state.profile.is(ProfileKey.TOOL_WORD, "turret") ? 2 : state.plane.axis());
		}
		state.lengthOffset = offset;
	}

	private void workOffset(Words words, int number, int index) {
		if (number != state.place.workOffset()) {
			state.place.workOffset(number);
			out.event(words.block(), Step.EventKind.WORK_OFFSET, words.gRef(index), new Setting(number, Optional.of(words.gRef(index)),
					Reason.NONE));
		}
	}

	private void extendedOffset(Words words, int index) {
		if (words.has('P') && words.value('P') >= 1) {
			workOffset(words, WorkOffset.FURTHER + (int) words.value('P'), index);
			words.hide(NUMBER);
		} else {
			workOffset(words, WorkOffset.FURTHER, index);
		}
	}

	private void unknownCode(Words words, int index) {
		WordRef word = words.gRef(index);
		boolean known = words.gCode(index) >= 0;
		if (motion.linearWords(words)) {
			out.unknownCode(words.block(), word.written(), word.written() + " is not a code this machine profile knows (a line such as "
					+ word.written().replace(" ", "") + " = tap would tell it): where its block ends is not known", word);
			motion.toUnknown(words, false);
			words.hide(-1);
		} else if (known) {
			out.remark(words.block(), word.written(),
					word.written() + " is not a code this machine profile knows: it is taken to change nothing here", Optional.of(word));
		}
	}

	/** The motion or cycle a code stands for; NONE for another kind of code. */
	Meaning motionMeaning(int code) {
		List<Meaning> meanings = state.profile.gCode(code);
		for (int m = 0; m < meanings.size(); m++) {
			Meaning meaning = meanings.get(m);
			if (meaning.motion() || meaning.cycle() || meaning == Meaning.CYCLE_OFF) {
				return meaning;
			}
		}
		return Meaning.NONE;
	}

	/** Pecking on the face, for one block: from where the tool stands to Z, where no X asks for a groove. */
	void facePeck(Words words) {
		boolean depth = words.has('Z') || words.has('W');
		Point from = state.place.here();
		if (!depth) {
			return;
		}
		Point to = state.place.frame().apply(motion.target(words));
		if (to.x() == from.x() || Double.isNaN(to.x())) {
			Cycle cycle = new Cycle(Cycle.Kind.PECK_DRILL, 740, words.block(), words.gRef(0), Map.of());
			out.step(new Step.Stroke(words.block(), state.cycleModal(740), cycle, from, from.z(), from.z(), to.z(), true, 1,
					motion.resolution(words)));
		}
	}
}
