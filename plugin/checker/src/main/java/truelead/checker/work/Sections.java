package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import truelead.checker.hole.Place;

/**
 * The stays of a program's tools in sections, none of which has a hole at or beside one of another: as they were when all of the program was sorted, and
 * those that have been sorted by themselves since.
 */
final class Sections {

	/** Sections that are kept apart at most; then all is sorted again. */
	private static final int MOST = 64;

	/** Stays that were sorted by themselves, and their holes. */
	private record Section(BitSet stays, HoleStays holes) {
	}

	private final HoleStays first;
	private final List<Section> later = new ArrayList<>();
	/** The stays that are in one of the later sections. */
	private final BitSet moved = new BitSet();

	/** @param first the holes of the whole program */
	Sections(HoleStays first) {
		this.first = first;
	}

	/** Adds to some stays those that were at their holes or beside them before, and theirs, and so on. */
	void widen(BitSet stays) {
		BitSet done = new BitSet();
		for (int stay = stays.nextSetBit(0); stay >= 0; stay = next(stays, done)) {
			done.set(stay);
			if (moved.get(stay)) {
				later.stream().filter(section -> section.stays().intersects(done)).forEach(section -> stays.or(section.stays()));
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

	/** Adds to some stays, whose holes are known anew, those that are at one of these or beside it. */
	void widen(BitSet stays, HoleStays anew) {
		for (int hole = 0; hole < anew.holes().count(); hole++) {
			near(anew.holes().place(hole), anew.reach(hole), stays);
		}
	}

	private void near(Place place, double reach, BitSet stays) {
		first.near(place, reach, stay -> {
			if (!moved.get(stay)) {
				stays.set(stay);
			}
		});
		later.forEach(section -> section.holes().near(place, reach, stays::set));
	}

	/** Takes stays that were sorted by themselves in place of what is known of them; false where there is no more room. */
	boolean take(BitSet stays, HoleStays holes) {
		later.removeIf(section -> section.stays().intersects(stays));
		later.add(new Section(stays, holes));
		moved.or(stays);
		return later.size() <= MOST;
	}
}
