package truelead.checker.thread;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;

/**
 * The answers given last on a few threads, each known by the very object that asks: rules ask of one thread at each of its thousand places,
 * and a program of many operations has a handful of threads by turns.
 *
 * @param <A> the answer, immutable
 */
final class Lately<A> {

	/** Threads that are kept at most, a power of two (a choice of ours). */
	private static final int SLOTS = 16;

	private final AtomicReferenceArray<Asked<A>> last = new AtomicReferenceArray<>(SLOTS);
	private final Function<ThreadSpec, A> function;

	private record Asked<A>(ThreadSpec spec, A answer) {
	}

	Lately(Function<ThreadSpec, A> function) {
		this.function = function;
	}

	/** What the function says of a thread. */
	A of(ThreadSpec spec) {
		int slot = spec.hashCode() & SLOTS - 1;
		Asked<A> known = last.get(slot);
		if (known == null || known.spec() != spec) {
			known = new Asked<>(spec, function.apply(spec));
			last.set(slot, known);
		}
		return known.answer();
	}
}
