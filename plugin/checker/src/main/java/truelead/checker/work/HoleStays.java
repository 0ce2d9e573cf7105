package truelead.checker.work;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.DoubleStream;
import truelead.checker.hole.HoleBook;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;

/** Which stays of tools are at which holes, to cut or to thread, and how far around each hole a thread's rules look. */
final class HoleStays {

	private static final int NONE = -1;

	private final Holes holes;
	/** The last link of each hole and of each stay; of each link its hole and stay, and the one before it of the same. */
	private final int[] lastAt;
	private final int[] lastOf;
	private int[] hole = new int[16];
	private int[] stay = new int[16];
	private int[] beforeAt = new int[16];
	private int[] beforeOf = new int[16];
	private int links;
	/** Half the nominal diameter of the largest thread at each hole, mm. */
	private final double[] reach;
	private final double widest;

	/** @param stays how many stays there are in the program */
	HoleStays(Holes holes, List<ThreadingOperation> operations, int stays) {
		this.holes = holes;
		this.lastAt = new int[holes.count()];
		this.lastOf = new int[stays];
		Arrays.fill(lastAt, NONE);
		Arrays.fill(lastOf, NONE);
		this.reach = new double[holes.count()];
		for (int number = 0; number < holes.count(); number++) {
			int at = number;
			holes.stays(number, one -> add(at, one));
		}
		for (ThreadingOperation operation : operations) {
			double half = halfDiameter(operation);
			numbers(operation, number -> {
				if (number >= 0) {
					add(number, operation.tool().index());
					reach[number] = Math.max(reach[number], half);
				}
			});
		}
		widest = DoubleStream.of(reach).max().orElse(0);
	}

	/** Hands out the number of each hole that an operation goes into; below 0 for a place that is not known. */
	static void numbers(ThreadingOperation operation, IntConsumer numbers) {
		if (operation instanceof Tapping tapping) {
			tapping.strokes().numbers(numbers);
		} else if (operation instanceof ThreadMilling milling) {
			milling.numbers(numbers);
		}
	}

	/** Half the nominal diameter of what an operation may be thought to thread, mm. */
	private static double halfDiameter(ThreadingOperation operation) {
		double thread = operation.wanted().thread().map(fact -> fact.value().diameter()).orElse(0.0);
		double said = operation.wanted().diameterOnly().map(fact -> fact.value()).orElse(0.0);
		double tool = operation.tool().facts().diameter().map(fact -> fact.value()).orElse(0.0);
		return Math.max(thread, Math.max(said, tool)) / 2;
	}

	private void add(int at, int by) {
		for (int link = lastAt[at]; link != NONE; link = beforeAt[link]) {
			if (stay[link] == by) {
				return;
			}
		}
		if (links == hole.length) {
			hole = Arrays.copyOf(hole, links * 2);
			stay = Arrays.copyOf(stay, links * 2);
			beforeAt = Arrays.copyOf(beforeAt, links * 2);
			beforeOf = Arrays.copyOf(beforeOf, links * 2);
		}
		hole[links] = at;
		stay[links] = by;
		beforeAt[links] = lastAt[at];
		beforeOf[links] = lastOf[by];
		lastAt[at] = links;
		lastOf[by] = links++;
	}

	/** The holes. */
	Holes holes() {
		return holes;
	}

	/** Hands out the stays at a hole. */
	void at(int number, IntConsumer stays) {
		for (int link = lastAt[number]; link != NONE; link = beforeAt[link]) {
			stays.accept(stay[link]);
		}
	}

	/** Hands out the holes of a stay. */
	void of(int by, IntConsumer numbers) {
		for (int link = lastOf[by]; link != NONE; link = beforeOf[link]) {
			numbers.accept(hole[link]);
		}
	}

	/** How far around a hole its threads' rules look, mm. */
	double reach(int number) {
		return reach[number];
	}

	/** The same of all of them, mm. */
	double widest() {
		return widest;
	}

	/**
	 * Hands out the stays at the holes that may be taken for one with a hole, or that one of the two's rules look at.
	 *
	 * @param reach how far around the hole its own threads' rules look, mm
	 */
	void near(Place place, double reach, IntConsumer stays) {
		for (int number : holes.numbersNear(place, Math.max(HoleBook.FARTHEST, Math.max(reach, widest)))) {
			if (holes.place(number).distance(place) <= Math.max(HoleBook.FARTHEST, Math.max(reach, this.reach[number]))) {
				at(number, stays);
			}
		}
	}
}
