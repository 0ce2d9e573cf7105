package truelead.checker.work;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Holes by place: a grid of cells of 5 mm in each frame, so that ten thousand holes are found as fast as ten. */
final class HoleIndex {

	private static final double CELL = 5.0;

	private record Key(Place frame, long u, long v) {

		@Override
		public int hashCode() {
			return Place.scatter(u + frame.hashCode(), v);
		}
	}

	private final List<Hole> all;
	private final boolean unknownPlaces;
	private Place frame;
	private final Map<Key, List<Hole>> cells = new HashMap<>();

	HoleIndex(List<Hole> holes, boolean unknownPlaces) {
		this.all = List.copyOf(holes);
		this.unknownPlaces = unknownPlaces;
		for (Hole hole : all) {
			if (hole.place().known()) {
				cells.computeIfAbsent(key(hole.place(), cell(hole.place().u()), cell(hole.place().v())), k -> new ArrayList<>(1)).add(hole);
			}
		}
	}

	Collection<Hole> all() {
		return all;
	}

	boolean unknownPlaces() {
		return unknownPlaces;
	}

	Optional<Hole> nearest(Place place, double tolerance) {
		return near(place, tolerance).stream().findFirst();
	}

	List<Hole> near(Place place, double distance) {
		if (!place.known()) {
			return List.of();
		}
		List<Hole> found = new ArrayList<>();
		double across = 2 * distance / CELL + 1;
		if (across * across > all.size()) {
			all.stream().filter(hole -> hole.place().distance(place) <= distance).forEach(found::add);
			found.sort(Comparator.comparingDouble(hole -> hole.place().distance(place)));
			return found;
		}
		for (long u = cell(place.u() - distance); u <= cell(place.u() + distance); u++) {
			for (long v = cell(place.v() - distance); v <= cell(place.v() + distance); v++) {
				for (Hole hole : cells.getOrDefault(key(place, u, v), List.of())) {
					if (hole.place().distance(place) <= distance) {
						found.add(hole);
					}
				}
			}
		}
		found.sort(Comparator.comparingDouble(hole -> hole.place().distance(place)));
		return found;
	}

	private static long cell(double coordinate) {
		return Place.cell(coordinate, CELL);
	}

	/** Keys of one frame share its place. */
	private Key key(Place place, long u, long v) {
		Place here = frame;
		if (here == null || !here.comparable(place)) {
			here = place.at(0, 0);
			frame = here;
		}
		return new Key(here, u, v);
	}
}
