package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Survey;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Threads whose holes are drilled each with the drill of the other: one slip, which is told once, at the first of the two. */
final class SwappedDrills {

	/** So many different threads with a wrong drill are looked at: a program has no more of them (a choice of ours). */
	private static final int MOST = 50;

	/**
	 * A thread whose hole has a stated diameter that is none for it.
	 *
	 * @param operation number of the operation, of which {@code block} is the first
	 * @param drill     the diameter, mm
	 * @param name      the drill's name
	 * @param drills    the block that drills
	 */
	private record Wrong(int operation, BlockRef block, ThreadSpec thread, boolean forming, double drill, String name, BlockRef drills) {

		static Optional<Wrong> of(ThreadingOperation operation, Work work) {
			Optional<ThreadSpec> thread = operation.wanted().statedThread().map(Fact::value).filter(t -> !operation.wanted().wireInsert());
			Visits visits = Visits.of(operation, work);
			if (thread.isEmpty() || visits.isEmpty()) {
				return Optional.empty();
			}
			boolean forming = ToolName.forms(operation.tool().facts());
			Visit first = visits.typical().get(0);
			return first.hole().threadedBefore(first.order(), thread.get().diameter()).flatMap(cut -> cut.diameter().filter(Fact::stated)
					.filter(d -> !MissedPattern.fits(thread.get(), d.value(), forming))
					.map(d -> new Wrong(operation.index(), operation.block(), thread.get(), forming, d.value(), cut.tool().name(),
							cut.block())));
		}

		boolean like(Wrong other) {
			return thread.equals(other.thread) && forming == other.forming && Math.abs(drill - other.drill) < DrilledSize.WRITTEN;
		}

		/** Whether the drill of each is one for the thread of the other. */
		boolean swappedWith(Wrong other) {
			return takes(other.drill) && other.takes(drill);
		}

		private boolean takes(double diameter) {
			return MissedPattern.fits(thread, diameter, forming);
		}
	}

	/** The first of each kind, in the order of the program. */
	private static final Survey<Wrong, List<Wrong>> KINDS = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Wrong> said) {
			work.operations().forEach(operation -> Wrong.of(operation, work)
					.ifPresent(wrong -> said.accept(operation.tool().index(), wrong)));
		}

		@Override
		public List<Wrong> all(List<Wrong> said) {
			List<Wrong> kinds = new ArrayList<>();
			for (Wrong wrong : said) {
				if (kinds.size() < MOST && kinds.stream().noneMatch(wrong::like)) {
					kinds.add(wrong);
				}
			}
			return kinds;
		}
	};

	private SwappedDrills() {
	}

	/**
	 * Hands on the finding of a wrong drill: of two threads that have each other's drill only the first one's, which names both.
	 *
	 * @param draft what is found at the operation
	 */
	static void told(ThreadingOperation operation, Draft draft, Work work, Consumer<Draft> found) {
		Optional<Wrong> own = Wrong.of(operation, work);
		if (own.isPresent() && work.operationsOfProgram().size() > 1) {
			Optional<Wrong> other = work.survey(operation, KINDS,
					kinds -> kinds.stream().filter(one -> one.swappedWith(own.get())).findFirst());
			if (other.isPresent() && other.get().operation() < operation.index()) {
				return;
			}
			other.ifPresent(swapped -> draft.adds(", which is " + swapped.name() + ", used for "
					+ swapped.thread().withoutClass().designation() + " in line " + (swapped.block().line() + 1)
					+ ": the two drills are swapped").related(swapped.drills(), "the other drill block"));
		}
		found.accept(draft);
	}
}
