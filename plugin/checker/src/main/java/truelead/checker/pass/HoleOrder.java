package truelead.checker.pass;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import truelead.checker.hole.Place;

/** Numbers the holes that some passes are at from 0, in the order first reached; places that are not known count as holes of their own. */
final class HoleOrder {

	private final int least;
	/** Of each hole from the least on its number, counted from 1; 0 for none. */
	private final int[] numbers;
	private final Map<Place, Integer> unknown = new HashMap<>();
	private int count;

	/** @param holes the numbers of the holes in the program; below 0 for one that is not known */
	HoleOrder(int[] holes) {
		int most = -1;
		int few = Integer.MAX_VALUE;
		for (int hole : holes) {
			most = Math.max(most, hole);
			few = hole < 0 ? few : Math.min(few, hole);
		}
		least = few;
		numbers = new int[most < 0 ? 0 : most - few + 1];
	}

	/** The number of a hole, which may be the next one, {@link #count()}. */
	int of(int hole, Supplier<Place> place) {
		if (hole < 0) {
			return unknown.computeIfAbsent(place.get(), fresh -> count++);
		}
		if (numbers[hole - least] == 0) {
			numbers[hole - least] = ++count;
		}
		return numbers[hole - least] - 1;
	}

	/** How many there are so far. */
	int count() {
		return count;
	}
}
