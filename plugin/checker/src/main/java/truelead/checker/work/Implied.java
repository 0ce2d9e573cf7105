package truelead.checker.work;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/** What the numbers of an operation imply of its thread; good for naming it, never for judging the feed that it was worked out from. */
final class Implied {

	private static final double SHARE = 0.01;

	private Implied() {
	}

	/** Advance in a turn that the first stroke or pass makes, mm; NaN where it is not known. */
	static double lead(Draft draft) {
		return draft.firstPass().map(Implied::lead).orElseGet(() -> draft.strokes.isEmpty() ? Double.NaN : lead(draft.strokes.get(0)));
	}

	private static double lead(Draft.Pass pass) {
		List<Step.Arc> helix = pass.helix();
		int axis = pass.place().plane().axis();
		return Math.abs(helix.get(helix.size() - 1).to().along(axis) - helix.get(0).from().along(axis)) / pass.turns();
	}

	/** Advance in a turn that S and F of a stroke make, mm; NaN where it is not known. */
	static double lead(Draft.Stroke stroke) {
		LengthUnit unit = stroke.step().modal().unit();
		if (stroke.lead().isSet()) {
			return stroke.lead().value() * unit.mm();
		}
		FeedMode mode = stroke.step().modal().feedMode();
		double feed = stroke.feed().value() * unit.mm();
		return mode == FeedMode.PER_REVOLUTION ? feed : mode == FeedMode.PER_MINUTE ? feed / stroke.speed().value() : Double.NaN;
	}

	/** The standard thread of that pitch which the hole's drill is right for; empty where none or several fit. */
	static Optional<Fact<ThreadSpec>> thread(AsCut cut) {
		double lead = cut.lead();
		if (cut.drill().isEmpty() || !(lead > 0.1) || !(lead < 10)) {
			return Optional.empty();
		}
		List<ThreadSpec> fitting = ThreadTable.standard().threadsFor(lead, lead * SHARE, cut.drill().get());
		return fitting.stream().findFirst().map(spec -> Fact.of(spec, FactSource.IMPLIED, "feed, speed and drill would make " + spec.designation()));
	}
}
