package truelead.checker.sheet;

import truelead.checker.program.BlockRef;

/**
 * One hole of a threading operation. Lengths in mm, depths below the top of the hole; NaN where not known.
 *
 * @param label      work offset and position, in the program's unit: {@code G54 X20 Y60}
 * @param block      the block that threads it
 * @param u          position along the first axis of the plane
 * @param v          position along the second axis of the plane
 * @param made       whether anything made the hole before it was threaded
 * @param drill      diameter before threading
 * @param drillFull  depth of the full diameter
 * @param drillTip   depth of the drill's point
 * @param tip        depth of the threading tool's end
 * @param fullThread depth to which the thread is fully formed
 * @param start      height above the top from which the tool is led by the thread: the R plane
 * @param edge       diameter of the countersink at the top; NaN for none
 * @param maker      what made it: {@code T2 drill}; empty for nothing
 */
public record HoleSheet(String label, BlockRef block, double u, double v, boolean made, double drill, double drillFull, double drillTip,
		double tip, double fullThread, double start, double edge, String maker) {

	/** What made it, or that nothing did. */
	public String madeBy() {
		return made ? maker : "nothing in this program";
	}

	/** Way between the tool's end and the end of the full diameter, mm; negative where the tool goes below it. */
	public double clearance() {
		return drillFull - tip;
	}
}
