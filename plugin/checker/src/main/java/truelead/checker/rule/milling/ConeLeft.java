package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadMilling;

/**
 * A through hole whose drill was not led out far enough: its cone, or a floor, stands in the wall yet, and the cutter's end runs into it
 * (geometry).
 */
final class ConeLeft {

	/** Pitches that a cutter goes beyond a wall at most (common practice, no source). */
	private static final double BEYOND = 2;
	/** What a wall is thicker than it is said, mm (common practice, no source). */
	static final double ROUGH = 0.05;

	private final CutterHitsBottom rule;
	private final ThreadMilling operation;
	private final Cut drilled;
	private final MillPass pass;
	private final double full;

	/** @param drilled what goes deepest with its full diameter before the pass */
	ConeLeft(CutterHitsBottom rule, ThreadMilling operation, Cut drilled, MillPass pass) {
		this.rule = rule;
		this.operation = operation;
		this.drilled = drilled;
		this.pass = pass;
		this.full = pass.below(drilled.shoulder(), operation.wanted().surface().value());
	}

	/**
	 * The finding about a cutter that goes to a level; empty where the drill is out of the wall with its full diameter, or may be.
	 *
	 * @param level  deepest level of the cutter's end, mm
	 * @param lowest the arc that goes deepest
	 */
	Optional<Draft> draft(double level, Step.Arc lowest, Figures figures) {
		double cutter = pass.below(level, operation.wanted().surface().value());
		Optional<Fact<Double>> wall = operation.wanted().wall();
		boolean coned = pass.below(drilled.tip(), drilled.shoulder()) > ROUGH;
		double pitch = operation.wanted().statedThread().map(thread -> thread.value().pitch()).orElse(Double.NaN);
		if (!(wall.isPresent() ? full < wall.get().value() - ROUGH : coned && cutter > full + BEYOND * pitch)) {
			return Optional.empty();
		}
		String axis = MillFacts.axisLetter(pass.axis());
		String hole = "the cutter's end goes " + figures.length(cutter)
				+ " deep, the hole is called through and has its full diameter down to " + figures.length(full);
		String message = wall.map(thick -> hole + ", the wall is " + figures.length(thick.value()) + ": "
				+ (coned ? "the drill's cone is left in the last " + figures.length(thick.value() - full)
						: "the last " + figures.length(thick.value() - full) + " is not drilled") + ", and the end runs into it; drill "
				+ figures.length(thick.value() - full) + " deeper").orElse(hole + ": " + figures.length(cutter - full)
						+ " into the drill's cone where the wall is as thick; drill deeper, or say WALL");
		Draft draft = Draft.of(rule, wall.isPresent() ? Severity.ERROR : Severity.WARNING, MillFacts.word(lowest.block(), axis), message)
				.on(operation).programmed("depth of the cutter", figures.length(cutter), lowest.block())
				.programmed("full diameter depth of the hole", figures.length(full), drilled.block())
				.related(drilled.block(), "the drill block");
		wall.ifPresent(thick -> draft.known("wall", figures.length(thick.value()), thick));
		return Optional.of(draft);
	}
}
