package truelead.checker.profile;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a G or M code does; a profile gives each code one meaning or several. In a profile they are written in small letters with hyphens.
 */
public enum Meaning {
	/** Known, and of no concern to the path, the spindle or the feed. */
	NONE,
	RAPID, LINEAR, ARC_CLOCKWISE, ARC_COUNTERCLOCKWISE,
	/** A motion that a signal may end early, such as probing: the axes it moves are not known behind it. */
	SKIP_MOTION,
	/** Synchronised motion, lead K or F. */
	SYNCHRONISED_MOTION,
	/** Synchronised motion in, reversal and way back in one block. */
	SYNCHRONISED_TAP,
	/**
	 * Synchronised motion that turns the spindle by itself, clockwise where its lead is positive; and the way back, turning the other way.
	 */
	SYNCHRONISED_IN, SYNCHRONISED_OUT,
	/**
	 * Feed motion with a floating holder, overrides locked, for one block with axis words and no other motion; else a mode of another name.
	 */
	FLOATING_TAP,
	/** A pass of turning along Z and back to its start, at every block with axis words; a mode of another name where the block has none. */
	TURNING_PASS,
	/** The same for facing, of no concern to holes and threads; and for a thread, whose lead is F. */
	FACING_PASS, THREADING_PASS,
	/** Tapping mode: overrides locked until another cutting mode. */
	TAPPING_MODE, CUTTING_MODE,
	DWELL, PLANE_XY, PLANE_ZX, PLANE_YZ, INCH, MILLIMETRE,
	HOME, FROM_HOME, MACHINE_COORDINATES, WORK_OFFSET, EXTENDED_WORK_OFFSET, LOCAL_SHIFT, SET_POSITION, CANCEL_POSITION,
	/** A speed limit with S, a set position with axis words. */
	SPEED_LIMIT, SET_DATA, SET_DATA_END,
	COMPENSATION_OFF, COMPENSATION_LEFT, COMPENSATION_RIGHT, LENGTH_OFFSET, LENGTH_OFFSET_SUBTRACTED, LENGTH_OFFSET_OFF,
	ABSOLUTE, INCREMENTAL, ARC_CENTRE_ABSOLUTE, ARC_CENTRE_INCREMENTAL, INVERSE_TIME, FEED_PER_MINUTE, FEED_PER_REVOLUTION,
	CONSTANT_SURFACE_SPEED, CONSTANT_SPINDLE_SPEED, RETURN_INITIAL, RETURN_R_LEVEL,
	POLAR, POLAR_OFF, ROTATION, ROTATION_OFF, SCALE, SCALE_OFF, MIRROR, MIRROR_OFF, TILTED_PLANE, TILTED_PLANE_OFF,
	MACRO_CALL, MODAL_MACRO_CALL, MODAL_MACRO_OFF,
	DRILL, PECK_DRILL, TAP, TAP_LEFT, BORE_FEED_OUT, BORE, OTHER_CYCLE, CYCLE_OFF,
	/** Pecking on the face of a turned part, for one block. */
	FACE_PECK,
	/** A turning cycle: what its words move is taken back at its end. */
	TURNING_CYCLE,
	/** The same for a thread cut in several passes, whose lead is F. */
	THREADING_CYCLE,
	/** The cycle that stands before it, which then only says how, at the place of the block. */
	CYCLE_CALL,
	STOP, OPTIONAL_STOP, PROGRAM_END, SPINDLE_CLOCKWISE, SPINDLE_COUNTERCLOCKWISE, SPINDLE_STOP, SPINDLE_ORIENT, TOOL_CHANGE, COOLANT_ON,
	COOLANT_OFF, RIGID_TAP_ON, RIGID_TAP_OFF, OVERRIDES_LOCKED, OVERRIDES_FREE, CALL, LOCAL_CALL, RETURN;

	private static final List<Meaning> CYCLES = List.of(DRILL, PECK_DRILL, TAP, TAP_LEFT, BORE_FEED_OUT, BORE, OTHER_CYCLE);

	private static final Map<String, Meaning> BY_KEY = byKey();

	/** The meaning of that name as a profile writes it; empty for no such meaning. */
	public static Optional<Meaning> named(String name) {
		return Optional.ofNullable(BY_KEY.get(name));
	}

	private static Map<String, Meaning> byKey() {
		Map<String, Meaning> all = new HashMap<>();
		for (Meaning meaning : values()) {
			all.put(meaning.key(), meaning);
		}
		return all;
	}

	/** Its name in a profile. */
	public String key() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** Whether it is a canned cycle that stays in force. */
	public boolean cycle() {
		return CYCLES.contains(this);
	}

	/** Whether it stays in force as the kind of motion until another one. */
	public boolean motion() {
		return ordinal() >= RAPID.ordinal() && ordinal() <= THREADING_PASS.ordinal();
	}

	/** Whether it is a motion only in a block that has axis words and no other motion. */
	public boolean motionByAxisWords() {
		return this == TURNING_PASS || this == FACING_PASS || this == THREADING_PASS || this == FLOATING_TAP;
	}

	/** Whether it takes the axis words of its block, so that they are no motion. */
	public boolean takesAxisWords() {
		return switch (this) {
			case DWELL, HOME, FROM_HOME, LOCAL_SHIFT, SET_POSITION, SET_DATA, ROTATION, SCALE, MIRROR, MIRROR_OFF, TILTED_PLANE, MACRO_CALL,
					MODAL_MACRO_CALL, FACE_PECK, TURNING_CYCLE, THREADING_CYCLE, SPEED_LIMIT, CYCLE_CALL -> true;
			default -> false;
		};
	}
}
