package truelead.checker.wanted;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Allowance;
import truelead.checker.job.Fact;
import truelead.checker.job.Holder;
import truelead.checker.job.Stock;
import truelead.checker.thread.ThreadSpec;

/**
 * What is wanted at the holes of an operation, and who says so. Lengths in mm.
 *
 * @param thread     the thread, by the nearest source; empty where nothing names or implies one. A fact that is IMPLIED must not raise a
 *                   finding on the feed, since it was worked out from the feed
 * @param named      every source that names a thread, nearest first, {@code thread} among them unless it is implied
 * @param titled     another thread than {@code thread}, the only one that the title names, with how many of it there are
 * @param diameterOnly a nominal diameter named without a pitch, where that is all there is
 * @param depth      depth of full thread below the surface; as a TOOL_COMMENT perhaps that of the tap's tip
 * @param through    whether the hole goes through (true) or is blind (false); IMPLIED where depths were compared
 * @param holeBottom depth of the hole's full diameter below the surface by the drawing
 * @param wall       thickness of the wall the hole is in
 * @param surface    level of the top of the hole along its axis; IMPLIED where the R plane is all that is known, DEFAULT for level 0
 * @param count      number of holes called out
 * @param stock      what the part is cut from
 * @param holder     the tap holder; DEFAULT rigid where nobody says
 * @param wireInsert whether the thread is tapped oversize for a wire insert, so that sizes of the plain thread do not hold
 * @param allowances findings accepted by notes in this operation
 */
public record Wanted(Optional<Fact<ThreadSpec>> thread, List<Fact<ThreadSpec>> named, Optional<Titled> titled,
		Optional<Fact<Double>> diameterOnly, Optional<Fact<Double>> depth, Optional<Fact<Boolean>> through,
		Optional<Fact<Double>> holeBottom, Optional<Fact<Double>> wall,
		Fact<Double> surface, Optional<Fact<Integer>> count, Optional<Fact<Stock>> stock, Fact<Holder> holder, boolean wireInsert,
		List<Allowance> allowances) {

	/** A thread that the title counts. */
	public record Titled(Fact<ThreadSpec> thread, int count) {
	}

	public Wanted {
		named = List.copyOf(named);
		allowances = List.copyOf(allowances);
	}

	/** The thread where a person named it for this job, the only kind that may condemn a feed. */
	public Optional<Fact<ThreadSpec>> statedThread() {
		return thread.filter(Fact::stated);
	}
}
