package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/** A threading operation while it is being gathered, before its holes and its callout are known. */
final class Draft {

	/** A tap going in and out, or the first of a row of strokes that differ in place, block and decimals written alone, before its hole is known. */
	record Stroke(int order, Step step, Optional<Step> back, Optional<Step.Row> row, ToolUse tool, Place place, double start, double bottom, double initial,
			Setting feed, Setting lead, Setting speed, SpindleTurn turning, Setting feedOut, Setting speedOut, SpindleTurn turningOut, boolean staleFeed,
			boolean positioned, int repeat, double resolution) {

		/** How many strokes there are. */
		int count() {
			return row.map(Step.Row::count).orElse(1);
		}

		/** The step of one of the strokes, from 0. */
		Step step(int index) {
			return row.isPresent() ? row.get().stroke(index) : step;
		}

		/** One of the strokes, from 0, in its hole. */
		TapStroke at(int index, Hole hole) {
			return new TapStroke(order + index, step(index), back, tool, hole, start, bottom, initial, feed, lead, speed,
					turning, feedOut, speedOut, turningOut, staleFeed, positioned, repeat, row.map(r -> r.resolution(index)).orElse(resolution));
		}

		/** When the last of them is made. */
		int lastOrder() {
			return order + count() - 1;
		}

		/** The block of the last of them. */
		BlockRef lastBlock() {
			return row.<Step>map(r -> r).orElse(step).block();
		}
	}

	/** A helix, before its hole is known. */
	record Pass(int order, int last, ToolUse tool, Optional<Step.Move> rapidIn, List<Step> entry, List<Step.Arc> helix, List<Step> exit, Place place, boolean external,
			double turns, double resolution) implements PassRow {

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

		/** Whether a move comes from another place. */
		boolean cameFrom(Step.Move move) {
			return MillPass.elsewhere(move.from(), place, HelixMeasures.of(helix, place.plane()).radius());
		}

		MillPass at(Hole hole) {
			return new MillPass(order, tool, rapidIn, entry, helix, exit, hole, external, turns);
		}
	}

	final Optional<Tapping.Method> method;
	final ToolLog log;
	final ToolUse tool;
	final BlockRef block;
	final Optional<Cycle> cycle;
	final List<Stroke> strokes = new ArrayList<>();
	final List<Stroke> strays = new ArrayList<>();
	final List<PassRow> passes = new ArrayList<>();
	final List<Tapping.LeftOn> leftOn = new ArrayList<>();

	/** @param method empty for thread milling */
	Draft(Optional<Tapping.Method> method, ToolLog log, ToolUse tool, BlockRef block, Optional<Cycle> cycle) {
		this.method = method;
		this.log = log;
		this.tool = tool;
		this.block = block;
		this.cycle = cycle;
	}

	/** The same with other strokes. */
	Draft with(List<Stroke> others) {
		Draft draft = new Draft(method, log, tool, block, cycle);
		draft.strokes.addAll(others);
		draft.strays.addAll(strays);
		draft.passes.addAll(passes);
		draft.leftOn.addAll(leftOn);
		return draft;
	}

	/** The same with other passes, of which the first and the last rows are known alone. */
	Draft between(PassRow first, PassRow last) {
		Draft draft = new Draft(method, log, tool, first.pass(0).helix().get(0).block(), cycle);
		draft.strays.addAll(strays);
		draft.leftOn.addAll(leftOn);
		draft.passes.add(first);
		if (last != first) {
			draft.passes.add(last);
		}
		return draft;
	}

	/** The first of the passes. */
	Optional<Pass> firstPass() {
		return passes.isEmpty() ? Optional.empty() : Optional.of(passes.get(0).pass(0));
	}

	/** The last of the passes so far. */
	Optional<Pass> lastPass() {
		return passes.isEmpty() ? Optional.empty() : Optional.of(passes.get(passes.size() - 1)).map(row -> row.pass(row.count() - 1));
	}

	int firstOrder() {
		return passes.isEmpty() ? strokes.isEmpty() ? Integer.MAX_VALUE : strokes.get(0).order() : passes.get(0).order(0);
	}

	int lastOrder() {
		return lastPass().map(Pass::last).orElseGet(() -> strokes.isEmpty() ? firstOrder() : strokes.get(strokes.size() - 1).lastOrder());
	}

	/** The block of its last stroke or pass. */
	BlockRef lastBlock() {
		return lastPass().map(pass -> pass.helix().get(pass.helix().size() - 1).block())
				.orElseGet(() -> strokes.isEmpty() ? block : strokes.get(strokes.size() - 1).lastBlock());
	}
}
