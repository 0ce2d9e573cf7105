package truelead.checker.hole;

import java.util.AbstractList;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/** All holes of a program, numbered in the order first reached; each is made anew when it is asked for. */
public final class Holes {

	private final HoleGrid grid;
	private final CutChains chains;
	private final double tolerance;
	private final boolean unknownPlaces;
	private final boolean crowded;
	private final PairNumbers pairs = new PairNumbers();

	Holes(HoleGrid grid, CutChains chains, double tolerance, boolean unknownPlaces, boolean crowded) {
		this.grid = grid;
		this.chains = chains;
		this.tolerance = tolerance;
		this.unknownPlaces = unknownPlaces;
		this.crowded = crowded;
	}

	/** Number of holes. */
	public int count() {
		return grid.count();
	}

	/** A hole by its number. */
	public Hole hole(int number) {
		return new Hole(grid.place(number), chains.cuts(number));
	}

	/** Position of a hole along the first axis of its plane, mm. */
	public double u(int number) {
		return grid.u(number);
	}

	/** Position of a hole along the second axis of its plane, mm. */
	public double v(int number) {
		return grid.v(number);
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
		return new AbstractList<>() {

			@Override
			public Hole get(int index) {
				return hole(index);
			}

			@Override
			public int size() {
				return count();
			}
		};
	}

	/** Whether a cut makes a hole. */
	public boolean made(int number) {
		return chains.made(number);
	}

	/** A number for what is done at a hole, and which of it before a step: the same for holes where that differs in place, block and time alone. */
	public int history(int number, int order) {
		return chains.history(number, order, pairs);
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

	/** The planes that holes are in. */
	public Set<Plane> planes() {
		return grid.planes();
	}

	/** Hands out the numbers of the stays whose tools cut at a hole, one as often as it cuts. */
	public void stays(int number, IntConsumer stays) {
		chains.stays(number, stays);
	}

	/** The numbers of the holes within a distance in mm of a place, nearest first. */
	public List<Integer> numbersNear(Place place, double distance) {
		return place.known() ? grid.near(grid.knownFrame(place), place.u(), place.v(), distance) : List.of();
	}

	/** Where a hole is. */
	public Place place(int number) {
		return grid.place(number);
	}

	/** The number of the hole at a place, the nearest within the tolerance or a distance in mm beyond it; -1 where there is none or the place is not known. */
	public int at(Place place, double within) {
		return place.known() ? grid.nearest(grid.knownFrame(place), place.u(), place.v(), HoleBook.within(Math.max(tolerance, within))) : -1;
	}

	/** The numbers of the holes at the places of a row, of which the first is given; each has one. */
	public int[] at(Place first, Step.Row row) {
		int[] numbers = new int[row.count()];
		int frame = grid.knownFrame(first);
		for (int i = 0; i < numbers.length; i++) {
			numbers[i] = grid.nearest(frame, row.x(i), row.y(i), HoleBook.within(tolerance));
		}
		return numbers;
	}

	/** The hole at a place; untouched where there is none. */
	public Hole hole(Place place, double within) {
		int number = at(place, within);
		return number < 0 ? Hole.untouched(place) : hole(number);
	}

	/** All holes within a distance in mm of a place, nearest first; none where the place is not known. */
	public List<Hole> near(Place place, double distance) {
		return numbersNear(place, distance).stream().map(this::hole).toList();
	}
}
