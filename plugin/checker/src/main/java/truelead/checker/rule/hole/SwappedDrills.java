package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.rule.Draft;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Threads whose holes are drilled each with the drill of the other: one slip, which is told once, at the first of the two. */
final class SwappedDrills {

	/** So many different threads with a wrong drill are looked at: a program has no more of them (a choice of ours). */
	private static final int MOST = 50;

	/**
	 * A thread whose hole has a stated diameter that is none for it.
	 *
	 * @param drill the diameter, mm
	 */
	private record Wrong(ThreadingOperation operation, ThreadSpec thread, boolean forming, Cut cut, double drill) {

		static Optional<Wrong> of(ThreadingOperation operation, Work work) {
			Optional<ThreadSpec> thread = operation.wanted().statedThread().map(Fact::value).filter(t -> !operation.wanted().wireInsert());
			Visits visits = Visits.of(operation, work);
			if (thread.isEmpty() || visits.isEmpty()) {
				return Optional.empty();
			}
			boolean forming = ToolName.forms(operation.tool().facts());
			Visit first = visits.typical().get(0);
			return first.hole().threadedBefore(first.order(), thread.get().diameter())
					.flatMap(cut -> cut.diameter().filter(Fact::stated).filter(d -> !MissedPattern.fits(thread.get(), d.value(), forming))
							.map(d -> new Wrong(operation, thread.get(), forming, cut, d.value())));
		}

		boolean like(Wrong other) {
			return thread.equals(other.thread) && forming == other.forming && Math.abs(drill - other.drill) < DrilledSize.WRITTEN;
		}

		boolean takes(double diameter) {
			return MissedPattern.fits(thread, diameter, forming);
		}
	}

	/** The first of each kind, in the order of the program. */
	private final List<Wrong> kinds = new ArrayList<>();

	private SwappedDrills(Work work) {
		for (ThreadingOperation operation : work.operationsOfProgram()) {
			Optional<Wrong> wrong = kinds.size() < MOST ? Wrong.of(operation, work) : Optional.empty();
			wrong.filter(one -> kinds.stream().noneMatch(one::like)).ifPresent(kinds::add);
		}
	}

	/**
	 * Hands on the finding of a wrong drill: of two threads that have each other's drill only the first one's, which names both.
	 *
	 * @param draft what is found at the operation
	 */
	static void told(ThreadingOperation operation, Draft draft, Work work, Consumer<Draft> found) {
		Optional<Wrong> own = Wrong.of(operation, work);
		if (own.isPresent() && work.operationsOfProgram().size() > 1) {
			work.dependsOnAll();
			Optional<Wrong> other = work.derived(SwappedDrills.class, SwappedDrills::new).other(own.get());
			if (other.isPresent() && other.get().operation().index() < operation.index()) {
				return;
			}
			other.ifPresent(swapped -> draft.adds(", which is " + swapped.cut().tool().name() + ", used for " + swapped.thread().withoutClass().designation() + " in line "
					+ (swapped.operation().block().line() + 1) + ": the two drills are swapped").related(swapped.cut().block(), "the other drill block"));
		}
		found.accept(draft);
	}

	private Optional<Wrong> other(Wrong own) {
		return kinds.stream().filter(one -> one.takes(own.drill()) && own.takes(one.drill())).findFirst();
	}
}
