package truelead.checker.work;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;
import truelead.checker.hole.HoleBook;
import truelead.checker.hole.Place;

/**
 * The stays of a program's tools in sections, none of which has a hole at or beside one of another: as they were when all of the program
 * was sorted, and those that have been sorted by themselves since.
 */
final class Sections {

	/** Size of the squares that sections are looked for in, mm. */
	private static final double SQUARE = 64;
	/** What lies further out than so many squares is in the last one. */
	private static final int LAST = 1 << 30;
	/** Where a rule looks further than this, mm, all sections are looked through. */
	private static final double FAR = 1_000;

	/** Stays that were sorted by themselves, and their holes. */
	private static final class Section {

		private final BitSet stays;
		private final HoleStays holes;

		Section(BitSet stays, HoleStays holes) {
			this.stays = stays;
			this.holes = holes;
		}
	}

	private final HoleStays first;
	private final Ties ties;
	/** The later sections by their stays, and by the squares that they have holes in. */
	private final Map<Integer, Section> later = new HashMap<>();
	private final Map<Long, Set<Section>> squares = new HashMap<>();
	/** How far the rules of any thread of a later section look, mm. */
	private double widest = HoleBook.FARTHEST;

	/**
	 * @param first the holes of the whole program
	 * @param ties  its stays that are judged together whatever their holes
	 */
	Sections(HoleStays first, Ties ties) {
		this.first = first;
		this.ties = ties;
	}

	/** Adds to some stays those that were at their holes or beside them before, and theirs, and so on. */
	void widen(BitSet stays) {
		BitSet done = new BitSet();
		for (int stay = stays.nextSetBit(0); stay >= 0; stay = next(stays, done)) {
			done.set(stay);
			ties.widen(stay, stays);
			Section section = later.get(stay);
			if (section != null) {
				stays.or(section.stays);
			} else {
				first.of(stay, hole -> near(first.holes().place(hole), first.reach(hole), stays));
			}
		}
	}

	private static int next(BitSet stays, BitSet done) {
		BitSet open = (BitSet) stays.clone();
		open.andNot(done);
		return open.nextSetBit(0);
	}

	/** Adds to some stays, whose holes and ties are known anew, those that are at one of these or beside it, or tied to one of them. */
	void widen(BitSet stays, HoleStays anew, Ties tied) {
		((BitSet) stays.clone()).stream().forEach(stay -> tied.widen(stay, stays));
		for (int hole = 0; hole < anew.holes().count(); hole++) {
			near(anew.holes().place(hole), anew.reach(hole), stays);
		}
	}

	private void near(Place place, double reach, BitSet stays) {
		first.near(place, reach, stay -> {
			if (!later.containsKey(stay)) {
				stays.set(stay);
			}
		});
		Set<Section> sections = new LinkedHashSet<>();
		if (Math.max(reach, widest) > FAR) {
			sections.addAll(later.values());
		} else {
			squares(place, Math.max(reach, widest), square -> sections.addAll(squares.getOrDefault(square, Set.of())));
		}
		sections.forEach(section -> section.holes.near(place, reach, stays::set));
	}

	/** Takes stays that were sorted by themselves in place of what is known of them. */
	void take(BitSet stays, HoleStays holes) {
		Section now = new Section((BitSet) stays.clone(), holes);
		Set<Section> gone = new HashSet<>();
		for (int stay = stays.nextSetBit(0); stay >= 0; stay = stays.nextSetBit(stay + 1)) {
			Section before = later.put(stay, now);
			if (before != null && gone.add(before)) {
				squares(before, square -> squares.computeIfPresent(square, (key, here) -> without(here, before)));
			}
		}
		squares(now, square -> squares.computeIfAbsent(square, key -> new HashSet<>()).add(now));
		widest = Math.max(widest, holes.widest());
	}

	private static Set<Section> without(Set<Section> sections, Section one) {
		sections.remove(one);
		return sections.isEmpty() ? null : sections;
	}

	private static void squares(Section section, LongConsumer squares) {
		for (int hole = 0; hole < section.holes.holes().count(); hole++) {
			squares(section.holes.holes().place(hole), 0, squares);
		}
	}

	private static void squares(Place place, double around, LongConsumer squares) {
		if (place.known()) {
			for (int u = square(place.u() - around); u <= square(place.u() + around); u++) {
				for (int v = square(place.v() - around); v <= square(place.v() + around); v++) {
					squares.accept((long) u << Integer.SIZE ^ v & 0xFFFF_FFFFL);
				}
			}
		}
	}

	private static int square(double along) {
		return (int) Math.max(-LAST, Math.min(LAST, Math.floor(along / SQUARE)));
	}
}
