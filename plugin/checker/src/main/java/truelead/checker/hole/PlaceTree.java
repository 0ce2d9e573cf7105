package truelead.checker.hole;

import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;

/**
 * Places in one frame by numbers, so that the nearest one is found at once, however many are near: cut in two along either axis by turns,
 * with the earliest step at which one of each branch counts.
 */
final class PlaceTree {

	private final IntToDoubleFunction us;
	private final IntToDoubleFunction vs;
	private final IntUnaryOperator steps;
	/** In the middle of each stretch the one that cuts it in two, before it those that lie no further along. */
	private final int[] numbers;
	/** The earliest step of a branch, at its middle. */
	private final int[] earliest;

	/**
	 * @param numbers those of the places; they are put into another order
	 * @param us      position along the first axis, mm
	 * @param vs      position along the second axis, mm
	 * @param steps   the step behind which a place counts
	 */
	PlaceTree(int[] numbers, IntToDoubleFunction us, IntToDoubleFunction vs, IntUnaryOperator steps) {
		this.us = us;
		this.vs = vs;
		this.steps = steps;
		this.numbers = numbers;
		this.earliest = new int[numbers.length];
		order(0, numbers.length, true);
	}

	/**
	 * The number of the nearest one within a distance in mm that counts before a step and is as asked, of several as near the lowest; -1
	 * for none.
	 */
	int nearest(double u, double v, double distance, int order, IntPredicate asked) {
		Search search = new Search(u, v, distance, order, asked);
		search.look(0, numbers.length, true);
		return search.best;
	}

	private double along(int place, boolean first) {
		return first ? us.applyAsDouble(numbers[place]) : vs.applyAsDouble(numbers[place]);
	}

	private int order(int from, int to, boolean first) {
		if (from >= to) {
			return Integer.MAX_VALUE;
		}
		int middle = (from + to) >>> 1;
		select(from, to - 1, middle, first);
		int branches = Math.min(order(from, middle, !first), order(middle + 1, to, !first));
		earliest[middle] = Math.min(steps.applyAsInt(numbers[middle]), branches);
		return earliest[middle];
	}

	/** Puts the one that belongs into the middle of a stretch there, and those that lie less far along before it. */
	private void select(int low, int high, int middle, boolean first) {
		int from = low;
		int to = high;
		while (from < to) {
			double pivot = along((from + to) >>> 1, first);
			int left = from;
			int right = to;
			while (left <= right) {
				while (along(left, first) < pivot) {
					left++;
				}
				while (along(right, first) > pivot) {
					right--;
				}
				if (left <= right) {
					int number = numbers[left];
					numbers[left++] = numbers[right];
					numbers[right--] = number;
				}
			}
			if (middle > right && middle < left) {
				return;
			}
			from = middle >= left ? left : from;
			to = middle <= right ? right : to;
		}
	}

	/** What is looked for, and the best one so far. */
	private final class Search {

		private final double u;
		private final double v;
		private final int order;
		private final IntPredicate asked;
		private double least;
		private int best = -1;

		Search(double u, double v, double distance, int order, IntPredicate asked) {
			this.u = u;
			this.v = v;
			this.least = distance;
			this.order = order;
			this.asked = asked;
		}

		void look(int from, int to, boolean first) {
			int middle = (from + to) >>> 1;
			if (from >= to || earliest[middle] >= order) {
				return;
			}
			int number = numbers[middle];
			double distance = Math.hypot(us.applyAsDouble(number) - u, vs.applyAsDouble(number) - v);
			boolean nearer = distance < least || distance == least && (best < 0 || number < best);
			if (nearer && steps.applyAsInt(number) < order && asked.test(number)) {
				least = distance;
				best = number;
			}
			double beside = (first ? u : v) - along(middle, first);
			boolean below = beside <= 0;
			look(below ? from : middle + 1, below ? middle : to, !first);
			if (Math.abs(beside) <= least) {
				look(below ? middle + 1 : from, below ? to : middle, !first);
			}
		}
	}
}
