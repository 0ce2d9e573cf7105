package truelead.checker.rule.hole;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import java.util.function.Predicate;
import truelead.checker.hole.Place;
import truelead.checker.pass.MillPasses;
import truelead.checker.rule.DrillsThatTap;
import truelead.checker.stroke.Strokes;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The visits of an operation in order, the first pass of a thread mill at each hole; none for bolts, for dies and for tools that make no
 * thread. They are judged by the {@link #typical()} ones, as {@link Strokes#typical()} and {@link MillPasses#typical()} say: what is asked
 * of a visit there may not depend on its place.
 */
final class Visits extends AbstractList<Visit> {

	/** The visits of all operations, each worked out once for all rules. */
	private static final class All {

		/** By the operation's number in the program, of which the work may be a part alone. */
		private final AtomicReferenceArray<Visits> visits;
		private final Work work;

		All(Work work) {
			this.work = work;
			this.visits = new AtomicReferenceArray<>(work.operationsOfProgram().size());
			work.operations().forEach(this::of);
		}

		Visits of(ThreadingOperation operation) {
			Visits known = visits.get(operation.index());
			if (known == null) {
				visits.compareAndSet(operation.index(), null, new Visits(operation, work));
				known = visits.get(operation.index());
			}
			return known;
		}
	}

	private final Optional<Strokes> strokes;
	private final Optional<MillPasses> passes;
	private final List<Visit> all;
	private final List<Visit> typical;
	private final ThreadingOperation operation;
	private final Predicate<Visit> drilledByTapping;
	private List<DrilledSize> sizes;

	private Visits(ThreadingOperation operation, Work work) {
		this.operation = operation;
		drilledByTapping = visit -> DrillsThatTap.of(work).before(visit.hole().place(), visit.order());
		strokes = operation instanceof Tapping tapping && tapping.method() != Tapping.Method.WRONG_TOOL && !operation.tool().facts().isDie()
				? Optional.of(tapping.strokes()) : Optional.empty();
		passes = operation instanceof ThreadMilling milling
				? Optional.of(milling.firstPasses().where(pass -> !pass.external() || work.turnedOver(pass))) : Optional.empty();
		all = strokes.map(made -> visits(made, Visit::of)).or(() -> passes.map(made -> visits(made, Visit::of))).orElse(List.of());
		List<Visit> kinds = new ArrayList<>(2);
		strokes.ifPresent(made -> made.typical().forEach(stroke -> kinds.add(Visit.of(stroke))));
		passes.ifPresent(made -> made.typical().forEach(pass -> kinds.add(Visit.of(pass))));
		kinds.replaceAll(visit -> visit.in(AnotherPart.inPart(work, visit.hole(), visit.order())));
		typical = List.copyOf(kinds);
	}

	/** The visits of an operation of the work. */
	static Visits of(ThreadingOperation operation, Work work) {
		return work.derived(All.class, All::new).of(operation);
	}

	/** Visits, each made when it is asked for. */
	private static <T> List<Visit> visits(List<T> made, Function<T, Visit> maker) {
		return new AbstractList<>() {

			@Override
			public Visit get(int index) {
				return maker.apply(made.get(index));
			}

			@Override
			public int size() {
				return made.size();
			}
		};
	}

	/** The operation that makes them. */
	ThreadingOperation operation() {
		return operation;
	}

	@Override
	public Visit get(int index) {
		return all.get(index);
	}

	@Override
	public int size() {
		return all.size();
	}

	/** Whether one of them is at the place of a hole. */
	boolean at(Place place) {
		return strokes.map(made -> made.at(place)).or(() -> passes.map(made -> made.at(place))).orElse(false);
	}

	/** The different sizes that the operation finds, as {@link DrilledSize#all} gives them. */
	synchronized List<DrilledSize> sizes() {
		if (sizes == null) {
			// where a drill tapped, nobody knows what hole it made
			sizes = DrilledSize.all(operation, typical.stream().filter(visit -> !drilledByTapping.test(visit)).toList());
		}
		return sizes;
	}

	/** The first visit of each kind, in order. */
	List<Visit> typical() {
		return typical;
	}

	/** How many visits there are of one of the {@link #typical()} kinds. */
	int count(int kind) {
		return strokes.map(made -> made.count(kind)).or(() -> passes.map(made -> made.count(kind))).orElseThrow();
	}

	/** The visits of those kinds that are as asked, in order. */
	List<Visit> where(Predicate<Visit> asked) {
		BitSet found = null;
		for (int kind = 0; kind < typical.size(); kind++) {
			if (asked.test(typical.get(kind))) {
				found = found == null ? new BitSet() : found;
				found.set(kind);
			}
		}
		if (found == null) {
			return List.of();
		}
		BitSet kinds = found;
		return strokes.map(made -> visits(made.ofKinds(kinds), Visit::of))
				.or(() -> passes.map(made -> visits(made.ofKinds(kinds), Visit::of))).orElseThrow();
	}
}
