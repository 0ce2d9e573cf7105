package truelead.checker.work;

import java.util.List;
import java.util.function.BiConsumer;
import truelead.checker.hole.Hole;

/**
 * What a rule wants to know of all of a program: what each stay of a tool says by itself, by its operations and by the holes that it
 * begins, and what follows from all that is said. After an edit only the stays that are judged anew are asked again ({@link Work#survey}).
 * A rule has one object of it, by which it is known.
 *
 * @param <S> what is said; equal where the same follows from it
 * @param <A> what follows
 */
public interface Survey<S, A> {

	/** Hands out what is said in a work, each with the number of the stay that says it: that of an operation, or that of a hole. */
	void of(Work work, BiConsumer<Integer, S> said);

	/** What follows from all that is said, in the order of the program. */
	A all(List<S> said);

	/** The number of the stay that begins a hole; -1 where nothing was done. */
	static int stay(Hole hole) {
		return hole.cuts().isEmpty() ? -1 : hole.cuts().get(0).tool().index();
	}
}
