package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.ProgramFile;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Precedence;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.TapStroke;
import truelead.checker.work.Tapping;

/**
 * The thread that feed and drill make together, where it is not the one called out: M8X1 in the comment, F and the drill of M8x1.25. Then the
 * callout is wrong, or both others are.
 *
 * @param made  the thread that they make
 * @param drill the drilled diameter, mm
 */
record AnotherThread(ThreadSpec made, double drill) {
	/** A feed further off than this, as a part of the lead, is no rounding and no holding back. */
	private static final double FAR = 0.05;
	private static final double NEAR = 0.005;
	/** What written decimals of a drill leave open, mm. */
	private static final double WRITTEN = 0.005;

	/** The thread; empty where the drill suits the thread called out, or the two do not agree on another. */
	static Optional<AnotherThread> of(Tapping tapping, TapFeed feed, ThreadSpec called) {
		TapStroke stroke = feed.stroke();
		Optional<Double> drill = stroke.hole().sizedBefore(stroke.order()).flatMap(cut -> cut.diameter()).filter(Fact::stated).map(Fact::value);
		boolean far = Math.abs(feed.error(called.lead())) > FAR * called.lead() && !tapping.wanted().holder().value().floats();
		if (drill.isEmpty() || !far || called.system().taper() || suits(drill.get(), called)) {
			return Optional.empty();
		}
		return ThreadTable.standard().threadsFor(feed.advance(), NEAR * feed.advance(), drill.get()).stream()
				.filter(other -> other.system() == called.system() && suits(drill.get(), other)).findFirst().map(other -> new AnotherThread(other, drill.get()));
	}

	private static boolean suits(double drill, ThreadSpec thread) {
		Optional<Limits> limits = ThreadTable.standard().limits(thread);
		return limits.isPresent() && limits.get().minorMinMm().orElse(Double.MAX_VALUE) - WRITTEN <= drill
				&& drill <= limits.get().minorMaxMm().orElse(0) + WRITTEN;
	}

	/** Makes the finding speak for the drill too: the fix is in the callout, where it stands in the program. */
	void tell(Draft draft, Fact<ThreadSpec> called, ProgramFile program) {
		draft.from(Precedence.FEED_AND_DRILL, made.designation(), "pitch and drill of the tables");
		String text = made.withHand(called.value().hand()).designation();
		called.at().filter(at -> at.file() == program && at.span().end() > at.span().start()).ifPresent(at -> draft.fix(new Fix("Change the callout to " + text, false,
				"see the drawing: where the callout is right, feed and drill are both wrong", List.of(new Edit(at, text)))));
	}
}
