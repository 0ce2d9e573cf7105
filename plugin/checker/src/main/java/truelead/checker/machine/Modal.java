package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Plane;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/**
 * The state in force while a step is made. Immutable and shared between steps for as long as nothing in it changes.
 *
 * @param unit           unit in force
 * @param unitStated     whether the program said so (G20/G21, G70/G71)
 * @param plane          working plane
 * @param absolute       G90 as against G91
 * @param feedMode       how F is read
 * @param feedModeStated the word that set the feed mode; empty for the profile's default
 * @param feed           F in force, in program units by {@code feedMode}
 * @param speed          S in force, rev/min (or surface speed under constant surface speed)
 * @param constantSurface constant surface speed (G96) in force
 * @param spindle        direction in force
 * @param spindleWord    the M3, M4 or M5 word
 * @param tool           number of the tool in the spindle; NaN if by name or not known
 * @param toolChange     the block that changed to it; empty before the first change
 * @param lengthOffset   H in force under G43, below zero under G44, NONE under G49 or before
 * @param compensation   cutter radius compensation
 * @param compensationOffset D in force
 * @param workOffset     54 to 59 for G54 to G59, others as {@link WorkOffset} has them, 53 for machine coordinates
 * @param coolant        any of M7, M8 or the profile's coolant codes on
 * @param rigid          the rigid-tap code in force with its S (known or not); empty when off
 * @param rigidWord      the M word of the rigid-tap code
 * @param returnToInitial G98 as against G99 in milling
 * @param mirrored       an odd number of mirrored axes in the plane or along the axis: hands flip
 * @param scaled         a scale other than 1 or a rotation out of the plane is in force
 * @param overridesLocked feed and speed override locked by a code the profile knows
 * @param frame          number of the frame that positions are in: 0 until something of unknown size shifts it (G92 at an unknown place,
 *                       G10, a tilted plane); the same shift said again gives the same number. Places in two frames cannot be compared
 * @param rotary         where the rotary axes stand
 */
public record Modal(LengthUnit unit, boolean unitStated, Plane plane, boolean absolute, FeedMode feedMode, Optional<WordRef> feedModeStated,
		Setting feed, Setting speed, boolean constantSurface, SpindleTurn spindle, Optional<WordRef> spindleWord, Setting tool,
		Optional<BlockRef> toolChange, Setting lengthOffset, Compensation compensation, Setting compensationOffset, int workOffset,
		boolean coolant,
		Optional<Setting> rigid, Optional<WordRef> rigidWord, boolean returnToInitial, boolean mirrored, boolean scaled,
		boolean overridesLocked,
		int frame, Rotary rotary) {

	/** Said of an H that stands alone, under the G43 of the tool before. */
	public static final Reason CODE_OF_TOOL_BEFORE = Reason.of("H alone, under the code of the tool before");

	/** The same with another F. */
	public Modal fed(Setting other) {
		return new Modal(unit, unitStated, plane, absolute, feedMode, feedModeStated, other, speed, constantSurface, spindle, spindleWord,
				tool, toolChange, lengthOffset, compensation, compensationOffset, workOffset, coolant, rigid, rigidWord, returnToInitial,
				mirrored, scaled, overridesLocked, frame, rotary);
	}

	/**
	 * What a tool advances a turn of the spindle when it is fed, mm; NaN where feed or speed is not known, and under a constant surface
	 * speed by feed per minute.
	 */
	public double advance() {
		double length = feed.value() * unit.mm();
		return feedMode == FeedMode.PER_REVOLUTION ? length : feedMode == FeedMode.PER_MINUTE && !constantSurface && speed.value() > 0
				? length / speed.value() : Double.NaN;
	}

	/** Whether the tool is that of whoever calls a subprogram that stands by itself. */
	public boolean ofCaller() {
		return toolChange.isEmpty() && tool.isSet() && !tool.known();
	}
}
