package truelead.checker.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import truelead.checker.hole.Holes;

/** Which strokes go into each hole of a program: a chain of links for each, from the last one back, that are numbers of steps. */
final class Visitors {

	private static final int NONE = -1;

	private final int[] last;
	private final int[] order;
	private final int[] before;
	private int links;

	/** @param operations with strokes at known places alone, one after the other */
	Visitors(Holes holes, List<Tapping> operations) {
		int strokes = operations.stream().mapToInt(tapping -> tapping.strokes().size()).sum();
		last = new int[holes.count()];
		Arrays.fill(last, NONE);
		order = new int[strokes];
		before = new int[strokes];
		for (Tapping tapping : operations) {
			for (StrokeRow row : tapping.strokes().rows()) {
				for (int i = 0; i < row.count(); i++) {
					order[links] = row.first().order() + i;
					before[links] = last[row.hole(i)];
					last[row.hole(i)] = links++;
				}
			}
		}
	}

	/** The numbers of the steps that go into a hole, in order. */
	List<Integer> of(int hole) {
		List<Integer> orders = new ArrayList<>(1);
		for (int link = last[hole]; link != NONE; link = before[link]) {
			orders.add(order[link]);
		}
		Collections.reverse(orders);
		return orders;
	}
}
