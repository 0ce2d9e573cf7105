package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.machine.BlockRef;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Setting;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;

/** A threading operation while it is being gathered, before its holes and its callout are known. */
final class Draft {

	/** A tap going in and out, before its hole is known. */
	record Stroke(int order, Step step, Optional<Step> back, ToolUse tool, Place place, double start, double bottom, double initial, Setting feed,
			Setting lead, Setting speed, SpindleTurn turning, Setting feedOut, Setting speedOut, SpindleTurn turningOut, boolean staleFeed,
			boolean positioned, int repeat, double resolution) {

		TapStroke at(Hole hole) {
			return new TapStroke(order, step, back, tool, hole, start, bottom, initial, feed, lead, speed, turning, feedOut, speedOut, turningOut,
					staleFeed, positioned, repeat, resolution);
		}
	}

	/** A helix, before its hole is known. */
	record Pass(int order, int last, ToolUse tool, List<Step> entry, List<Step.Arc> helix, List<Step> exit, Place place, boolean external,
			double turns, double resolution) {

		MillPass at(Hole hole) {
			return new MillPass(order, tool, entry, helix, exit, hole, external, turns);
		}
	}

	final Optional<Tapping.Method> method;
	final ToolLog log;
	final ToolUse tool;
	final BlockRef block;
	final Optional<Cycle> cycle;
	final List<Stroke> strokes = new ArrayList<>();
	final List<Stroke> strays = new ArrayList<>();
	final List<Pass> passes = new ArrayList<>();
	final List<Tapping.LeftOn> leftOn = new ArrayList<>();

	/** @param method empty for thread milling */
	Draft(Optional<Tapping.Method> method, ToolLog log, ToolUse tool, BlockRef block, Optional<Cycle> cycle) {
		this.method = method;
		this.log = log;
		this.tool = tool;
		this.block = block;
		this.cycle = cycle;
	}

	int firstOrder() {
		return passes.isEmpty() ? strokes.isEmpty() ? Integer.MAX_VALUE : strokes.get(0).order() : passes.get(0).order();
	}

	int lastOrder() {
		return passes.isEmpty() ? strokes.isEmpty() ? firstOrder() : strokes.get(strokes.size() - 1).order() : passes.get(passes.size() - 1).last();
	}

	/** The block of its last stroke or pass. */
	BlockRef lastBlock() {
		if (!passes.isEmpty()) {
			List<Step.Arc> helix = passes.get(passes.size() - 1).helix();
			return helix.get(helix.size() - 1).block();
		}
		return strokes.isEmpty() ? block : strokes.get(strokes.size() - 1).step().block();
	}

	/** Places threaded, in the order first reached. */
	List<Place> places() {
		List<Place> places = new ArrayList<>();
		strokes.forEach(s -> places.add(s.place()));
		passes.forEach(p -> places.add(p.place()));
		return places;
	}
}
