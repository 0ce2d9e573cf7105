package truelead.checker.rule.hole;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import truelead.checker.hole.Place;
import truelead.checker.machine.Rotary;
import truelead.checker.program.Plane;

/**
 * The places that a tool threads by their numbers alone, so that the same holes of another part, on another side of the part or in a mirror
 * are known.
 */
final class ThreadedPlaces {

	/** Places that are the same but for rounding, mm. */
	private static final double SAME = 0.001;

	private final Set<Place> places;
	private final Map<Numbers, Set<Side>> sides = new HashMap<>();

	ThreadedPlaces(Set<Place> places) {
		this.places = places;
		places.forEach(place -> sides.computeIfAbsent(new Numbers(place), at -> new HashSet<>()).add(new Side(place)));
	}

	/**
	 * Whether the same coordinates are threaded under other work offsets alone, one more part of the same kind, or on another side of the
	 * part; not where a hole may have been drilled from both sides.
	 */
	boolean twin(Place place) {
		Numbers numbers = new Numbers(place);
		Set<Side> threaded = sides.getOrDefault(numbers, Set.of());
		boolean turned = threaded.stream().noneMatch(side -> side.rotary().equals(place.rotary()));
		return !threaded.isEmpty() && !threaded.contains(new Side(place)) && !(turned && numbers.turnsOver(sides));
	}

	/** Whether each of some places, at least one, is the image of a threaded one at the same line. */
	boolean mirror(List<Place> images) {
		for (Place first : places) {
			double u = first.u() + images.get(0).u();
			double v = first.v() + images.get(0).v();
			if (images.stream().allMatch(image -> has(image.at(u - image.u(), image.v())))
					|| images.stream().allMatch(image -> has(image.at(image.u(), v - image.v())))) {
				return true;
			}
		}
		return false;
	}

	private boolean has(Place wanted) {
		return sides.getOrDefault(new Numbers(wanted), Set.of()).contains(new Side(wanted));
	}

	/** The numbers of a place, to a thousandth of a mm, whatever they count from. */
	private record Numbers(Plane plane, long u, long v) {

		Numbers(Place place) {
			this(place.plane(), Math.round(place.u() / SAME), Math.round(place.v() / SAME));
		}

		/** The same from the other side of a part that is turned over, where that is another place. */
		boolean turnsOver(Map<Numbers, Set<Side>> sides) {
			return sides.containsKey(new Numbers(plane, -u, v)) || sides.containsKey(new Numbers(plane, u, -v));
		}
	}

	/** What coordinates count from, and how a rotary axis turns the part there. */
	private record Side(int workOffset, Rotary rotary) {

		Side(Place place) {
			this(place.workOffset(), place.rotary());
		}
	}
}
