package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.Cut;
import truelead.checker.work.Hole;
import truelead.checker.work.Place;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Holes of the program that an operation without any hole was most likely meant for, because nothing ever threads them: at the same coordinates
 * under another work offset, shift or rotation, or as many as its places and drilled for its thread.
 */
final class MissedPattern {

	/** One hole alone may be for a dowel. */
	private static final int FEWEST = 2;
	private static final double SAME = 0.001;

	private MissedPattern() {
	}

	/** The first of the holes that were meant; empty where nothing points to any. */
	static Optional<Hole> of(ThreadingOperation operation, List<Visit> missing, Work work) {
		List<Place> places = missing.stream().map(visit -> visit.hole().place()).distinct().toList();
		List<Hole> idle = places.size() < FEWEST ? List.of() : work.unthreaded();
		List<Hole> elsewhere = idle.stream().filter(hole -> places.stream().anyMatch(place -> sameNumbers(hole.place(), place))).toList();
		if (elsewhere.size() >= places.size() && places.stream().allMatch(place -> elsewhere.stream().anyMatch(hole -> sameNumbers(hole.place(), place)))) {
			return Optional.of(elsewhere.get(0));
		}
		List<Hole> fitting = idle.stream().filter(hole -> fits(operation, hole)).toList();
		return fitting.size() == places.size() && fitting.size() >= FEWEST ? Optional.of(fitting.get(0)) : Optional.empty();
	}

	private static boolean sameNumbers(Place one, Place other) {
		return one.plane() == other.plane() && !one.comparable(other) && Math.abs(one.u() - other.u()) < SAME && Math.abs(one.v() - other.v()) < SAME;
	}

	/** Whether a drill, and nothing else, made the hole in a size that the thread of the operation is made in. */
	private static boolean fits(ThreadingOperation operation, Hole hole) {
		Optional<ThreadSpec> thread = operation.wanted().statedThread().map(Fact::value).filter(t -> !t.system().taper());
		Optional<Double> diameter = hole.sizedBefore(Integer.MAX_VALUE).flatMap(Cut::diameter).filter(Fact::stated).map(Fact::value);
		boolean drilled = hole.making().stream().allMatch(cut -> cut.kind() == Cut.Kind.DRILL || cut.kind() == Cut.Kind.PECK || cut.kind() == Cut.Kind.PLUNGE);
		return drilled && thread.isPresent() && diameter.filter(d -> fits(thread.get(), d, ToolName.forms(operation.tool().facts()))).isPresent();
	}

	private static boolean fits(ThreadSpec thread, double drill, boolean forming) {
		if (forming) {
			return FormHole.percent(thread, drill) >= DrillTooBig.LOW && FormHole.percent(thread, drill) <= DrillTooSmall.HIGH;
		}
		return ThreadTable.standard().limits(thread).filter(limits -> within(limits, drill)).isPresent();
	}

	private static boolean within(Limits limits, double drill) {
		return drill >= limits.minorMinMm().orElse(Double.MAX_VALUE) - DrilledSize.WRITTEN && drill <= limits.minorMaxMm().orElse(0) + DrilledSize.WRITTEN;
	}
}
