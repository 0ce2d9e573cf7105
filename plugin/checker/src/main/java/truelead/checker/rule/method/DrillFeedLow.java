package truelead.checker.rule.method;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Modal;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.Work;

/**
 * The drill of a threaded hole turns many times as fast as a drill does, or hardly advances a turn: the point of S or F a place off, a
 * digit too many or too few.
 */
public final class DrillFeedLow implements Rule {

	/** Farther than this a turn, in parts of its diameter, every drill is fed that is to cut (common practice, no source). */
	private static final double LEAST = 0.0012;

	/** So little a turn, in parts of its diameter, is no feed but one that was written for another mode. */
	private static final double NO_FEED = 1e-4;

	/** Less than this is suspect, where the program's other drills are fed in another way (common practice, no source). */
	private static final double SUSPECT = 0.0032;
	private static final double OF_OTHERS = 5;

	/** So far a turn, mm, a drill with inserts is fed whatever its diameter, and less than this it is not (common practice, no source). */
	private static final double INSERTS = 0.04;

	/** No drill turns faster than this cutting speed, m/min, whatever it is and drills (common practice, no source). */
	private static final double FASTEST = 700;

	/** A drill that turns so fast, m/min, is fed more than is suspect (common practice, no source). */
	private static final double FAST = 150;

	/** Drills that go so many times their diameter deep may be gun drills, which are fed little (common practice, no source). */
	private static final double LONG = 12;

	@Override
	public String name() {
		return "drill-feed-low";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.OTHER_FEED_MODE, Slip.NO_TAP);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Set<Integer> told = new HashSet<>();
		for (DrillFeeds.Drill drill : DrillFeeds.of(work)) {
			Modal modal = drill.cut().step().modal();
			double surface = modal.constantSurface() || !modal.speed().known() ? 0
					: Math.PI * drill.diameter().value() * modal.speed().value() / 1000;
			if ((drill.share() < SUSPECT || surface > FASTEST) && !told.contains(drill.fed().stay())
					&& !DrillFeeds.modeLeftOn(drill, work)) {
				low(drill, surface, work).ifPresent(draft -> {
					told.add(drill.fed().stay());
					found.accept(draft.on(drill.maker().operation()).finding());
				});
			}
		}
	}

	private Optional<Draft> low(DrillFeeds.Drill drill, double surface, Work work) {
		Cut cut = drill.cut();
		boolean deep = Math.abs(cut.tip() - cut.start()) > LONG * drill.diameter().value();
		boolean little = drill.share() < SUSPECT && cut.step().modal().advance() < INSERTS && !deep;
		// where no unit is stated F may be in inches
		boolean alone = little && drill.share() > NO_FEED && cut.step().modal().unitStated();
		if (surface > FASTEST || alone && surface > FAST) {
			return Optional.of(draft(drill, surface, Optional.empty()));
		}
		Optional<Double> others = !little ? Optional.empty() : DrillFeeds.others(drill, work, all -> all.leastBut(drill.fed().stay()))
				.filter(next -> next >= OF_OTHERS * drill.share() && next > SUSPECT);
		return others.isPresent() || alone && drill.share() < LEAST ? Optional.of(draft(drill, surface, others)) : Optional.empty();
	}

	private Draft draft(DrillFeeds.Drill drill, double surface, Optional<Double> others) {
		Modal modal = drill.cut().step().modal();
		Figures figures = new Figures(modal.unit());
		boolean perMinute = modal.feedMode() == FeedMode.PER_MINUTE;
		boolean fast = surface > FAST;
		String feed = modal.feed().word().map(Figures::written).orElse("the feed");
		String speed = modal.speed().word().map(Figures::written).orElse("this speed");
		Setting wrong = fast ? modal.speed() : modal.feed();
		String fed = Figures.number(modal.advance() / figures.unit().mm(), 5) + " " + figures.symbol() + " a turn";
		String size = " of its diameter of " + figures.length(drill.diameter().value());
		String message = surface > FASTEST && drill.share() > SUSPECT ? speed + " turns " + drill.cut().tool().name() + " at "
				+ Figures.number(surface, 0) + " m/min at its diameter of " + figures.length(drill.diameter().value())
				+ ", no drill takes more than " + Figures.number(FASTEST, 0) + ": it burns; see the digits of S"
				: feed + (perMinute ? " at " + speed : "") + " feeds " + drill.cut().tool().name() + " no more than " + fed + ", "
				+ Figures.number(drill.share(), 5) + size + (fast ? ", at " + Figures.number(surface, 0) + " m/min" : "")
				+ others.map(next -> ", the program's other drills at least " + Figures.number(next, 3))
						.orElse(", drills take 0.01 to 0.03")
				+ ": it rubs and burns; see the digits of F" + (perMinute ? " and S" : "") + ", and the feed mode";
		Draft draft = Draft.of(this, Severity.WARNING, wrong, drill.cut().block(), message).programmed("feed", feed, modal.feed())
				.known("diameter of the drill", figures.length(drill.diameter().value()), drill.diameter());
		return modal.speed().known() ? draft.programmed("speed", "S" + Figures.number(modal.speed().value(), 1), modal.speed()) : draft;
	}
}
