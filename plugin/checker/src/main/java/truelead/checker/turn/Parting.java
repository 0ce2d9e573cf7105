package truelead.checker.turn;

import truelead.checker.hole.Place;
import truelead.checker.program.BlockRef;

/**
 * A tool of a lathe cuts straight across towards the axis: it parts the work, or faces or grooves it.
 *
 * @param order  number of its step
 * @param middle the place of a hole in the middle of what it cuts
 * @param radius distance from the axis to which it goes, mm
 * @param level  where along Z, mm
 * @param block  the block that does it
 */
public record Parting(int order, Place middle, double radius, double level, BlockRef block) {
}
