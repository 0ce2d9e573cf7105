package truelead.checker.hole;

import java.util.Arrays;
import java.util.stream.IntStream;

/** The holes that edits have changed, by their numbers, and where they are; immutable. */
final class Spots {

	/** None. */
	static final Spots NONE = new Spots(new Column<>(), new Column<>());

	private static final int SLOTS = 1 << 10;
	/** As far as anything is taken for one with a hole, so that it is in the cell of its place or in one beside it, mm. */
	private static final double CELL = HoleBook.FARTHEST;
	private static final int[] EMPTY = {};

	private final Column<Spot> spots;
	/** The numbers of those whose cells share a slot. */
	private final Column<int[]> slots;

	private Spots(Column<Spot> spots, Column<int[]> slots) {
		this.spots = spots;
		this.slots = slots;
	}

	/** The hole with a number; null where no edit has changed it. */
	Spot get(int number) {
		return spots.get(number);
	}

	/** The same with another hole of a number. */
	Spots with(int number, Spot spot) {
		Column<int[]> changed = slots;
		Spot before = spots.get(number);
		if (before != null && !before.gone()) {
			int slot = slot(before.place(), 0, 0);
			changed = changed.with(slot, Arrays.stream(here(slot)).filter(other -> other != number).toArray());
		}
		if (!spot.gone()) {
			int slot = slot(spot.place(), 0, 0);
			int[] here = changed.get(slot) == null ? EMPTY : changed.get(slot);
			int[] more = Arrays.copyOf(here, here.length + 1);
			more[here.length] = number;
			changed = changed.with(slot, more);
		}
		return new Spots(spots.with(number, spot), changed);
	}

	/** The numbers of those within a distance in mm of a place. */
	IntStream near(Place place, double distance) {
		int cells = (int) Math.ceil(Math.min(distance, CELL * SLOTS) / CELL);
		IntStream found = (2 * cells + 1) * (2 * cells + 1) > SLOTS ? IntStream.range(0, SLOTS)
				: IntStream.rangeClosed(-cells, cells).flatMap(beside -> IntStream.rangeClosed(-cells, cells)
						.map(behind -> slot(place, beside, behind))).distinct();
		return found.flatMap(slot -> Arrays.stream(here(slot))).filter(number -> spots.get(number).place().distance(place) <= distance);
	}

	private int[] here(int slot) {
		int[] here = slots.get(slot);
		return here == null ? EMPTY : here;
	}

	private static int slot(Place place, int beside, int behind) {
		return Place.scatter((long) Math.floor(place.u() / CELL) + beside, (long) Math.floor(place.v() / CELL) + behind) & SLOTS - 1;
	}
}
