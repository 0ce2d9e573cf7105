package truelead.checker.pass;

import java.util.List;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.machine.Step;

/**
 * Where passes are, so that most are told at a glance to be elsewhere than something that is looked for.
 *
 * @param left      between this position in the plane and that to the right all holes lie, mm; NaN where the place of one is not known
 * @param front     the same behind each other
 * @param firstLine the first line of those that passes by themselves are written in, counted from 0
 * @param lastLine  the last one
 */
record PassRange(double left, double right, double front, double back, int firstLine, int lastLine) {

	/** @param holeOf the number of the hole of each pass; below 0 for one that is not known */
	static PassRange of(List<PassRow> rows, int[] holeOf, Holes holes) {
		double left = Double.POSITIVE_INFINITY;
		double right = Double.NEGATIVE_INFINITY;
		double front = left;
		double back = right;
		for (int hole : holeOf) {
			double u = hole < 0 ? Double.NaN : holes.u(hole);
			double v = hole < 0 ? Double.NaN : holes.v(hole);
			left = Math.min(left, u);
			right = Math.max(right, u);
			front = Math.min(front, v);
			back = Math.max(back, v);
		}
		int first = Integer.MAX_VALUE;
		int last = -1;
		for (PassRow row : rows) {
			if (row instanceof Pass pass) {
				for (List<? extends Step> steps : List.of(pass.entry(), pass.helix(), pass.exit())) {
					for (Step step : steps) {
						first = Math.min(first, step.block().line());
						last = Math.max(last, step.block().line());
					}
				}
			}
		}
		return new PassRange(left, right, front, back, first, last);
	}

	/** Whether a place lies to one side of all holes. */
	boolean beside(Place place) {
		return place.u() < left || place.u() > right || place.v() < front || place.v() > back;
	}

	/** Whether an arc may be of a pass by itself, or lead to it or away from it. */
	boolean has(Step.Arc arc) {
		return arc.block().line() >= firstLine && arc.block().line() <= lastLine;
	}
}
