package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;

/**
 * A hole that is bored or milled out for its thread over a part of its depth, and narrower below: the cutter comes down on the floor of the
 * bore (geometry).
 */
final class BoreFloor {

	/**
	 * What a hole may be narrower than the thread's smallest minor diameter and still be made for the thread, pitches; less is a pilot hole
	 * (common practice, no source).
	 */
	private static final double PILOT = 1;
	/** Part of the thread's depth that the bore reaches at least, for it to be made for the thread: less is a counterbore or a chamfer. */
	private static final double PART = 0.5;

	private BoreFloor() {
	}

	/**
	 * The bore; empty where the hole is as wide as that all the way down, where its sizes are not known or it may come out of the wall, and
	 * for bolts and taper threads.
	 */
	static Optional<Cut> of(ThreadMilling operation, MillPass pass, Cut deepest) {
		Optional<ThreadSpec> thread = MillFacts.parallelThread(operation);
		if (pass.external() || thread.isEmpty() || !narrow(deepest, thread.get())) {
			return Optional.empty();
		}
		double surface = operation.wanted().surface().value();
		Cut bore = null;
		for (Cut cut : pass.hole().makingBefore(pass.order())) {
			if (cut.diameter().isEmpty() || Double.isNaN(cut.shoulder())) {
				return Optional.empty();
			}
			boolean fits = !narrow(cut, thread.get()) && cut.diameter().get().value() < thread.get().diameter();
			bore = fits && (bore == null || pass.below(cut.shoulder(), bore.shoulder()) > 0) ? cut : bore;
		}
		return Optional.ofNullable(bore).filter(cut -> pass.below(cut.shoulder(), surface) > PART * HelixForm.of(pass).deepest(surface)
				&& hasFloor(operation, pass.below(cut.shoulder(), surface)));
	}

	/**
	 * Whether a bore so deep, mm, does not come out: the hole is said to be blind, or the wall is thicker; a pilot hole goes on behind the
	 * wall as a rule.
	 */
	private static boolean hasFloor(ThreadMilling operation, double depth) {
		boolean blind = operation.wanted().through().filter(through -> through.stated() && !through.value()).isPresent();
		return blind || operation.wanted().wall().filter(wall -> wall.stated() && depth < wall.value() - ConeLeft.ROUGH).isPresent();
	}

	private static boolean narrow(Cut cut, ThreadSpec thread) {
		return cut.diameter().map(Fact::value).filter(d -> d < MillFacts.minor(thread) - PILOT * thread.pitch()).isPresent();
	}
}
