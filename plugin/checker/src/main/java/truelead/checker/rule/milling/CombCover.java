package truelead.checker.rule.milling;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * What the levels of a cutter with many teeth leave uncut: in one turn it cuts as far up from its end as it is long, so that its deepest
 * level has to reach the depth called out, the levels must be no farther apart than that, and the highest must lie no deeper below the
 * surface (geometry).
 */
final class CombCover {

	/**
	 * Part of the pitch that grooves may begin beside the depth, between the levels, or below the surface: a tooth that is half there cuts
	 * (common practice, no source).
	 */
	private static final double HALF = 0.5;

	private final HelixTooShort rule;
	private final ThreadMilling operation;
	private final List<MillPass> levels;
	private final double surface;
	private final double pitch;
	private final Figures figures;

	/** @param passes the finishing passes at a hole */
	CombCover(HelixTooShort rule, ThreadMilling operation, List<MillPass> passes, Figures figures) {
		this.rule = rule;
		this.operation = operation;
		this.figures = figures;
		this.surface = operation.wanted().surface().value();
		this.pitch = operation.wanted().statedThread().orElseThrow().value().pitch();
		this.levels = passes.stream().sorted(Comparator.comparingDouble(this::depth).reversed()).toList();
	}

	private double depth(MillPass pass) {
		return HelixForm.of(pass).deepest(surface);
	}

	/** What is not cut, from the bottom upwards; empty where nothing is, or nobody says how long the cutter is. */
	Optional<Draft> missing(Work work, Optional<Fact<Double>> wanted) {
		MillPass deepest = levels.get(0);
		if (wanted.filter(depth -> depth(deepest) + pitch < depth.value() - HelixForm.of(deepest).open()).isPresent()) {
			return Optional.of(draft(deepest, Severity.ERROR, "the helix reaches " + figures.length(depth(deepest))
					+ " deep, the thread is called out " + figures.length(wanted.get().value()) + ": "
					+ figures.length(wanted.get().value() - depth(deepest)) + " too short; " + MillFacts.axisLetter(deepest.axis())
					+ Figures.number((surface + deepest.direction() * wanted.get().value()) / figures.unit().mm(), 4))
					.known("depth called out", figures.length(wanted.get().value()), wanted.get()));
		}
		Optional<Fact<Double>> length = operation.tool().facts().cutting();
		return length.flatMap(said -> between(said).or(() -> top(work, said)));
	}

	private Optional<Draft> between(Fact<Double> length) {
		for (int i = 1; i < levels.size(); i++) {
			double apart = depth(levels.get(i - 1)) - depth(levels.get(i));
			if (apart > length.value() + HALF * pitch) {
				return Optional.of(draft(levels.get(i), Severity.ERROR, "this level lies " + figures.length(apart)
						+ " above the one below it, the cutter cuts " + figures.length(length.value()) + ": "
						+ figures.length(apart - length.value()) + " of the thread between is not cut; levels at most "
						+ figures.length(Math.floor(length.value() / pitch + 1e-6) * pitch) + " apart")
						.known("length of the cutting part", figures.length(length.value()), length)
						.related(levels.get(i - 1).block(), "the level below"));
			}
		}
		return Optional.empty();
	}

	private Optional<Draft> top(Work work, Fact<Double> length) {
		MillPass highest = levels.get(levels.size() - 1);
		double below = depth(highest) - length.value();
		boolean stated = operation.wanted().surface().stated();
		if (!(below > (stated ? 1 : 2) * pitch) || !stated && !(highest.axis() == 2 && HoleTop.known(work, operation, highest, surface))) {
			return Optional.empty();
		}
		return Optional.of(draft(highest, stated ? Severity.ERROR : Severity.WARNING, "the cutter cuts " + figures.length(length.value())
				+ " and goes " + figures.length(depth(highest)) + " deep: the first " + figures.length(below)
				+ " below the surface are not cut; one more level above, at most "
				+ figures.length(Math.floor(length.value() / pitch + 1e-6) * pitch) + " higher")
				.known("length of the cutting part", figures.length(length.value()), length)
				.known("surface", figures.length(surface), operation.wanted().surface()));
	}

	private Draft draft(MillPass pass, Severity severity, String message) {
		return Draft.of(rule, severity, MillFacts.word(pass.block(), MillFacts.axisLetter(pass.axis())), message).on(operation)
				.programmed("depth of the helix", figures.length(depth(pass)), pass.block());
	}
}
