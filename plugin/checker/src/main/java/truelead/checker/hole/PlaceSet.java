package truelead.checker.hole;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Places, so that it is known at once whether one is near another. */
public final class PlaceSet {

	private final Map<Place, PlaceTree> frames = new HashMap<>();
	private final List<Place> all;

	/** Some places; those that are not known are near none. */
	public PlaceSet(Collection<Place> places) {
		this.all = new ArrayList<>(places);
		Map<Place, IntStream.Builder> numbers = new HashMap<>();
		for (int i = 0; i < all.size(); i++) {
			if (all.get(i).known()) {
				numbers.computeIfAbsent(all.get(i).at(0, 0), frame -> IntStream.builder()).add(i);
			}
		}
		numbers.forEach((frame, some) -> frames.put(frame, new PlaceTree(some.build().toArray(), i -> all.get(i).u(),
				i -> all.get(i).v(), i -> 0)));
	}

	/** Whether one of them is nearer to a place than a distance in mm, and not the place itself. */
	public boolean beside(Place place, double distance) {
		PlaceTree tree = place.known() ? frames.get(place.at(0, 0)) : null;
		int nearest = tree == null ? -1 : tree.nearest(place.u(), place.v(), distance, 1, i -> !all.get(i).equals(place));
		return nearest >= 0 && all.get(nearest).distance(place) < distance;
	}
}
