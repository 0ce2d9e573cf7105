package truelead.checker.rule.hole;

import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.wanted.Wanted;

/** A drill that goes far below the wall that its hole goes through, or below the bottom that is called out for the hole. */
final class DrilledPast {

	/** So far below a wall a drill goes at most, mm and diameters, its point besides (common practice, no source). */
	private static final double BELOW_WALL = 25;
	private static final double DIAMETERS_BELOW_WALL = 3;

	/** So far below the bottom called out a drill goes at most, mm and diameters, its point besides (common practice, no source). */
	private static final double BELOW_BOTTOM = 5;
	private static final double DIAMETERS_BELOW_BOTTOM = 1;

	private DrilledPast() {
	}

	static Optional<Draft> of(Rule rule, Cut cut, Wanted wanted) {
		Fact<Double> surface = wanted.surface();
		double diameter = cut.diameter().map(Fact::value).orElse(Double.NaN);
		if (surface.source() == FactSource.IMPLIED || !(cut.step() instanceof Step.Stroke drill) || Double.isNaN(diameter)
				|| cut.direction() * (cut.start() - surface.value()) > 0) {
			return Optional.empty();
		}
		double deep = cut.direction() * (cut.tip() - surface.value());
		double point = Math.abs(cut.tip() - cut.shoulder());
		boolean through = wanted.through().map(Fact::value).orElse(wanted.wall().isPresent());
		Optional<Fact<Double>> wall = wanted.wall().filter(said -> said.stated() && through
				&& deep - said.value() - point > Math.max(BELOW_WALL, DIAMETERS_BELOW_WALL * diameter));
		Optional<Fact<Double>> floor = wanted.holeBottom().filter(said -> said.stated()
				&& deep - said.value() - point > Math.max(BELOW_BOTTOM, DIAMETERS_BELOW_BOTTOM * diameter));
		Figures figures = new Figures(drill.modal().unit());
		return wall.map(said -> draft(rule, cut, drill, deep, said, "through a wall of " + figures.length(said.value())))
				.or(() -> floor.map(said -> draft(rule, cut, drill, deep, said, "where the hole is called out "
						+ figures.length(said.value()) + " deep")));
	}

	private static Draft draft(Rule rule, Cut cut, Step.Stroke drill, double deep, Fact<Double> said, String where) {
		Figures figures = new Figures(drill.modal().unit());
		return Draft.of(rule, Severity.WARNING, LevelFix.depthWord(drill).map(Location::of).orElseGet(() -> Location.of(cut.block())),
				cut.tool().name() + " goes " + figures.length(deep) + " deep " + where + ": "
				+ figures.length(deep - said.value()) + " below it, into what lies there; see the digits of its depth")
				.programmed("depth of the drill", figures.length(deep), cut.block())
				.known("depth said of the hole", figures.length(said.value()), said);
	}
}
