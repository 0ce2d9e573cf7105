package truelead.checker.rule.tapping;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * Where a tap begins.
 *
 * @param left    whether that is where the tool before it ended, as it is where the block that goes to its own first place is left out
 * @param several whether that tool had been at other places before, so that this is no matter of course
 */
record FirstPlace(boolean left, boolean several) {

	private static final FirstPlace ITS_OWN = new FirstPlace(false, false);

	/** The last places of the tapping operations of each stay. */
	private static final Survey<LastThread, Map<Integer, Set<Place>>> THREADS = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, LastThread> said) {
			work.tappings().stream().filter(one -> !one.strokes().isEmpty())
					.forEach(one -> said.accept(one.tool().index(),
							new LastThread(one.tool().index(), one.strokes().get(one.strokes().size() - 1).place())));
		}

		@Override
		public Map<Integer, Set<Place>> all(List<LastThread> said) {
			return said.stream().collect(Collectors.groupingBy(LastThread::stay,
					Collectors.mapping(LastThread::place, Collectors.toSet())));
		}
	};

	/** Where the tools that cut at holes end, by their stays. */
	private static final Survey<End, Map<Integer, End>> ENDS = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, End> said) {
			Map<Integer, Place> first = new HashMap<>();
			Map<Integer, End> ends = new TreeMap<>();
			for (Hole hole : work.holes()) {
				for (Cut cut : hole.cuts()) {
					int stay = cut.tool().index();
					Place known = first.putIfAbsent(stay, cut.place());
					ends.merge(stay, new End(stay, cut.order(), known != null && !known.equals(cut.place())), End::with);
				}
			}
			ends.forEach(said);
		}

		@Override
		public Map<Integer, End> all(List<End> said) {
			return said.stream().collect(Collectors.toMap(End::stay, Function.identity()));
		}
	};

	private record LastThread(int stay, Place place) {
	}

	/**
	 * The last cut of a tool at a hole.
	 *
	 * @param order   number of its step
	 * @param several whether the tool cuts at other places too
	 */
	private record End(int stay, int order, boolean several) {

		End with(End other) {
			return new End(stay, Math.max(order, other.order), several || other.several);
		}
	}

	/** The first place of an operation. */
	static FirstPlace of(Tapping tapping, Work work) {
		if (tapping.strokes().isEmpty()) {
			return ITS_OWN;
		}
		int before = tapping.tool().index() - 1;
		TapStroke first = tapping.strokes().get(0);
		Place place = first.place();
		if (work.survey(tapping, THREADS, threads -> threads.getOrDefault(before, Set.of()).contains(place))) {
			return new FirstPlace(true, true);
		}
		int cut = cut(first, before);
		if (cut < 0 || cut(tapping.strokes().get(tapping.strokes().size() - 1), before) > cut) {
			// so it went on from here
			return ITS_OWN;
		}
		return work.survey(tapping, ENDS, ends -> ends.get(before).order() == cut
				? new FirstPlace(true, ends.get(before).several()) : ITS_OWN);
	}

	/** Number of the last cut of a stay at the hole of a stroke; -1 for none. */
	private static int cut(TapStroke stroke, int stay) {
		return stroke.hole().cuts().stream().filter(one -> one.tool().index() == stay).mapToInt(Cut::order).max().orElse(-1);
	}
}
