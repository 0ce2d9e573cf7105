package truelead.checker.lesson;

import java.util.ArrayList;
import java.util.List;

/**
 * How a depth is divided into passes, and what each takes: down to d a point has cut d (P/8 + d tan 30), whichever flank it is fed along
 * (geometry of a 60 degree point with a flat of P/8, ISO 68-1).
 *
 * @param pitch P, mm
 * @param depth of the thread on the radius, mm
 * @param first depth of the first pass on the radius, mm
 * @param least what a pass takes at least on the radius, mm, above 0
 * @param even  whether every pass takes the same depth; else pass n goes down to first x root of n, so that chips stay alike
 */
record ThreadPasses(double pitch, double depth, double first, double least, boolean even) {

	/** A depth that counts as reached, mm (a choice of ours). */
	private static final double REACHED = 1e-9;

	/** Where each pass goes on the radius, mm, the last one to the depth; at least one. */
	List<Double> depths() {
		List<Double> depths = new ArrayList<>();
		double reached = 0;
		do {
			double next = even ? reached + first : Math.max(reached + least, first * Math.sqrt(depths.size() + 1.0));
			reached = next > depth - REACHED ? depth : next;
			depths.add(reached);
		} while (reached < depth);
		return depths;
	}

	/** What each pass takes out of the groove, mm². */
	List<Double> chips() {
		List<Double> chips = new ArrayList<>();
		double before = 0;
		for (double reached : depths()) {
			chips.add(groove(reached) - groove(before));
			before = reached;
		}
		return chips;
	}

	private double groove(double down) {
		return down * (pitch / 8 + down * Math.tan(Math.PI / 6));
	}
}
