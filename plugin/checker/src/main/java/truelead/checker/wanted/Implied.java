package truelead.checker.wanted;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/** What the numbers of an operation imply of its thread; good for naming it, never for judging the feed that it was worked out from. */
final class Implied {

	private static final double SHARE = 0.01;

	private Implied() {
	}

	/** The standard thread of that pitch which the hole's drill is right for; empty where none or several fit. */
	static Optional<Fact<ThreadSpec>> thread(AsCut cut) {
		double lead = cut.lead();
		if (cut.drill().isEmpty() || !(lead > 0.1) || !(lead < 10)) {
			return Optional.empty();
		}
		List<ThreadSpec> fitting = ThreadTable.standard().threadsFor(lead, lead * SHARE, cut.drill().get());
		return fitting.stream().findFirst()
				.map(spec -> Fact.of(spec, FactSource.IMPLIED, "feed, speed and drill would make " + spec.designation()));
	}
}
