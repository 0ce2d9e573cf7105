package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.grammar.MotionWords;

/**
 * Does what the words of one block say: modes, tool change, feed and speed, spindle and coolant, motion, stops. That is RS-274/NGC's order
 * but for the tool change, which comes before F and S, so that those of its own block count as the new tool's. Calls and ends are the
 * flow's.
 */
final class BlockExecutor {

	private static final int FEED_SPEED = Words.mask("FS");
	private static final int OFFSETS = Words.mask("HD");
	private static final int ARC = Words.mask("IJKR");
	private static final int CALL_WORDS = Words.mask("PLQH");

	/** What motions, shifts and passes remember before the first block. */
	private static final List<Object> NOTHING =
			List.of(List.of(Setting.NONE, Setting.NONE, List.of(false, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, Double.NaN, Double.NaN)),
					List.of(0.0, 0.0, 0.0, 0.0), TurningPasses.NOTHING, List.of(Optional.empty(), Optional.empty(), Double.NaN,
							Double.NaN, 0.0));

	private final MachineState state;
	private final Output out;
	private final Motion motion;
	private final PlainMotions plain;
	private final TurningPasses passes;
	private final CannedCycles cycles;
	private final CalledCycles called;
	private final Rows rows;
	private final Shifts shifts;
	private final Tools tools;
	private final Modes modes;
	private final SpindleCodes spindle;
	private final MotionInForce inForce;
	private final BooleanSupplier aboutPoles;
	private boolean data;
	private boolean machine;

	/**
	 * @param callsCycles whether the program calls its cycles by a code of their own
	 * @param aboutPoles  whether it has angles and radii about poles
	 */
	BlockExecutor(MachineState state, Output out, Meter meter, BooleanSupplier callsCycles, BooleanSupplier aboutPoles) {
		this.aboutPoles = aboutPoles;
		this.state = state;
		this.out = out;
		this.motion = new Motion(state, out);
		this.plain = new PlainMotions(state, out);
		this.passes = new TurningPasses(state, motion, out);
		this.cycles = new CannedCycles(state, motion, out, meter);
		this.called = new CalledCycles(state, cycles, callsCycles);
		this.rows = new Rows(state, cycles, meter);
		this.shifts = new Shifts(state, motion, out);
		this.tools = new Tools(state, out);
		this.modes = new Modes(state, motion, shifts, out);
		this.spindle = new SpindleCodes(state, out);
		this.inForce = new MotionInForce(state, motion, new ArcMotion(state, motion, out), modes, cycles, passes);
	}

	/** Whether a canned cycle or a motion stands that makes axis words move. */
	boolean moves(Words words) {
		return motion.axisWords(words);
	}

	/** Whether axis words are something other than places: polar, data, under a cycle. */
	boolean readsOtherwise() {
		return data || motion.polar().on() || cycles.on();
	}

	/** Whether a canned cycle is in force. */
	boolean onCycle() {
		return cycles.on();
	}

	/**
	 * Goes over the row of places under a canned cycle that begins where a program stands; false where there is none, and nothing is done.
	 */
	boolean row(CallFrame frame, boolean skippable) {
		return !data && !motion.polar().on() && rows.follow(frame, skippable);
	}

	/** Whether blocks that are nothing but a motion may be made {@link #plainMotion} by the profile. */
	boolean plainMotions() {
		return plain.possible();
	}

	/** Makes the motion of a block that is nothing but one; false where the state or a word asks for more, and nothing is done. */
	boolean plainMotion(MotionWords words, Supplier<BlockRef> block) {
		Meaning made = readsOtherwise() ? Meaning.NONE : plain.motion(words);
		if (made == Meaning.NONE) {
			return false;
		}
		if (words.code() >= 0) {
			inForce.takes(made, 10 * words.code());
		}
		plain.make(made, words, block.get());
		return true;
	}

	/** Makes the holes of a pattern under the cycle in force; false where the words say none. */
	boolean pattern(Words words) {
		return cycles.on() && cycles.pattern(words);
	}

	/** Whether the modal state and the cycle in force are all that later blocks depend on. */
	boolean atRest() {
		return !data && state.motion != Meaning.FLOATING_TAP
				&& NOTHING.equals(List.of(motion.memory(), shifts.memory(), passes.memory(), called.memory()));
	}

	/** The cycle in force. */
	CannedCycles.Kept cycle() {
		return cycles.kept();
	}

	/** Goes on with what was kept {@link #atRest}. */
	void resume(CannedCycles.Kept cycle) {
		cycles.resume(cycle);
	}

	/** Whether one of the block's words may change the tool; {@code toolWordChanges} where the program has no change code. */
	boolean changesTool(Words words, BooleanSupplier toolWordChanges) {
		return words.mCount() > 0 && spindle.changesTool(words)
				|| words.has('T') && (state.profile.is(ProfileKey.TOOL_WORD, "turret") || toolWordChanges(words, toolWordChanges));
	}

	/** All that later blocks depend on, the modal state aside. */
	List<Object> memory() {
		return List.of(inForce.memory(), data, motion.memory(), shifts.memory(), passes.memory(), cycles.memory(), called.memory());
	}

	/** Whether the words of the next block are machine coordinates, by a statement beside them. */
	void machineCoordinates(boolean beside) {
		machine = beside;
	}

	/** Executes the words, but for calls, macro calls and ends; {@code toolWordChanges} where the program has no change code. */
	void execute(Words words, BooleanSupplier toolWordChanges) {
		if (data) {
			data = !has(words, Meaning.SET_DATA_END);
			return;
		}
		if (words.gCount() > 0 && pattern(words)) {
			return;
		}
		if (words.machineAxes() && has(words, Meaning.TAP_LEFT)) {
			// G74 X1=0: in richer languages the way to the reference points of the machine's axes (from memory)
			words.hide(Motion.AXES);
			motion.home(words);
			return;
		}
		if (setsPole(words)) {
			motion.polar().setPole(words, words.gCode(words.gCount() - 1));
			return;
		}
		Meaning taker = words.gCount() == 0 ? Meaning.NONE : modes.before(words);
		if (machine && motion.linearWords(words)) {
			taker = Meaning.MACHINE_COORDINATES;
		}
		if (words.has('T')) {
			tools.select(words, toolWordChanges(words, toolWordChanges), spindle.changesTool(words));
		}
		if (words.mCount() > 0) {
			spindle.changeTool(words, tools);
			tools.makeReady(words);
		}
		if (words.any(FEED_SPEED) && taker != Meaning.DWELL) {
			feedAndSpeed(words, taker);
		}
		if (words.mCount() > 0) {
			spindle.before(words);
		}
		int ofTheCall = words.mCount() > 0 && spindle.calls(words) ? words.hide(CALL_WORDS) : 0;
		if (words.any(OFFSETS)) {
			modes.offsets(words);
		}
		move(words, taker);
		words.show(ofTheCall);
		if (words.mCount() > 0) {
			spindle.after(words);
		}
	}

	/**
	 * Whether the last G code of a block with axis words sets a pole, in a program that has words about one; elsewhere these codes are work
	 * offsets.
	 */
	private boolean setsPole(Words words) {
		int code = words.gCount() == 0 ? 0 : words.gCode(words.gCount() - 1);
		return (code == Polar.POLE_FROM_HERE || code == Polar.POLE_FROM_ZERO || code == Polar.POLE_FROM_POLE) && motion.linearWords(words)
				&& aboutPoles.getAsBoolean();
	}

	private boolean toolWordChanges(Words words, BooleanSupplier inProgram) {
		return inProgram.getAsBoolean() || has(words, Meaning.TOOL_CHANGE);
	}

	private boolean has(Words words, Meaning meaning) {
		for (int i = 0; i < words.gCount(); i++) {
			if (state.profile.gCode(words.gCode(i)).contains(meaning)) {
				return true;
			}
		}
		return false;
	}

	/** F and S; with a speed limit, S is no speed. */
	private void feedAndSpeed(Words words, Meaning taker) {
		if (words.has('F')) {
			state.feed = words.setting('F');
			state.changed();
		}
		if (words.has('S') && taker != Meaning.SPEED_LIMIT && taker != Meaning.SET_POSITION) {
			state.speed = words.setting('S');
			state.changed();
		}
	}

	private void move(Words words, Meaning taker) {
		boolean cycleStarts = words.gCount() > 0 && inForce.change(words);
		switch (taker) {
			case NONE -> moveInForce(words, cycleStarts);
			case DWELL -> dwell(words);
			case HOME -> motion.home(words);
			case FROM_HOME -> motion.toUnknown(words, true);
			case MACHINE_COORDINATES -> motion.toUnknown(words, state.motion != Meaning.LINEAR);
			case LOCAL_SHIFT -> shifts.local(words);
			case SET_POSITION -> shifts.setPosition(words);
			case SPEED_LIMIT -> speedLimit(words);
			case SET_DATA -> setData(words);
			case ROTATION -> shifts.rotate(words);
			case SCALE -> shifts.scale(words);
			case MIRROR -> shifts.mirror(words);
			case MIRROR_OFF -> shifts.mirrorOff(words);
			case TILTED_PLANE -> shifts.tilt(words);
			case FACE_PECK -> modes.facePeck(words);
			case THREADING_CYCLE -> threadingCycle(words);
			case CYCLE_CALL -> callCycle(words, cycleStarts);
			default -> {
				// A macro call takes its words as arguments, a turning cycle gives back what it moved.
			}
		}
	}

	private void callCycle(Words words, boolean cycleStarts) {
		if (cycleStarts) {
			moveInForce(words, true);
		} else if (!called.call(words) && motion.linearWords(words)) {
			motion.toUnknown(words, true);
		}
	}

	/** The block of a threading cycle that says where the thread ends; the one before it only says how it is cut. */
	private void threadingCycle(Words words) {
		if (TurningPasses.beside(words)) {
			passes.cycle(words);
		} else if (motion.linearWords(words)) {
			passes.pass(words, true);
		}
	}

	private void dwell(Words words) {
		for (char letter : new char[] {'P', 'X', 'U', 'F', 'S'}) {
			if (words.has(letter)) {
				out.event(words.block(), Step.EventKind.DWELL, words.ref(letter), words.setting(letter));
				return;
			}
		}
	}

	private void speedLimit(Words words) {
		if (!words.has('S') && motion.linearWords(words)) {
			shifts.setPosition(words);
		}
	}

	private void setData(Words words) {
		data = words.has('L') && words.value('L') == 50;
		if (!data) {
			shifts.setData(words);
		}
	}

	private void moveInForce(Words words, boolean cycleStarts) {
		if (state.motion.cycle() && called.defines()) {
			called.define(words);
			state.motion = Meaning.RAPID;
		} else if (state.motion.cycle()) {
			cycles.block(words, cycleStarts);
		} else if (motion.axisWords(words) || arcWords(words)) {
			motion.turnRotary(words);
			if (motion.linearWords(words) || arcWords(words)) {
				inForce.make(words);
			}
		}
	}

	/** A full circle needs no axis words. */
	private boolean arcWords(Words words) {
		return (state.motion == Meaning.ARC_CLOCKWISE || state.motion == Meaning.ARC_COUNTERCLOCKWISE) && words.any(ARC);
	}
}
