package truelead.checker.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import truelead.checker.hole.Holes;
import truelead.checker.stroke.StrokeRow;

/**
 * Which strokes and passes go into each hole of a program: a chain of links for each, from the last one back, that are numbers of steps.
 */
final class Visitors {

	private static final int NONE = -1;

	private final int[] last;
	private final int[] order;
	private final int[] before;
	private int links;

	/** @param operations with strokes and passes at known places alone, one after the other */
	Visitors(Holes holes, List<ThreadingOperation> operations) {
		int visits = operations.stream().mapToInt(operation -> operation instanceof Tapping tapping ? tapping.strokes().size()
				: ((ThreadMilling) operation).passes().size()).sum();
		last = new int[holes.count()];
		Arrays.fill(last, NONE);
		order = new int[visits];
		before = new int[visits];
		for (ThreadingOperation operation : operations) {
			if (operation instanceof Tapping tapping) {
				for (StrokeRow row : tapping.strokes().rows()) {
					for (int i = 0; i < row.count(); i++) {
						add(row.hole(i), row.first().order() + i);
					}
				}
			} else if (operation instanceof ThreadMilling milling) {
				milling.stretches().visits(this::add);
			}
		}
	}

	private void add(int hole, int step) {
		order[links] = step;
		before[links] = last[hole];
		last[hole] = links++;
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
