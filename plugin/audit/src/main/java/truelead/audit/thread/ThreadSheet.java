package truelead.audit.thread;

import java.util.List;
import java.util.Optional;
import truelead.checker.callout.Callout;
import truelead.checker.thread.BoltLimits;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/**
 * All that is shown of one callout.
 *
 * @param spec      the thread
 * @param assumed   what the callout left out
 * @param classes   a line a class: that called out, or all that the tables give
 * @param bolts     the limits of screws, a class each: that called out, or the usual ones
 * @param tapDrill  the drill for cutting
 * @param formDrill the drill for forming
 */
record ThreadSheet(ThreadSpec spec, List<String> assumed, List<ClassLine> classes, List<BoltLimits> bolts, Optional<TapDrill> tapDrill,
		Optional<DrillSizes.Drill> formDrill) {

	/** One class; without limits where the tables have none. */
	record ClassLine(ThreadSpec spec, Optional<Limits> limits) {
		static final String NOT_IN_TABLE = "not in the table";

		String source() {
			return limits.map(Limits::source).orElse(NOT_IN_TABLE);
		}
	}

	static ThreadSheet of(Callout callout) {
		ThreadTable table = ThreadTable.standard();
		ThreadSpec spec = callout.spec();
		List<String> names = spec.threadClass().map(List::of).orElseGet(() -> table.classes(spec));
		List<ClassLine> lines = names.isEmpty() ? List.of(new ClassLine(spec, Optional.empty()))
				: names.stream().map(name -> new ClassLine(name.isEmpty() ? spec : spec.withClass(name),
						table.limits(spec, name))).toList();
		return new ThreadSheet(spec, callout.assumed(), lines, table.boltClasses(spec), TapDrill.cutting(spec), FormHole.drill(spec));
	}
}
