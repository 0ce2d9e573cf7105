package truelead.checker.pass;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.machine.Step;
import truelead.checker.tool.ToolUse;

/**
 * A helix, before its hole is known. What is not said here is as in {@link MillPass}.
 *
 * @param last       number of the last arc in the order of execution
 * @param place      where its centre is
 * @param resolution half of the coarsest last decimal written in its blocks, mm
 */
public record Pass(int order, int last, ToolUse tool, Optional<Step.Move> rapidIn, List<Step> entry, List<Step.Arc> helix, List<Step> exit,
		Place place, boolean external, double turns, double resolution) implements PassRow {

	@Override
	public int count() {
		return 1;
	}

	@Override
	public Pass pass(int index) {
		return this;
	}

	@Override
	public Place place(int index) {
		return place;
	}

	@Override
	public double resolution(int index) {
		return resolution;
	}

	@Override
	public int order(int index) {
		return order;
	}

	@Override
	public int shape(int index, PassShapes shapes) {
		return shapes.of(this);
	}

	/** Advance in a turn, mm; NaN where it is not known. */
	public double advance() {
		int axis = place.plane().axis();
		return Math.abs(helix.get(helix.size() - 1).to().along(axis) - helix.get(0).from().along(axis)) / turns;
	}

	/** Whether a move comes from another place. */
	boolean cameFrom(Step.Move move) {
		return MillPass.elsewhere(move.from(), place, HelixMeasures.of(helix, place.plane()).radius());
	}

	MillPass at(Hole hole) {
		return new MillPass(order, tool, rapidIn, entry, helix, exit, hole, external, turns);
	}
}
