package truelead.checker.rule.hole;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.rule.Fix;
import truelead.checker.rule.LevelFix;

/**
 * The other way to mend a hole that is too shallow for its tap: the tap goes less deep, where that leaves a thread.
 *
 * @param depth    the tap's depth
 * @param deepest  the depth that the hole has room for, mm
 * @param likelier whether the tap's depth is the slip more likely: it goes far beyond the thread called out, or beyond any usual one
 */
record LessDeep(TapDepth depth, double deepest, boolean likelier) {

	/** Threads are seldom deeper than so many diameters, and seldom less deep than one (common practice, no source). */
	private static final double DEEP = 2.5;
	/** What a tap goes below the thread called out besides its lead, in pitches (common practice, no source). */
	private static final double BEYOND = 3;

	/**
	 * The tap's other depth; empty where the thread that is left would be none, or shorter than called out.
	 *
	 * @param room what the hole has room for, mm below its surface
	 */
	static Optional<LessDeep> of(TapDepth depth, double room) {
		double deepest = Math.floor(room * 10 + 1e-6) / 10;
		double lead = depth.lead().length(depth.pitch());
		Optional<Double> called = depth.tapping().wanted().depth().map(Fact::value);
		double diameter = depth.tapping().wanted().thread().map(thread -> thread.value().diameter()).orElse(Double.NaN);
		if (!(deepest >= called.map(wanted -> wanted + lead).orElse(Math.max(lead + depth.pitch(), diameter / 2)))) {
			return Optional.empty();
		}
		boolean likelier = called.map(wanted -> depth.tip() > wanted + lead + BEYOND * depth.pitch())
				.orElse(depth.tip() > DEEP * diameter && deepest >= diameter);
		return Optional.of(new LessDeep(depth, deepest, likelier));
	}

	/** The depth: {@code 15.4 mm}. */
	String most() {
		return depth.figures().length(deepest);
	}

	/** What to type, with what to type at the drill, the likelier one first. */
	String orElse(String drill) {
		String tap = "tap to " + most() + " at most";
		return likelier ? tap + ", or " + drill : drill + ", or " + tap;
	}

	/** The depth that the hole has room for; empty where no word of a cycle says the tap's. */
	Optional<Fix> fix() {
		return depth.stroke().step() instanceof Step.Stroke cycle ? LevelFix.depth(cycle, depth.level(deepest), false,
				"see how deep the drawing wants the thread") : Optional.empty();
	}
}
