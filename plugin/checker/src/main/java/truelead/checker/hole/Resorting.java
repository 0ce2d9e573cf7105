package truelead.checker.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;

/**
 * Sorts into holes again what an edit has changed, with all that is at the same holes or so near that it may be taken for one with them.
 */
public final class Resorting {

	/** More holes than these are not sorted by themselves. */
	private static final int MOST = 5_000;
	/** Where they are more than this part of all, and more than a few, all are sorted as fast from the beginning. */
	private static final int PART = 20;
	private static final int FEW = 50;

	/**
	 * Something done at a place: a cut, or a thread where there is none.
	 *
	 * @param within how far its hole may be from the place if that is further than positions of one hole may be apart, mm
	 */
	public record Doing(int order, Place place, double within, Optional<Spot.Link> cut) {
	}

	/** What is done at one place, in order. */
	private record Gathered(Place place, List<Spot.Link> cuts, List<Integer> visits) {
	}

	private final Holes before;
	/** The numbers of the steps that thread in a hole. */
	private final IntFunction<List<Integer>> visits;
	private final IntFunction<Doing> threadAt;
	/** How far apart holes may be of which one can be taken for the other after another one has gone or come, mm. */
	private final double far;
	private final Set<Integer> touched = new TreeSet<>();
	private final Map<Integer, Integer> moved = new HashMap<>();
	private final List<Integer> numbers = new ArrayList<>();
	private Holes holes;

	/**
	 * @param visits  the numbers of the steps that thread in a hole
	 * @param threadAt what such a step does
	 * @param farthest how far any position of a hole may be from it, mm
	 */
	public Resorting(Holes before, IntFunction<List<Integer>> visits, IntFunction<Doing> threadAt, double farthest) {
		this.before = before;
		this.visits = visits;
		this.threadAt = threadAt;
		this.far = 3 * farthest;
		this.holes = before;
	}

	/** Takes out what was done, and puts in what is done now; false where that is too much, or tells holes apart by more than places. */
	public boolean change(List<Doing> removed, List<Doing> added) {
		for (Doing gone : removed) {
			int hole = holeOf(gone);
			if (hole < 0) {
				return false;
			}
			touched.add(hole);
		}
		for (Doing more : added) {
			if (!more.place().known()) {
				return false;
			}
			touched.addAll(before.numbersNear(more.place(), far));
		}
		return widen() && sort(removed, added);
	}

	private int holeOf(Doing doing) {
		for (int hole : before.numbersNear(doing.place(), within(doing))) {
			boolean here = doing.cut().isPresent() ? before.links(hole).stream().anyMatch(link -> link.order() == doing.order())
					: visits.apply(hole).contains(doing.order());
			if (here) {
				return hole;
			}
		}
		return -1;
	}

	private double within(Doing doing) {
		return HoleBook.within(Math.max(before.tolerance(), doing.within()));
	}

	private boolean widen() {
		List<Integer> open = new ArrayList<>(touched);
		int most = Math.min(MOST, FEW + before.count() / PART);
		while (!open.isEmpty() && touched.size() <= most) {
			for (int near : before.numbersNear(before.place(open.remove(open.size() - 1)), far)) {
				if (touched.add(near)) {
					open.add(near);
				}
			}
		}
		return touched.size() <= most;
	}

	private boolean sort(List<Doing> removed, List<Doing> added) {
		Set<Integer> gone = new HashSet<>();
		removed.forEach(doing -> gone.add(doing.order()));
		List<Doing> all = new ArrayList<>(added);
		for (int hole : touched) {
			for (Spot.Link link : before.links(hole)) {
				if (link.row().first().kind() == Cut.Kind.MILL) {
					return false;
				}
				if (!gone.contains(link.order())) {
					all.add(new Doing(link.order(), link.row().place(link.index()), 0, Optional.of(link)));
				}
			}
			for (int order : visits.apply(hole)) {
				if (!gone.contains(order)) {
					all.add(threadAt.apply(order));
				}
			}
		}
		all.sort(Comparator.comparing((Doing doing) -> doing.cut().isEmpty()).thenComparingInt(Doing::order));
		HoleGrid grid = new HoleGrid();
		List<Gathered> places = new ArrayList<>();
		for (Doing doing : all) {
			int frame = grid.frame(doing.place());
			int known = grid.nearest(frame, doing.place().u(), doing.place().v(), within(doing));
			if (known < 0) {
				known = grid.add(frame, doing.place().u(), doing.place().v());
				places.add(new Gathered(doing.place(), new ArrayList<>(), new ArrayList<>()));
			}
			doing.cut().ifPresent(places.get(known).cuts()::add);
		}
		for (Doing doing : all) {
			if (doing.cut().isEmpty()) {
				// of holes that threads alone tell a later one may be nearer
				places.get(grid.nearest(grid.frame(doing.place()), doing.place().u(), doing.place().v(), within(doing))).visits()
						.add(doing.order());
			}
		}
		number(places);
		return places.stream().allMatch(place -> place.cuts().size() < HoleBook.REPEATED);
	}

	/** Gives each hole the number of the one that was at its place, or another one that is free. */
	private void number(List<Gathered> places) {
		Map<Place, Integer> free = new HashMap<>();
		touched.forEach(hole -> free.put(before.place(hole), hole));
		List<Gathered> without = new ArrayList<>();
		for (Gathered place : places) {
			Integer known = free.remove(place.place());
			if (known == null) {
				without.add(place);
			} else {
				put(known, place);
			}
		}
		List<Integer> left = new ArrayList<>(free.values());
		for (Gathered place : without) {
			put(left.isEmpty() ? holes.count() : left.remove(left.size() - 1), place);
		}
		for (int hole : left) {
			holes = holes.with(hole, new Spot(before.place(hole), List.of(), List.of()));
		}
	}

	private void put(int number, Gathered place) {
		holes = holes.with(number, new Spot(place.place(), place.cuts(), place.visits()));
		numbers.add(number);
		place.visits().forEach(order -> moved.put(order, number));
	}

	/** The holes as they are now. */
	public Holes holes() {
		return holes;
	}

	/** The numbers of the holes before that were sorted again. */
	public Set<Integer> touched() {
		return touched;
	}

	/** The numbers of the holes that they are now. */
	public List<Integer> numbers() {
		return numbers;
	}

	/** The holes of the strokes that thread there, by the numbers of their steps. */
	public Map<Integer, Integer> moved() {
		return moved;
	}
}
