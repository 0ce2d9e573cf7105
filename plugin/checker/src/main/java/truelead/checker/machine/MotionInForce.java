package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.profile.Meaning;

/** The motion that axis words make: which code has put it in force, and how each is made. */
final class MotionInForce {

	private final MachineState state;
	private final Motion motion;
	private final ArcMotion arcs;
	private final Modes modes;
	private final CannedCycles cycles;
	private final TurningPasses passes;
	/** What a motion for one block alone gives way to again. */
	private Meaning before = Meaning.RAPID;

	MotionInForce(MachineState state, Motion motion, ArcMotion arcs, Modes modes, CannedCycles cycles, TurningPasses passes) {
		this.state = state;
		this.motion = motion;
		this.arcs = arcs;
		this.modes = modes;
		this.cycles = cycles;
		this.passes = passes;
	}

	/** A plain motion by its code, times ten, is in force from now on. */
	void takes(Meaning made, int code) {
		before = made;
		state.motion = made;
		state.motionCode = code;
	}

	/** What later blocks depend on besides the state. */
	Object memory() {
		return before;
	}

	/**
	 * Puts the motion codes of a block in force; true where a cycle starts. G80 beside another motion ends the cycle and that motion is
	 * made.
	 */
	boolean change(Words words) {
		int motionWord = -1;
		int offWord = -1;
		for (int i = 0; i < words.gCount(); i++) {
			Meaning meaning = modes.motionMeaning(words.gCode(i));
			if (meaning.motionByAxisWords() && !modes.moves(words, i)) {
				continue;
			}
			offWord = meaning == Meaning.CYCLE_OFF ? i : offWord;
			motionWord = meaning == Meaning.CYCLE_OFF || meaning == Meaning.NONE ? motionWord : i;
		}
		if (offWord >= 0) {
			cycles.cancel(words.block(), Optional.of(words.gRef(offWord)));
			state.motion = Meaning.NONE;
		}
		if (motionWord < 0) {
			return false;
		}
		Meaning next = modes.motionMeaning(words.gCode(motionWord));
		if (next.cycle() && motionWord < offWord) {
			return false;
		}
		if (next.cycle()) {
			cycles.start(next, words.gCode(motionWord), words, words.gRef(motionWord));
		} else if (cycles.on()) {
			cycles.cancel(words.block(), Optional.of(words.gRef(motionWord)));
		}
		before = next == Meaning.FLOATING_TAP && !state.motion.cycle() ? state.motion : next;
		state.motion = next;
		state.motionCode = words.gCode(motionWord);
		return next.cycle();
	}

	/** Makes the motion in force with the axis words of a block. */
	void make(Words words) {
		motion.startSomewhere(words, state.plane, state.motion == Meaning.ARC_CLOCKWISE || state.motion == Meaning.ARC_COUNTERCLOCKWISE);
		switch (state.motion) {
			case RAPID -> motion.straight(words, true, state.modal());
			case LINEAR -> motion.straight(words, false, state.modal());
			case FLOATING_TAP -> {
				motion.straight(words, false, state.lockedModal());
				state.motion = before;
			}
			case ARC_CLOCKWISE -> arcs.make(words, true);
			case ARC_COUNTERCLOCKWISE -> arcs.make(words, false);
			case SKIP_MOTION -> motion.toUnknown(words, false);
			case SYNCHRONISED_MOTION, SYNCHRONISED_TAP, SYNCHRONISED_IN, SYNCHRONISED_OUT -> motion.synchronised(words, state.motionCode,
					state.motion);
			case TURNING_PASS -> passes.pass(words, false);
			case THREADING_PASS -> passes.pass(words, true);
			case FACING_PASS -> {
				// It comes back to where it started.
			}
			default -> motion.straight(words, true, state.modal());
		}
	}
}
