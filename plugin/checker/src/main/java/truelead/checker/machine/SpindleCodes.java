package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** The M codes of a block that act on spindle, tool, coolant and overrides: those before the motion and those behind it. */
final class SpindleCodes {

	/** A P below is no speed of a spindle, rev/min (common practice, no source). */
	private static final double LEAST_SPEED = 50;

	private final MachineState state;
	private final Output out;

	SpindleCodes(MachineState state, Output out) {
		this.state = state;
		this.out = out;
	}

	/** Whether one of the block's codes changes the tool. */
	boolean changesTool(Words words) {
		for (int i = 0; i < words.mCount(); i++) {
			if (state.profile.mCode(words.mCode(i)).contains(Meaning.TOOL_CHANGE)) {
				return true;
			}
		}
		return false;
	}

	/** Whether one of the block's codes calls or returns, so that P and L are no words of a cycle. */
	boolean calls(Words words) {
		for (int i = 0; i < words.mCount(); i++) {
			for (Meaning meaning : state.profile.mCode(words.mCode(i))) {
				if (meaning == Meaning.CALL || meaning == Meaning.LOCAL_CALL || meaning == Meaning.RETURN) {
					return true;
				}
			}
		}
		return false;
	}

	/** The tool change, where the block has one. */
	void changeTool(Words words, Tools tools) {
		for (int i = 0; i < words.mCount(); i++) {
			if (state.profile.mCode(words.mCode(i)).contains(Meaning.TOOL_CHANGE)) {
				state.changeCodeSeen = true;
				tools.change(words.block(), words.mRef(i));
			}
		}
	}

	/** What happens before the block's motion: spindle, coolant, rigid tapping, overrides. */
	void before(Words words) {
		for (int i = 0; i < words.mCount(); i++) {
			List<Meaning> meanings = state.profile.mCode(words.mCode(i));
			for (Meaning meaning : meanings) {
				before(meaning, words, i);
			}
			if (FurtherSpindles.stops(words.mCode(i))) {
				turn(SpindleTurn.STOPPED, words, i);
			} else if (meanings.isEmpty() && (FurtherSpindles.starts(words.mCode(i)) || mayStart(words))) {
				turn(SpindleTurn.UNKNOWN, words, i);
			}
		}
	}

	/**
	 * Whether a code that the profile does not know may start a second spindle, such as that of live tools: it has a speed, M33 S2000 or
	 * M133 P2000.
	 */
	private boolean mayStart(Words words) {
		boolean lathe = state.profile.isLathe();
		boolean speed = words.has('S') || lathe && words.gCount() == 0 && words.has('P') && words.value('P') >= LEAST_SPEED;
		return speed && (lathe ? !turns(words) : state.spindle == SpindleTurn.STOPPED);
	}

	private boolean turns(Words words) {
		for (int i = 0; i < words.mCount(); i++) {
			List<Meaning> meanings = state.profile.mCode(words.mCode(i));
			if (meanings.contains(Meaning.SPINDLE_CLOCKWISE) || meanings.contains(Meaning.SPINDLE_COUNTERCLOCKWISE)) {
				return true;
			}
		}
		return false;
	}

	private void before(Meaning meaning, Words words, int index) {
		switch (meaning) {
			case SPINDLE_CLOCKWISE -> turn(SpindleTurn.CLOCKWISE, words, index);
			case SPINDLE_COUNTERCLOCKWISE -> turn(SpindleTurn.COUNTERCLOCKWISE, words, index);
			case SPINDLE_ORIENT -> turn(SpindleTurn.STOPPED, words, index);
			case COOLANT_ON -> coolant(true, words, index);
			case RIGID_TAP_ON -> rigidOn(words, index);
			case RIGID_TAP_OFF -> rigidOff(words, index);
			case OVERRIDES_LOCKED -> locked(true);
			case OVERRIDES_FREE -> locked(false);
			default -> {
				// Behind the motion, or the flow's.
			}
		}
	}

	/** What happens behind the block's motion. */
	void after(Words words) {
		for (int i = 0; i < words.mCount(); i++) {
			for (Meaning meaning : state.profile.mCode(words.mCode(i))) {
				switch (meaning) {
					case SPINDLE_STOP -> turn(SpindleTurn.STOPPED, words, i);
					case COOLANT_OFF -> coolant(false, words, i);
					case STOP -> out.event(words.block(), Step.EventKind.STOP, words.mRef(i), Setting.NONE);
					case OPTIONAL_STOP -> {
						if (state.profile.yes(ProfileKey.OPTIONAL_STOP)) {
							out.event(words.block(), Step.EventKind.OPTIONAL_STOP, words.mRef(i), Setting.NONE);
						}
					}
					default -> {
						// Before the motion, or the flow's.
					}
				}
			}
		}
	}

	private void turn(SpindleTurn direction, Words words, int index) {
		state.spindle = direction;
		state.spindleWord = Optional.of(words.mRef(index));
		state.changed();
		out.event(words.block(), Step.EventKind.SPINDLE, words.mRef(index), state.speed);
	}

	private void coolant(boolean on, Words words, int index) {
		state.coolant = on;
		state.changed();
		out.event(words.block(), Step.EventKind.COOLANT, words.mRef(index), Setting.NONE);
	}

	private void rigidOn(Words words, int index) {
		Setting speed = words.has('S') ? words.setting('S') : Setting.NONE;
		state.rigid = Optional.of(speed);
		state.rigidWord = Optional.of(words.mRef(index));
		state.changed();
		List<WordRef> said = speed.word().map(word -> List.of(words.mRef(index), word)).orElse(List.of(words.mRef(index)));
		out.step(new Step.Event(words.block(), state.modal(), Step.EventKind.RIGID_ON, said, speed));
	}

	private void rigidOff(Words words, int index) {
		state.rigid = Optional.empty();
		state.rigidWord = Optional.empty();
		state.changed();
		out.event(words.block(), Step.EventKind.RIGID_OFF, words.mRef(index), Setting.NONE);
	}

	private void locked(boolean locked) {
		state.lockedByCode = locked;
		state.changed();
	}
}
