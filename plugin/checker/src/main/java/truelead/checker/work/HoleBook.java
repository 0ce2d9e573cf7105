package truelead.checker.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Gathers cuts by place while they are found: cuts within the tolerance of each other are of one hole. */
final class HoleBook {

	private static final double CELL = 1.0;
	/** Positions are never taken for one that are further apart, however coarsely they are written, mm. */
	private static final double FARTHEST = 5.0;

	private record Key(Place frame, long u, long v) {

		@Override
		public int hashCode() {
			return Place.scatter(u + frame.hashCode(), v);
		}
	}

	/** A hole that is still being gathered. */
	private static final class Growing {

		private final Place place;
		private final List<Cut> cuts = new ArrayList<>(2);
		private Set<Likeness> known;

		Growing(Place place) {
			this.place = place;
		}

		/** Whether no cut before was just like this one. */
		boolean isNew(Cut cut) {
			if (known == null) {
				known = new HashSet<>();
				cuts.forEach(before -> known.add(new Likeness(before)));
			}
			return known.add(new Likeness(cut));
		}
	}

	/** From so many cuts at one place on, a cut just like an earlier one tells nothing new: a loop, or parts made one after another. */
	private static final int REPEATED = 100;

	/** What makes two cuts alike. */
	private record Likeness(Cut.Kind kind, int tool, double start, double tip) {

		Likeness(Cut cut) {
			this(cut.kind(), cut.tool().number(), cut.start(), cut.tip());
		}
	}

	private final double tolerance;
	private final List<Growing> all = new ArrayList<>();
	private final Map<Key, List<Growing>> cells = new HashMap<>();
	private final Map<Place, Hole> finished = new HashMap<>();
	private boolean unknownPlaces;

	/** @param tolerance how far two positions of one hole may be apart, mm, at most 1 */
	HoleBook(double tolerance) {
		this.tolerance = Math.min(tolerance, CELL);
	}

	void add(Cut cut) {
		if (!cut.place().known()) {
			unknownPlaces |= cut.kind().makesHole();
			return;
		}
		Growing hole = at(cut.place(), tolerance);
		if (cut.kind() == Cut.Kind.MILL && !hole.cuts.isEmpty() && mergeable(hole.cuts.get(hole.cuts.size() - 1), cut)) {
			hole.cuts.set(hole.cuts.size() - 1, merge(hole.cuts.get(hole.cuts.size() - 1), cut));
		} else if (hole.cuts.size() < REPEATED || hole.isNew(cut)) {
			hole.cuts.add(cut);
		}
	}

	/** Says that something is done at a place, so that it is a hole even if nothing else is. */
	void touch(Place place, double within) {
		if (place.known()) {
			at(place, Math.max(tolerance, within));
		}
	}

	/** All holes with their cuts; to be called once, when all cuts are known. */
	HoleIndex finish() {
		List<Hole> holes = new ArrayList<>();
		for (Growing growing : all) {
			growing.cuts.sort(Comparator.comparingInt(Cut::order));
			Hole hole = new Hole(growing.place, growing.cuts);
			finished.put(growing.place, hole);
			holes.add(hole);
		}
		return new HoleIndex(holes, unknownPlaces);
	}

	/** The hole at a place after {@link #finish()}. */
	Hole hole(Place place, double within) {
		if (!place.known()) {
			return Hole.untouched(place);
		}
		Growing growing = find(place, Math.max(tolerance, within));
		return growing == null ? Hole.untouched(place) : finished.get(growing.place);
	}

	/** Whether another turn of the same mill at a hole goes on where the one before ended: circle by circle, level by level. */
	private static boolean mergeable(Cut before, Cut now) {
		return before.kind() == Cut.Kind.MILL && before.tool() == now.tool();
	}

	private static Cut merge(Cut before, Cut now) {
		boolean deeper = now.direction() * now.tip() >= before.direction() * before.tip();
		Cut deep = deeper ? now : before;
		boolean larger = now.diameter().isEmpty() || before.diameter().isPresent()
				&& now.diameter().get().value() >= before.diameter().get().value();
		return new Cut(deep.order(), Cut.Kind.MILL, deep.step(), now.tool(), before.place(), before.start(), deep.tip(), deep.shoulder(),
				larger ? now.diameter() : before.diameter(), Math.max(before.resolution(), now.resolution()));
	}

	private Growing at(Place place, double within) {
		Growing known = find(place, within);
		if (known != null) {
			return known;
		}
		Growing fresh = new Growing(place);
		all.add(fresh);
		cells.computeIfAbsent(new Key(place.at(0, 0), cell(place.u()), cell(place.v())), k -> new ArrayList<>()).add(fresh);
		return fresh;
	}

	private Growing find(Place place, double farthest) {
		double within = Math.min(farthest, FARTHEST);
		Growing best = null;
		for (long u = cell(place.u() - within); u <= cell(place.u() + within); u++) {
			for (long v = cell(place.v() - within); v <= cell(place.v() + within); v++) {
				for (Growing candidate : cells.getOrDefault(new Key(place.at(0, 0), u, v), List.of())) {
					double distance = candidate.place.distance(place);
					if (distance <= within && (best == null || distance < best.place.distance(place))) {
						best = candidate;
					}
				}
			}
		}
		return best;
	}

	private static long cell(double coordinate) {
		return Place.cell(coordinate, CELL);
	}
}
