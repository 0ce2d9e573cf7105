package truelead.checker.hole;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import truelead.checker.machine.Rotary;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/**
 * All holes of a program, numbered in the order first reached, but for those that edits have changed since; each is made anew when it is
 * asked for.
 */
public final class Holes {

	private final HoleGrid grid;
	private final CutChains chains;
	private final CutKinds kinds;
	private final double tolerance;
	private final boolean unknownPlaces;
	private final boolean crowded;
	private final PairNumbers pairs;
	/** Where holes are made, as they were before any edit. */
	private final MadeHoles made;
	private final Spots spots;
	/** One more than the largest number. */
	private final int end;
	private final boolean oneFrame;
	private final Set<Rotary> rotaries;

	Holes(HoleGrid grid, CutChains chains, CutKinds kinds, double tolerance, boolean unknownPlaces, boolean crowded) {
		this.grid = grid;
		this.chains = chains;
		this.kinds = kinds;
		this.tolerance = tolerance;
		this.unknownPlaces = unknownPlaces;
		this.crowded = crowded;
		this.pairs = new PairNumbers();
		this.made = new MadeHoles(grid, chains::firstMade);
		this.spots = Spots.NONE;
		this.end = grid.count();
		this.oneFrame = grid.inOneFrame();
		this.rotaries = grid.rotaries();
	}

	private Holes(Holes other, Spots spots, int end, Place added) {
		this.oneFrame = other.oneFrame && other.grid.place(0).comparable(added);
		this.rotaries = other.rotaries.contains(added.rotary()) ? other.rotaries
				: Stream.concat(other.rotaries.stream(), Stream.of(added.rotary())).collect(Collectors.toUnmodifiableSet());
		this.grid = other.grid;
		this.chains = other.chains;
		this.kinds = other.kinds;
		this.tolerance = other.tolerance;
		this.unknownPlaces = other.unknownPlaces;
		this.crowded = other.crowded;
		this.pairs = other.pairs;
		this.made = other.made;
		this.spots = spots;
		this.end = end;
	}

	/** The same with another hole of a number, which may be the next one, {@link #count()}. */
	public Holes with(int number, Spot spot) {
		return new Holes(this, spots.with(number, spot), Math.max(end, number + 1), spot.place());
	}

	/** One more than the largest number; each has a hole unless an edit has changed it. */
	public int count() {
		return end;
	}

	/** How far two positions of one hole may be apart, mm. */
	public double tolerance() {
		return tolerance;
	}

	/** The kinds of cuts. */
	public CutKinds kinds() {
		return kinds;
	}

	/** A hole by its number. */
	public Hole hole(int number) {
		Spot spot = spots.get(number);
		return spot == null ? new Hole(grid.place(number), chains.cuts(number))
				: new Hole(spot.place(), spot.cuts().stream().map(link -> link.row().cut(link.index())).toList());
	}

	/** Position of a hole along the first axis of its plane, mm. */
	public double u(int number) {
		Spot spot = spots.get(number);
		return spot == null ? grid.u(number) : spot.place().u();
	}

	/** Position of a hole along the second axis of its plane, mm. */
	public double v(int number) {
		Spot spot = spots.get(number);
		return spot == null ? grid.v(number) : spot.place().v();
	}

	/** Some holes by their numbers. */
	public List<Hole> holes(int[] numbers) {
		return new AbstractList<>() {

			@Override
			public Hole get(int index) {
				return hole(numbers[index]);
			}

			@Override
			public int size() {
				return numbers.length;
			}
		};
	}

	/** All of them, in the order of their numbers. */
	public List<Hole> all() {
		return holes(IntStream.range(0, end).filter(number -> spots.get(number) == null || !spots.get(number).gone()).boxed()
				.sorted(firstReached()).mapToInt(Integer::intValue).toArray());
	}

	/** The order in which holes with cuts are first reached. */
	public Comparator<Integer> firstReached() {
		return (one, other) -> spots.get(one) == null && spots.get(other) == null ? Integer.compare(one, other)
				: Long.compare(reached(one), reached(other));
	}

	private long reached(int number) {
		Spot spot = spots.get(number);
		List<Spot.Link> cuts = spot == null ? chains.links(number) : spot.cuts();
		return !cuts.isEmpty() ? cuts.get(0).order() : Integer.MAX_VALUE + (spot == null ? number : (long) end);
	}

	/** The cuts at a hole, as rows and the numbers in them. */
	public List<Spot.Link> links(int number) {
		Spot spot = spots.get(number);
		return spot == null ? chains.links(number) : spot.cuts();
	}

	/** The hole as edits have left it; null where none has changed it. */
	public Spot edited(int number) {
		return spots.get(number);
	}

	/** Whether a cut makes a hole. */
	public boolean made(int number) {
		Spot spot = spots.get(number);
		return spot == null ? chains.made(number) : spot.made();
	}

	/**
	 * A number for what is done at a hole, and which of it before a step: the same for holes where that differs in place, block and time
	 * alone.
	 */
	public int history(int number, int order) {
		Spot spot = spots.get(number);
		if (spot == null) {
			return chains.history(number, order, pairs);
		}
		int history = 0;
		for (int link = spot.cuts().size() - 1; link >= 0; link--) {
			history = CutChains.history(history, spot.cuts().get(link).row(), spot.cuts().get(link).index(), order, pairs);
		}
		return history;
	}

	/**
	 * Whether the {@link #history} of two holes, each before a step of its own, is sure to be the same; far quicker than to ask for both.
	 */
	public boolean alike(int number, int order, int other, int otherOrder) {
		return spots == Spots.NONE && chains.alike(number, order, other, otherOrder);
	}

	/** Numbers for histories and what else is told apart with them; whoever asks for a history or a number holds this monitor. */
	public PairNumbers pairs() {
		return pairs;
	}

	/** Whether a cut that makes a hole is at a place that is not known. */
	public boolean unknownPlaces() {
		return unknownPlaces;
	}

	/** Whether so many cuts are at one hole that some were left out. */
	public boolean crowded() {
		return crowded;
	}

	/** Whether all are in one frame. */
	public boolean inOneFrame() {
		return oneFrame;
	}

	/** Where the rotary axes stand at holes, those that edits have changed since among them. */
	public Set<Rotary> rotaries() {
		return rotaries;
	}

	/** The planes that holes are in. */
	public Set<Plane> planes() {
		return grid.planes();
	}

	/** Hands out the numbers of the stays whose tools cut at a hole, one as often as it cuts. */
	public void stays(int number, IntConsumer stays) {
		Spot spot = spots.get(number);
		if (spot == null) {
			chains.stays(number, stays);
		} else {
			spot.cuts().forEach(link -> stays.accept(link.row().first().tool().index()));
		}
	}

	/** The numbers of the holes within a distance in mm of a place, nearest first. */
	public List<Integer> numbersNear(Place place, double distance) {
		if (!place.known()) {
			return List.of();
		}
		List<Integer> known = grid.near(grid.knownFrame(place), place.u(), place.v(), distance);
		if (spots == Spots.NONE) {
			return known;
		}
		List<Integer> near = new ArrayList<>(spots.near(place, distance).boxed().toList());
		known.stream().filter(number -> spots.get(number) == null).forEach(near::add);
		near.sort((one, other) -> {
			int nearer = Double.compare(place(one).distance(place), place(other).distance(place));
			return nearer != 0 ? nearer : firstReached().compare(one, other);
		});
		return near;
	}

	/**
	 * The nearest hole within a distance in mm of a place that was made before a step, but for the one at the very place; of several as
	 * near the first one reached.
	 */
	public Optional<Hole> madeBeside(Place place, double distance, int order) {
		if (!place.known()) {
			return Optional.empty();
		}
		IntPredicate asked = number -> spots.get(number) == null && !place(number).equals(place);
		int known = made.nearest(grid.knownFrame(place), place.u(), place.v(), distance, order, asked);
		if (spots == Spots.NONE) {
			return known < 0 ? Optional.empty() : Optional.of(hole(known));
		}
		Comparator<Integer> nearer = (one, other) -> Double.compare(place(one).distance(place), place(other).distance(place));
		return IntStream.concat(spots.near(place, distance).filter(number -> !place(number).equals(place)),
				IntStream.of(known).filter(number -> number >= 0)).boxed().filter(number -> hole(number).madeBefore(order))
				.min(nearer.thenComparing(firstReached())).map(this::hole);
	}

	/** Where a hole is. */
	public Place place(int number) {
		Spot spot = spots.get(number);
		return spot == null ? grid.place(number) : spot.place();
	}

	/**
	 * The number of the hole at a place, the nearest within the tolerance or a distance in mm beyond it; -1 where there is none or the
	 * place is not known.
	 */
	public int at(Place place, double within) {
		if (!place.known()) {
			return -1;
		}
		double reach = HoleBook.within(Math.max(tolerance, within));
		return spots == Spots.NONE ? grid.nearest(grid.knownFrame(place), place.u(), place.v(), reach) : nearest(place, reach);
	}

	private int nearest(Place place, double within) {
		int known = grid.nearest(grid.knownFrame(place), place.u(), place.v(), within, spots);
		Comparator<Integer> nearer = (one, other) -> Double.compare(place(one).distance(place), place(other).distance(place));
		return IntStream.concat(spots.near(place, within), IntStream.of(known).filter(number -> number >= 0)).boxed()
				.min(nearer.thenComparing(firstReached())).orElse(-1);
	}

	/** The numbers of the holes at the places of a row, of which the first is given; each has one. */
	public int[] at(Place first, Step.Row row) {
		int[] numbers = new int[row.count()];
		if (spots != Spots.NONE) {
			Arrays.setAll(numbers, i -> at(first.at(row.x(i), row.y(i)), 0));
			return numbers;
		}
		int frame = grid.knownFrame(first);
		for (int i = 0; i < numbers.length; i++) {
			numbers[i] = grid.nearest(frame, row.x(i), row.y(i), HoleBook.within(tolerance));
		}
		return numbers;
	}

	/** The hole within so many mm of a place; an untouched one where there is none. */
	public Hole hole(Place place, double within) {
		int number = at(place, within);
		return number < 0 ? Hole.untouched(place) : hole(number);
	}

	/** All holes within a distance in mm of a place, nearest first; none where the place is not known. */
	public List<Hole> near(Place place, double distance) {
		return numbersNear(place, distance).stream().map(this::hole).toList();
	}
}
