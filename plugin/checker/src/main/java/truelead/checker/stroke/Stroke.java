package truelead.checker.stroke;

import java.util.Optional;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.tool.ToolUse;

/**
 * A tap going in and out, or the first of a row of strokes that differ in place, block and decimals written alone, before its hole is
 * known. What is not said here is as in {@link TapStroke}.
 *
 * @param row   the row that it is the first of, where it is
 * @param place where the tap goes in
 */
public record Stroke(int order, Step step, Optional<Step> back, Optional<Step.Row> row, ToolUse tool, Place place, double start,
		double bottom, double initial, Setting feed, Setting lead, Setting speed, SpindleTurn turning, Setting feedOut, Setting speedOut,
		SpindleTurn turningOut, boolean staleFeed, boolean positioned, int repeat, double resolution) {

	/** How many strokes there are. */
	public int count() {
		return row.map(Step.Row::count).orElse(1);
	}

	/** The step of one of the strokes, from 0. */
	public Step step(int index) {
		return row.isPresent() ? row.get().stroke(index) : step;
	}

	/** One of the strokes, from 0, in its hole. */
	TapStroke at(int index, Hole hole) {
		Step at = step(index);
		// in a row F may be said by each block
		boolean own = row.isPresent() && row.get().run().says();
		return new TapStroke(order + index, at, back, tool, hole, start, bottom, initial, own ? at.modal().feed() : feed, lead, speed,
				turning, own ? at.modal().feed() : feedOut, speedOut, turningOut, staleFeed, positioned, repeat,
				row.map(r -> r.resolution(index)).orElse(resolution));
	}

	/** What the tap is led in a turn, mm, as of a {@link TapStroke}; NaN where it is not known. */
	public double advance() {
		return TapStroke.advance(step.modal(), lead, feed, speed);
	}

	/** When the last of them is made. */
	public int lastOrder() {
		return order + count() - 1;
	}

	/** The block of the last of them. */
	public BlockRef lastBlock() {
		return row.<Step>map(r -> r).orElse(step).block();
	}
}
