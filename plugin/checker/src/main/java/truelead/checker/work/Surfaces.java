package truelead.checker.work;

import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.stroke.TapStroke;

/**
 * Where the top of a hole is, where no note says it: gathers the levels that tools start from and go to. Levels in mm; NaN ones are left
 * out.
 */
final class Surfaces {

	/**
	 * How much of the tap's way must lie below a step that the thread begins at; less of it is a hole that is too shallow (common practice,
	 * no source).
	 */
	private static final double STEP = 0.4;

	/**
	 * Nobody starts so far above the top of a hole, mm, and so many times the thread's depth: level 0 is the underside of a plate, or the
	 * table (common practice, no source).
	 */
	private static final double FAR = 15;
	private static final double OUT_OF_PROPORTION = 3;

	private double lowestStart = Double.NaN;
	private double highestStart = Double.NaN;
	private double highestEnd = Double.NaN;
	private double threadEnd = Double.NaN;
	/** Where a wider opening ends, -infinity as long as no hole has been looked at, NaN where a hole has none or another. */
	private double floor = Double.NEGATIVE_INFINITY;

	/**
	 * The levels of all that was done at a hole besides threading and milling; in turning a pass of a boring bar starts below a chamfer or
	 * a step.
	 */
	static Surfaces of(Hole hole, boolean turning) {
		Surfaces levels = new Surfaces();
		for (Cut cut : hole.cuts()) {
			if (cut.kind() != Cut.Kind.MILL && cut.kind() != Cut.Kind.GROOVE && !(turning && cut.kind() == Cut.Kind.BORE)) {
				levels.start(cut.start());
				levels.end(cut.tip());
			}
		}
		levels.floor = floor(hole);
		return levels;
	}

	/** The top of one stroke's hole, by the levels of that hole alone. */
	static Fact<Double> of(TapStroke stroke) {
		Surfaces own = of(stroke.hole(), false);
		own.start(stroke.start());
		own.thread(stroke.bottom());
		return own.assumed();
	}

	/**
	 * The floor of the widest step that a hole is entered through: of a cut with a flat end, wider than any thread in the hole below it.
	 * The coarse pitch of M1.6 to M64 makes that less than 1.17 drills and a quarter of a millimetre (ISO 261).
	 */
	private static double floor(Hole hole) {
		double deepest = Double.NaN;
		double drill = Double.NaN;
		for (Cut cut : hole.cuts()) {
			if (cut.kind().makesHole() && cut.direction() < 0 && cut.diameter().isPresent() && !(cut.tip() >= deepest)) {
				deepest = cut.tip();
				drill = cut.diameter().get().value();
			}
		}
		double floor = Double.NaN;
		for (Cut cut : hole.cuts()) {
			boolean flat = cut.kind().makesHole() && cut.direction() < 0 && cut.shoulder() == cut.tip() && !(cut.tip() >= floor);
			if (flat && cut.diameter().isPresent() && cut.diameter().get().value() > drill * 1.17 + 0.25) {
				floor = cut.tip();
			}
		}
		return floor;
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

	/** The level of a thread's end at the bottom. */
	void thread(double level) {
		threadEnd = higher(threadEnd, level);
		end(level);
	}

	/** All levels of others. */
	void add(Surfaces others) {
		start(others.lowestStart);
		start(others.highestStart);
		end(others.highestEnd);
		floor = floor == Double.NEGATIVE_INFINITY || floor == others.floor ? others.floor : Double.NaN;
	}

	/**
	 * The level of the surface: the floor of a wider opening that much of the tap's way lies below; level 0 where every tool starts above
	 * it, but not out of all proportion, and ends below it, as it is in most programs; else the lowest R plane, which the surface cannot be
	 * above.
	 */
	Fact<Double> assumed() {
		double top = Math.min(0, lowestStart);
		if (floor < 0 && floor - threadEnd >= STEP * (top - threadEnd)) {
			return Fact.of(floor, FactSource.IMPLIED, "the floor of the wider opening is taken for the top of the hole");
		}
		boolean farAbove = lowestStart > FAR && lowestStart > OUT_OF_PROPORTION * -threadEnd;
		if (Double.isNaN(lowestStart) || lowestStart >= 0 && !(highestEnd >= 0) && !farAbove) {
			return Fact.of(0.0, FactSource.DEFAULT, "level 0 is taken for the top of the hole");
		}
		double level = highestEnd > highestStart ? highestStart : lowestStart;
		return Fact.of(level, FactSource.IMPLIED, "the R plane is taken for the top of the hole");
	}

	/**
	 * The same for holes across a turned part, whose level 0 is the axis: its outside cannot be above the lowest level that a tool starts
	 * from.
	 */
	Fact<Double> outside() {
		return Fact.of(lowestStart, FactSource.IMPLIED, "the lowest level that a tool starts from is taken for the outside of the part");
	}

	private static double higher(double one, double other) {
		return Double.isNaN(one) ? other : Double.isNaN(other) ? one : Math.max(one, other);
	}
}
