package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What rules have asked of all of a program that is being edited, by whom, and what they were told. */
final class Surveys {

	/** The number of nobody's operation and stay, for what is asked of the program itself. */
	private static final int NOBODY = -1;

	/** A question of an operation, and what it was told. */
	private record Told<A>(int stay, Function<A, ?> question, Object answer) {

		boolean still(A all) {
			return question.apply(all).equals(answer);
		}
	}

	/** A survey that has been asked for. */
	private static final class Taken<S, A> {

		private final Survey<S, A> survey;
		private final NavigableMap<Integer, List<S>> said = new TreeMap<>();
		private final Map<Integer, List<Told<A>>> told = new HashMap<>();
		private Optional<A> all = Optional.empty();

		Taken(Survey<S, A> survey) {
			this.survey = survey;
		}

		/** What the stays of a work say, but for some. */
		Map<Integer, List<S>> of(Work work, BitSet without) {
			Map<Integer, List<S>> now = new HashMap<>();
			survey.of(work, (stay, one) -> {
				if (!without.get(stay)) {
					now.computeIfAbsent(stay, any -> new ArrayList<>(1)).add(one);
				}
			});
			return now;
		}

		A all() {
			if (all.isEmpty()) {
				List<S> every = new ArrayList<>();
				said.values().forEach(every::addAll);
				all = Optional.of(survey.all(every));
			}
			return all.get();
		}

		<Q> Q tell(int operation, int stay, Function<A, Q> question) {
			Q answer = question.apply(all());
			told.computeIfAbsent(operation, any -> new ArrayList<>(1)).add(new Told<>(stay, question, answer));
			return answer;
		}

		/**
		 * Takes what some stays say now, and forgets what their operations have asked; the stays of the others that would be told something
		 * else now.
		 */
		IntStream take(BitSet stays, Work part) {
			part.operations().forEach(operation -> told.remove(operation.index()));
			Map<Integer, List<S>> before = new HashMap<>();
			for (int stay = stays.nextSetBit(0); stay >= 0; stay = stays.nextSetBit(stay + 1)) {
				List<S> gone = said.remove(stay);
				if (gone != null) {
					before.put(stay, gone);
				}
			}
			Map<Integer, List<S>> now = of(part, new BitSet());
			said.putAll(now);
			all = Optional.empty();
			return now.equals(before) ? IntStream.empty()
					: told.values().stream().flatMap(List::stream).filter(one -> !one.still(all())).mapToInt(Told::stay);
		}
	}

	/**
	 * As many parts are kept for surveys that nobody has asked for yet: each keeps the lists of the program of its time, but nothing that
	 * rules have gathered of them.
	 */
	private static final int MOST_PARTS = 100;

	private Work first;
	/** The work of each stay that has been sorted by itself since. */
	private final Map<Integer, Work> later = new HashMap<>();
	private final Map<Survey<?, ?>, Taken<?, ?>> taken = new HashMap<>();

	/** @param first the work of the whole program, as it was followed from its beginning */
	Surveys(Work first) {
		this.first = first;
	}

	/** Whether what follows from a survey is known, or can still be told. */
	synchronized boolean knows(Survey<?, ?> survey) {
		return taken.containsKey(survey) || later.values().stream().distinct().limit(MOST_PARTS + 1L).count() <= MOST_PARTS;
	}

	/** What an operation is told. */
	synchronized <S, A, Q> Q tell(ThreadingOperation operation, Survey<S, A> survey, Function<A, Q> question) {
		return taken(survey).tell(operation.index(), operation.tool().index(), question);
	}

	/** What follows for the program itself. */
	synchronized <S, A> A tell(Survey<S, A> survey) {
		return taken(survey).tell(NOBODY, NOBODY, Function.identity());
	}

	@SuppressWarnings("unchecked")
	private <S, A> Taken<S, A> taken(Survey<S, A> survey) {
		Taken<S, A> known = (Taken<S, A>) taken.get(survey);
		if (known == null) {
			known = new Taken<>(survey);
			BitSet edited = new BitSet();
			later.keySet().forEach(edited::set);
			known.said.putAll(known.of(first, edited));
			for (Work part : new LinkedHashSet<>(later.values())) {
				known.said.putAll(known.of(part, new BitSet()));
			}
			taken.put(survey, known);
		}
		return known;
	}

	/**
	 * Takes stays that were sorted by themselves, all that have a hole in common among them, and gives the stays of other operations that
	 * would be told something else now; empty where the program itself would be.
	 */
	synchronized Optional<BitSet> take(BitSet stays, Work part) {
		if (later.isEmpty()) {
			first = first.withoutAnswers();
		}
		if (later.values().stream().distinct().limit(MOST_PARTS + 1L).count() <= MOST_PARTS) {
			Work kept = part.withoutAnswers();
			stays.stream().forEach(stay -> later.put(stay, kept));
		}
		List<Integer> others = new ArrayList<>();
		taken.values().forEach(known -> known.take(stays, part).forEach(others::add));
		BitSet told = new BitSet();
		others.stream().filter(stay -> stay != NOBODY).forEach(told::set);
		return others.contains(NOBODY) ? Optional.empty() : Optional.of(told);
	}
}
