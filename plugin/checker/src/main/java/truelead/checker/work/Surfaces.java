package truelead.checker.work;

import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;

/** Where the top of a hole is, where no note says it: gathers the levels that tools start from and go to. Levels in mm; NaN ones are left out. */
final class Surfaces {

	private double lowestStart = Double.NaN;
	private double highestStart = Double.NaN;
	private double highestEnd = Double.NaN;

	/** The levels of all that was done at a hole besides threading and milling; in turning a pass of a boring bar starts below a chamfer or a step. */
	static Surfaces of(Hole hole, boolean turning) {
		Surfaces levels = new Surfaces();
		for (Cut cut : hole.cuts()) {
			if (cut.kind() != Cut.Kind.MILL && !(turning && cut.kind() == Cut.Kind.BORE)) {
				levels.start(cut.start());
				levels.end(cut.tip());
			}
		}
		return levels;
	}

	/** A level that a feed or an R plane starts from. */
	void start(double level) {
		lowestStart = Double.isNaN(lowestStart) ? level : Double.isNaN(level) ? lowestStart : Math.min(lowestStart, level);
		highestStart = higher(highestStart, level);
	}

	/** A level of a tool's end at the bottom. */
	void end(double level) {
		highestEnd = higher(highestEnd, level);
	}

	/** All levels of others. */
	void add(Surfaces others) {
		start(others.lowestStart);
		start(others.highestStart);
		end(others.highestEnd);
	}

	/**
	 * The level of the surface: level 0 where every tool starts above it and ends below it, as it is in most programs; else the lowest R plane,
	 * which the surface cannot be above.
	 */
	Fact<Double> assumed() {
		if (Double.isNaN(lowestStart) || lowestStart >= 0 && !(highestEnd >= 0)) {
			return Fact.of(0.0, FactSource.DEFAULT, "level 0 is taken for the top of the hole");
		}
		double level = highestEnd > highestStart ? highestStart : lowestStart;
		return Fact.of(level, FactSource.IMPLIED, "the R plane is taken for the top of the hole");
	}

	/** The same for holes across a turned part, whose level 0 is the axis: its outside cannot be above the lowest level that a tool starts from. */
	Fact<Double> outside() {
		return Fact.of(lowestStart, FactSource.IMPLIED, "the lowest level that a tool starts from is taken for the outside of the part");
	}

	private static double higher(double one, double other) {
		return Double.isNaN(one) ? other : Double.isNaN(other) ? one : Math.max(one, other);
	}
}
