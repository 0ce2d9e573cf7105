package truelead.audit.compare;

import java.util.List;
import java.util.Optional;
import truelead.checker.sheet.ThreadSheet;

/**
 * What became of a threading operation.
 *
 * @param before  as it was; empty for a new one
 * @param after   as it is; empty for one that is gone
 * @param changes what changed in it, one clause each: {@code feed F500 mm/min -> F520 mm/min}; empty where one of the two is
 */
record OperationChange(Optional<ThreadSheet> before, Optional<ThreadSheet> after, List<String> changes) {

	OperationChange {
		changes = List.copyOf(changes);
	}

	/** Whether anything is different. */
	boolean any() {
		return before.isEmpty() || after.isEmpty() || !changes.isEmpty();
	}

	/** What to call it. */
	String name() {
		return after.or(() -> before).map(sheet -> sheet.name() + ", " + sheet.tool().name()).orElse("");
	}

	/** Where it is: line now, or line then for one that is gone. */
	String place() {
		return after.map(sheet -> "line " + line(sheet)).orElseGet(() -> "was line " + before.map(OperationChange::line).orElse(0));
	}

	private static int line(ThreadSheet sheet) {
		return sheet.block().outermost().line() + 1;
	}

	/** One word for lists. */
	String kind() {
		return before.isEmpty() ? "new" : after.isEmpty() ? "gone" : "changed";
	}
}
