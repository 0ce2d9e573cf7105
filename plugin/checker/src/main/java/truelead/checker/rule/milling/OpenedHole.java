package truelead.checker.rule.milling;

import java.util.List;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;

/** A hole that was there before the program, cast or drilled elsewhere, and is only opened here: how far it goes on below, nobody says. */
final class OpenedHole {

	/** Pitches that a cutter goes beyond the bore of a hole that goes on (common practice, no source). */
	private static final double BEYOND = 2;

	private OpenedHole() {
	}

	/**
	 * Whether the cutter may go so far below what is bored: a bar and a reamer open a hole and make none, so it goes on below unless it is
	 * said to be blind, or how deep its thread is.
	 *
	 * @param below how far the cutter's end goes below the bore, mm
	 */
	static boolean mayGoOn(ThreadMilling operation, MillPass pass, double below) {
		boolean blind = operation.wanted().through().filter(through -> through.stated() && !through.value()).isPresent();
		double pitch = operation.wanted().statedThread().map(Fact::value).map(ThreadSpec::pitch).orElse(Math.abs(pass.lead()));
		List<Cut> made = pass.hole().makingBefore(pass.order());
		return !blind && operation.wanted().depth().isEmpty() && below <= BEYOND * pitch
				&& made.stream().allMatch(cut -> cut.kind() == Cut.Kind.BORE || cut.kind() == Cut.Kind.REAM);
	}
}
