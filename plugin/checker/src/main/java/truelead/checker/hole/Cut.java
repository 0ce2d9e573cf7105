package truelead.checker.hole;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.ToolFacts;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.tool.ToolUse;

/**
 * One operation at a hole's place other than threading.
 *
 * @param order      number of the step in the order of execution, to compare with that of tap strokes and mill passes
 * @param kind       what is done
 * @param step       the step that does it; the last arc for milling
 * @param tool       the tool that does it
 * @param place      where
 * @param start      level the feed starts from, the R level of a cycle, mm along the axis
 * @param tip        level of the tool's end at the bottom, mm along the axis; NaN where not known
 * @param shoulder   level down to which the hole has its full diameter, mm; the tip's level for a flat end; NaN where it cannot be told
 * @param diameter   what it leaves, mm: the tool's own, 2 R + dc for milling; for a spot or a countersink the diameter at level 0 where
 *                   tip and angle tell it; empty where nothing tells
 * @param resolution half of the finest last decimal written in the block, mm
 */
public record Cut(int order, Kind kind, Step step, ToolUse tool, Place place, double start, double tip, double shoulder,
		Optional<Fact<Double>> diameter, double resolution) {

	/** What is done at the place. */
	public enum Kind {
		DRILL, PECK, PLUNGE, REAM, BORE, MILL,
		/** A groove in the wall, as a thread's relief at the bottom: the hole above it stays as it was. */
		GROOVE, SPOT, COUNTERSINK;

		/** Whether it makes a hole that a tap can enter; spotting, centring, countersinking and grooving do not. */
		public boolean makesHole() {
			return this != GROOVE && !atEdge();
		}

		/** Whether a drill goes down its axis, in a cycle or by moves of its own. */
		public boolean drills() {
			return this == DRILL || this == PECK;
		}

		/** Whether it marks the place or breaks the edge. */
		public boolean atEdge() {
			return this == SPOT || this == COUNTERSINK;
		}
	}

	/** The block that does it. */
	public BlockRef block() {
		return step.block();
	}

	/**
	 * How wide a spot or a countersink is at a level, mm: where the tool starts above and ends below it and its angle is stated; for other
	 * cuts their diameter.
	 */
	public Optional<Fact<Double>> widthAt(double level) {
		return !kind.atEdge() ? diameter : cone(tool.facts(), start, tip, level);
	}

	/** 2 z tan(angle/2), z being the depth below the level, at most the tool's own diameter (geometry); a 90 degree cone 3 deep: 6. */
	public static Optional<Fact<Double>> cone(ToolFacts facts, double start, double tip, double level) {
		if (!(start >= level && tip < level)) {
			return Optional.empty();
		}
		double most = facts.diameter().map(Fact::value).orElse(Double.MAX_VALUE);
		return facts.pointAngle().filter(Fact::stated).map(angle -> angle.map(a -> Math.min(most, 2 * (level - tip) * Math.tan(a / 2))));
	}

	/** -1 where the tool goes towards smaller numbers along the axis, the usual way, +1 otherwise. */
	public int direction() {
		return tip > start ? 1 : -1;
	}
}
