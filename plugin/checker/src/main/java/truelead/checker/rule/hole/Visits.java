package truelead.checker.rule.hole;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import truelead.checker.work.MillPass;
import truelead.checker.work.Strokes;
import truelead.checker.work.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The visits of an operation in order, the first pass of a thread mill at each hole; none for bolts and for tools that make no thread. A tap's are judged by
 * the {@link #typical()} ones, as {@link Strokes#typical()} says: what is asked of a visit there may not depend on its place.
 */
final class Visits extends AbstractList<Visit> {

	/** The visits of all operations, each worked out once for all rules. */
	private static final class All {

		private final Map<ThreadingOperation, Visits> visits = new IdentityHashMap<>();

		All(Work work) {
			work.operations().forEach(operation -> visits.put(operation, new Visits(operation)));
		}
	}

	private final Optional<Strokes> strokes;
	private final List<Visit> all;
	private final List<Visit> typical;

	private Visits(ThreadingOperation operation) {
		strokes = operation instanceof Tapping tapping && tapping.method() != Tapping.Method.WRONG_TOOL ? Optional.of(tapping.strokes()) : Optional.empty();
		all = strokes.map(Visits::visits).orElseGet(() -> operation instanceof ThreadMilling milling ? firstPasses(milling) : List.of());
		typical = strokes.map(made -> made.typical().stream().map(Visit::of).toList()).orElse(all);
	}

	/** The visits of an operation of the work. */
	static Visits of(ThreadingOperation operation, Work work) {
		return work.derived(All.class, All::new).visits.get(operation);
	}

	private static List<Visit> firstPasses(ThreadMilling milling) {
		List<Visit> visits = new ArrayList<>();
		for (MillPass first : milling.firstPasses()) {
			if (!first.external()) {
				visits.add(Visit.of(first));
			}
		}
		return visits;
	}

	/** Strokes as visits, each made when it is asked for. */
	private static List<Visit> visits(List<TapStroke> strokes) {
		return new AbstractList<>() {

			@Override
			public Visit get(int index) {
				return Visit.of(strokes.get(index));
			}

			@Override
			public int size() {
				return strokes.size();
			}
		};
	}

	@Override
	public Visit get(int index) {
		return all.get(index);
	}

	@Override
	public int size() {
		return all.size();
	}

	/** The first visit of each kind, in order. */
	List<Visit> typical() {
		return typical;
	}

	/** How many visits there are of one of the {@link #typical()} kinds. */
	int count(int kind) {
		return strokes.map(made -> made.count(kind)).orElse(1);
	}

	/** The visits of those kinds that are as asked, in order. */
	List<Visit> where(Predicate<Visit> asked) {
		return strokes.map(made -> visits(made.where(stroke -> asked.test(Visit.of(stroke))))).orElseGet(() -> all.stream().filter(asked).toList());
	}
}
