package truelead.checker.rule.hole;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;
import truelead.checker.tool.CompensationChange;
import truelead.checker.work.Survey;
import truelead.checker.work.Work;

/** Levels down to which a program mills outlines with cutter radius compensation: that of a plate is milled a little below its far face. */
final class Outlines {

	/** As many changes of compensation are looked at (a choice of ours). */
	private static final int MOST = 2_000;

	/**
	 * How far a tap goes behind a plate at most, besides the way that is left free, turns of its lead (DIN 2197, form A), and that way, mm
	 * (common practice, no source).
	 */
	private static final double LEADS_BEHIND = 8;
	private static final double FREE = 3;

	/** The levels, mm. */
	private static final Survey<Double, Set<Double>> LEVELS = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Double> said) {
			work.course().compensation().stream().limit(MOST).filter(change -> work.judges(change.tool().index()) && begins(change))
					.forEach(change -> said.accept(change.tool().index(), ((Step.Move) change.step()).to().z()));
		}

		@Override
		public Set<Double> all(List<Double> said) {
			return new HashSet<>(said);
		}
	};

	private Outlines() {
	}

	private static boolean begins(CompensationChange change) {
		boolean on = change.before() == Compensation.OFF && change.after() != Compensation.OFF && change.step() instanceof Step.Move move
				&& move.modal().plane() == Plane.XY && !Double.isNaN(move.to().z());
		return on && change.tool().facts().kind().filter(kind -> kind.value().threading()).isEmpty();
	}

	/**
	 * A tap in a hole, lengths in mm, those but the surface's below it.
	 *
	 * @param into     which way it goes, -1 towards smaller numbers
	 * @param full     how deep the hole has its full diameter
	 * @param tip      how deep the tap goes
	 * @param lead     its lead
	 * @param farthest how far behind a plate it goes at most
	 */
	private record Way(double surface, int into, double full, double tip, double lead, double farthest) {

		/** How deep the lowest of the levels lies that drill and tap come out at; empty where none does. */
		OptionalDouble out(Set<Double> levels) {
			return levels.stream().mapToDouble(level -> into * (level - surface)).filter(deep -> deep > 0 && full >= deep
					&& tip - deep >= lead && tip - deep <= farthest).max();
		}
	}

	/**
	 * How deep an outline lies that a drill passes, and a tap with its lead and no farther than it goes behind a plate, mm; empty where
	 * none does.
	 */
	static OptionalDouble passed(TapDepth depth, double full, Work work) {
		if (depth.stroke().place().plane() != Plane.XY) {
			return OptionalDouble.empty();
		}
		Way way = new Way(depth.surface().value(), depth.stroke().direction(), full, depth.tip(), depth.lead().atLeast(depth.pitch()),
				LEADS_BEHIND * depth.pitch() + FREE);
		return work.survey(depth.tapping(), LEVELS, way::out);
	}
}
