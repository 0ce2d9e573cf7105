package truelead.checker.work;

import java.util.List;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;

/** Where the top of a hole is, where no note says it. */
final class Surfaces {

	private Surfaces() {
	}

	/**
	 * The level of the surface from the levels that the tools start from and go to, mm: level 0 where every tool starts above it and ends below
	 * it, as it is in most programs; else the lowest R plane, which the surface cannot be above.
	 *
	 * @param starts levels that feeds and R planes start from at the holes
	 * @param ends   levels of the tools' ends at the bottom
	 */
	static Fact<Double> assumed(List<Double> starts, List<Double> ends) {
		double lowestStart = starts.stream().mapToDouble(d -> d).filter(d -> !Double.isNaN(d)).min().orElse(Double.NaN);
		double highestEnd = ends.stream().mapToDouble(d -> d).filter(d -> !Double.isNaN(d)).max().orElse(Double.NaN);
		double highestStart = starts.stream().mapToDouble(d -> d).filter(d -> !Double.isNaN(d)).max().orElse(Double.NaN);
		if (Double.isNaN(lowestStart) || lowestStart >= 0 && !(highestEnd >= 0)) {
			return Fact.of(0.0, FactSource.DEFAULT, "level 0 is taken for the top of the hole");
		}
		double level = highestEnd > highestStart ? highestStart : lowestStart;
		return Fact.of(level, FactSource.IMPLIED, "the R plane is taken for the top of the hole");
	}

	/** The same for holes across a turned part, whose level 0 is the axis: its outside cannot be above the lowest level that a tool starts from. */
	static Fact<Double> outside(List<Double> starts) {
		double lowest = starts.stream().mapToDouble(d -> d).filter(d -> !Double.isNaN(d)).min().orElse(Double.NaN);
		return Fact.of(lowest, FactSource.IMPLIED, "the lowest level that a tool starts from is taken for the outside of the part");
	}
}
