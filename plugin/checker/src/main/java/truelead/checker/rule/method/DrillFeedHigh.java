package truelead.checker.rule.method;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.program.FeedMode;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.Work;

/**
 * The drill of a threaded hole is fed several times farther a turn than a drill takes: the point of F or S a place off, a digit too many or
 * too few, the other feed mode.
 */
public final class DrillFeedHigh implements Rule {

	/**
	 * Drills take 0.01 to 0.04 of their diameter a turn, some of three edges 0.06 to 0.1: farther than this one breaks, whatever it is and
	 * drills (common practice, no source).
	 */
	private static final double MOST = 0.15;

	/** No drill is fed farther a turn, however large it is, mm (common practice, no source). */
	private static final double MOST_LENGTH = 1.2;

	/**
	 * Farther than this one is suspect, where the program's other drills say that no such drills are at work (common practice, no source).
	 */
	private static final double SUSPECT = 0.08;

	/** So many times as far as any other drill of the program (common practice, no source). */
	private static final double TIMES_OTHERS = 5;

	@Override
	public String name() {
		return "drill-feed-high";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.OTHER_FEED_MODE, Slip.NO_TAP);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		DrillFeeds.take(work);
		Set<Integer> told = new HashSet<>();
		for (DrillFeeds.Drill drill : DrillFeeds.of(work)) {
			Cut cut = drill.cut();
			boolean far = drill.share() > MOST || cut.step().modal().advance() > MOST_LENGTH;
			if ((far || drill.share() > SUSPECT) && !told.contains(cut.tool().index()) && !DrillFeeds.modeLeftOn(drill, work)) {
				Optional<Double> others = far ? Optional.empty() : DrillFeeds.others(drill, work, all -> all.mostBut(cut.tool().index()))
						.filter(next -> drill.share() >= TIMES_OTHERS * next);
				if (far || others.isPresent()) {
					told.add(cut.tool().index());
					found.accept(draft(cut, drill.share(), others).on(drill.maker().operation()).finding());
				}
			}
		}
	}

	private Draft draft(Cut cut, double share, Optional<Double> others) {
		Modal modal = cut.step().modal();
		Figures figures = new Figures(modal.unit());
		Fact<Double> diameter = cut.tool().facts().diameter().orElseThrow();
		boolean perMinute = modal.feedMode() == FeedMode.PER_MINUTE;
		String feed = modal.feed().word().map(Figures::written).orElse("the feed");
		String speed = perMinute ? " at " + modal.speed().word().map(Figures::written).orElse("this speed") : "";
		String usual = others.map(next -> "the program's other drills at most " + part(next)).orElse("drills take up to 0.04");
		Draft draft = Draft.of(this, Severity.WARNING, modal.feed(), cut.block(), feed + speed + " feeds " + cut.tool().name() + " "
				+ figures.advance(modal.advance()) + " " + figures.symbol() + " a turn, " + part(share) + " of its diameter of "
				+ figures.length(diameter.value()) + ", " + usual + ": it breaks; see the digits of F" + (perMinute ? " and S"
						: ", and the feed mode")).programmed("feed", feed, modal.feed())
				.known("diameter of the drill", figures.length(diameter.value()), diameter);
		return perMinute ? draft.programmed("speed", "S" + Figures.number(modal.speed().value(), 1), modal.speed()) : draft;
	}

	private static String part(double share) {
		return Figures.number(share, share < 0.1 ? 3 : 2);
	}
}
