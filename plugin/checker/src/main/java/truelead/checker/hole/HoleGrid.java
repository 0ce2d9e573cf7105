package truelead.checker.hole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import truelead.checker.machine.Rotary;
import truelead.checker.program.Plane;

/**
 * The places of holes, numbered in the order first reached, in cells of 2 mm of each frame, and of an eighth where hundreds are in one: ten
 * thousand are found as fast as ten. Kept as plain numbers, since a plate may have a hundred thousand.
 */
final class HoleGrid {

	private static final double CELL = 2.0;
	/** Size of smaller cells, mm, and how many holes are looked through before they are made. */
	private static final double FINE = 0.125;
	private static final int CROWDED = 256;
	/** What is looked for within so much, mm, is looked for in a few of them. */
	private static final double NEAR = 4 * FINE;

	private record Numbered(Place frame, int number) {

		boolean has(Place place) {
			return frame != null && frame.comparable(place);
		}
	}

	private final List<Place> frames = new ArrayList<>();
	private final Map<Place, Integer> frameNumbers = new HashMap<>();
	/** The frame asked for last: thousands of places in a row are in one. */
	private Numbered last = new Numbered(null, -1);
	/** The hole that was asked for last: tools go over the holes in one order, so that the next one is mostly the one behind it. */
	private int recent;
	private int count;
	private int[] frameOf = new int[16];
	private double[] us = new double[16];
	private double[] vs = new double[16];
	private final HoleCells coarse = new HoleCells(CELL);
	/** Smaller cells, once so many holes are in one that what is looked for within a tolerance takes long there. */
	private Optional<HoleCells> fine = Optional.empty();

	/** Number of holes. */
	int count() {
		return count;
	}

	/** The number of the frame that a place is in, a new one where no place was in it before. */
	int frame(Place place) {
		if (!last.has(place)) {
			Place origin = place.at(0, 0);
			last = new Numbered(origin, frameNumbers.computeIfAbsent(origin, fresh -> {
				frames.add(fresh);
				return frames.size() - 1;
			}));
		}
		return last.number();
	}

	/** The number of the frame that a place is in; -1 where no hole is in it. */
	int knownFrame(Place place) {
		Numbered recent = last;
		return recent.has(place) ? recent.number() : frameNumbers.getOrDefault(place.at(0, 0), -1);
	}

	/** Whether all holes are in one frame. */
	boolean inOneFrame() {
		return frames.size() <= 1;
	}

	/** The planes that holes are in. */
	Set<Plane> planes() {
		Set<Plane> planes = EnumSet.noneOf(Plane.class);
		frames.forEach(frame -> planes.add(frame.plane()));
		return planes;
	}

	/** Where the rotary axes stand in the frames that holes are in. */
	Set<Rotary> rotaries() {
		return frames.stream().map(Place::rotary).collect(Collectors.toUnmodifiableSet());
	}

	/** The place of a hole. */
	Place place(int hole) {
		return frames.get(frameOf[hole]).at(us[hole], vs[hole]);
	}

	/** The number of the frame that a hole is in. */
	int frameOf(int hole) {
		return frameOf[hole];
	}

	/** Position of a hole along the first axis of its plane, mm. */
	double u(int hole) {
		return us[hole];
	}

	/** Position of a hole along the second axis of its plane, mm. */
	double v(int hole) {
		return vs[hole];
	}

	/** Adds a hole; gives its number. */
	int add(int frame, double u, double v) {
		if (count == us.length) {
			resize(count * 2);
		}
		frameOf[count] = frame;
		us[count] = u;
		vs[count] = v;
		coarse.link(count, frame, u, v);
		if (fine.isPresent()) {
			fine.get().link(count, frame, u, v);
		}
		return count++;
	}

	/** Makes room for as many more at once. */
	void expect(int more) {
		if (count + more > us.length) {
			resize(Math.max(count + more, us.length * 2));
		}
	}

	/** Lets go of room for more. */
	void trim() {
		resize(Math.max(1, count));
	}

	private void resize(int room) {
		frameOf = Arrays.copyOf(frameOf, room);
		us = Arrays.copyOf(us, room);
		vs = Arrays.copyOf(vs, room);
		resize(coarse, room);
		fine.ifPresent(cells -> resize(cells, room));
	}

	private void resize(HoleCells cells, int room) {
		if (cells.resize(room)) {
			link(cells);
		}
	}

	private void link(HoleCells cells) {
		for (int hole = 0; hole < count; hole++) {
			cells.link(hole, frameOf[hole], us[hole], vs[hole]);
		}
	}

	/** The hole nearest to a place, the first one reached of several; -1 where none is within a distance in mm. */
	int nearest(int frame, double u, double v, double within) {
		int next = recent + 1;
		boolean follows = next < count && us[next] == u && vs[next] == v && frameOf[next] == frame;
		int found = follows ? next : nearest(frame, u, v, within, Spots.NONE);
		recent = found < 0 ? count : found;
		return found;
	}

	/** The same of those that no edit has changed. */
	int nearest(int frame, double u, double v, double within, Spots changed) {
		HoleCells cells = fine.isPresent() && within <= FINE ? fine.get() : coarse;
		int best = -1;
		int met = 0;
		double least = Double.MAX_VALUE;
		long lastAcross = cells.cell(u + within);
		long lastAlong = cells.cell(v + within);
		for (long across = cells.cell(u - within); across <= lastAcross; across++) {
			for (long along = cells.cell(v - within); along <= lastAlong; along++) {
				for (int hole = cells.last(frame, across, along); hole >= 0; hole = cells.before(hole)) {
					met++;
					double beside = us[hole] - u;
					double behind = vs[hole] - v;
					if (Math.abs(beside) <= within && Math.abs(behind) <= within && frameOf[hole] == frame && changed.get(hole) == null) {
						if (beside == 0 && behind == 0) {
							return hole;
						}
						double distance = Math.hypot(beside, behind);
						if (distance <= within && (distance < least || distance == least && hole < best)) {
							best = hole;
							least = distance;
						}
					}
				}
			}
		}
		if (met > CROWDED && within <= FINE && fine.isEmpty()) {
			HoleCells smaller = new HoleCells(FINE);
			smaller.resize(us.length);
			link(smaller);
			fine = Optional.of(smaller);
		}
		return best;
	}

	/** The holes within a distance in mm of a place, nearest first, of several as near the first one reached first. */
	List<Integer> near(int frame, double u, double v, double distance) {
		List<Integer> found = new ArrayList<>();
		HoleCells cells = fine.isPresent() && distance <= NEAR ? fine.get() : coarse;
		double across = 2 * distance / CELL + 1;
		if (across * across > count) {
			for (int hole = 0; hole < count; hole++) {
				addNear(hole, frame, u, v, distance, found);
			}
		} else {
			for (long i = cells.cell(u - distance); i <= cells.cell(u + distance); i++) {
				for (long j = cells.cell(v - distance); j <= cells.cell(v + distance); j++) {
					for (int hole = cells.last(frame, i, j); hole >= 0; hole = cells.before(hole)) {
						if (cells.cell(us[hole]) == i && cells.cell(vs[hole]) == j) {
							addNear(hole, frame, u, v, distance, found);
						}
					}
				}
			}
		}
		found.sort((one, other) -> {
			int nearer = Double.compare(Math.hypot(us[one] - u, vs[one] - v), Math.hypot(us[other] - u, vs[other] - v));
			return nearer != 0 ? nearer : Integer.compare(one, other);
		});
		return found;
	}

	private void addNear(int hole, int frame, double u, double v, double distance, List<Integer> found) {
		if (frameOf[hole] == frame && Math.hypot(us[hole] - u, vs[hole] - v) <= distance) {
			found.add(hole);
		}
	}
}
