package truelead.checker.rule.hole;

import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import truelead.checker.work.Survey;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** What the operations of a program thread and what they miss, as far as it tells of the holes that another one leaves. */
final class OtherHoles {

	/** The operations that go to places where no hole was made before, and to how many. */
	static final Survey<Missed, List<Missed>> MISSED = each((operation, work) -> {
		Visits visits = Visits.of(operation, work);
		int missed = 0;
		for (int kind = 0; kind < visits.typical().size(); kind++) {
			Visit visit = visits.typical().get(kind);
			missed += visit.hole().madeBefore(visit.order()) ? 0 : visits.count(kind);
		}
		return missed == 0 ? List.of() : List.of(new Missed(operation.group(), HoleRule.diameter(operation), missed));
	});

	/** What each operation threads. */
	static final Survey<Threaded, List<Threaded>> THREADED = each((operation, work) -> {
		LeftHoles left = work.derived(LeftHoles.class, LeftHoles::new);
		List<Visit> made = Visits.of(operation, work).where(visit -> visit.hole().madeBefore(visit.order()));
		boolean leaves = made.stream()
				.anyMatch(visit -> !left.made(Set.of(LeftHoles.making(visit.hole().cuts(), visit.order(), true))).isEmpty());
		return List.of(new Threaded(operation.group(), made.size(), leaves));
	});

	private OtherHoles() {
	}

	/**
	 * Places without a hole.
	 *
	 * @param group    of the operation
	 * @param diameter nominal one of its thread, mm; NaN where not known
	 */
	record Missed(int group, double diameter, int places) {
	}

	/**
	 * Holes that are threaded.
	 *
	 * @param group  of the operation
	 * @param leaves whether holes made as one of them are never threaded
	 */
	record Threaded(int group, int holes, boolean leaves) {
	}

	private interface Each<S> {

		List<S> of(ThreadingOperation operation, Work work);
	}

	private static <S> Survey<S, List<S>> each(Each<S> each) {
		return new Survey<>() {

			@Override
			public void of(Work work, BiConsumer<Integer, S> said) {
				work.operations().forEach(operation -> each.of(operation, work).forEach(one -> said.accept(operation.tool().index(), one)));
			}

			@Override
			public List<S> all(List<S> said) {
				return said;
			}
		};
	}
}
