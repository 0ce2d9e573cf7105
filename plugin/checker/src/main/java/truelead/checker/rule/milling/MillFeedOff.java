package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * A thread mill is fed many times as fast or as slowly as in its other passes, or as no cutter is: the point of F or S a place off, a digit
 * too many or too few.
 */
public final class MillFeedOff implements Rule {

	/** So many times the feed of the other passes is another number (common practice, no source). */
	private static final double TIMES = 4.5;

	/**
	 * Thread mills take 0.003 to 0.06 of their diameter a turn at the edge: farther than this they break, and below the other they rub
	 * (common practice, no source).
	 */
	private static final double MOST = 0.3;
	private static final double LEAST = 0.0006;

	/** So little of its diameter a turn is no feed but one that was written for another mode. */
	private static final double NO_FEED = 3e-5;

	/** At such a cutting speed, m/min, a cutter is fed no less than this part of its diameter a turn (common practice, no source). */
	private static final double FAST = 250;
	private static final double FED_WHEN_FAST = 0.003;

	/** At such a cutting speed, m/min, a cutter is fed no more than this part of its diameter a turn (common practice, no source). */
	private static final double SLOW = 12;
	private static final double FED_WHEN_SLOW = 0.04;

	/** Below this part of what teeth and feed a tooth make F is another number (common practice, no source). */
	private static final double PART_OF_STATED = 0.2;

	@Override
	public String name() {
		return "mill-feed-off";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_PLANE, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.OTHER_FEED_MODE, Slip.OTHER_TOOLS_FEED,
				Slip.MODE_LEFT_ON, Slip.NO_SPEED, Slip.NO_CENTRE);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		for (ThreadMilling operation : work.threadMillings()) {
			MillFeeds feeds = MillFeeds.of(operation);
			odd(operation, feeds).or(() -> feeds.usual().flatMap(usual -> asNoCutter(operation, usual)))
					.ifPresent(draft -> found.accept(draft.on(operation).finding()));
		}
	}

	/** A feed that is not that of the other passes. */
	private Optional<Draft> odd(ThreadMilling operation, MillFeeds feeds) {
		return feeds.odd(TIMES).filter(odd -> !EdgeFeedHigh.tells(operation, odd.pass())).map(odd -> {
			MillFeeds.Fed usual = feeds.usual().orElseThrow();
			double times = odd.edge() / usual.edge();
			String here = said(odd.modal().feed());
			String there = said(usual.modal().feed());
			boolean speeds = !sameSpeed(odd.modal(), usual.modal());
			Setting wrong = speeds && odd.modal().feed().value() == usual.modal().feed().value() ? odd.modal().speed()
					: odd.modal().feed();
			Draft draft = Draft.of(this, Severity.WARNING, wrong, odd.arc().block(), (speeds ? said(odd.modal()) : here)
					+ " feeds the cutter "
					+ (times > 1 ? Figures.number(times, 1) + " times as far" : "no more than " + Figures.number(times, 2) + " as far")
					+ " a turn as " + (speeds ? said(usual.modal()) : there) + (feeds.others() > 1
							? " in the other " + feeds.others() + " passes" : " in the other pass") + ": "
					+ (times > 1 ? "its teeth break" : "it rubs and wears") + "; "
					+ (speeds ? "see the digits of F and S" : there)).programmed("feed", here, odd.modal().feed())
					.programmed("feed of the others", there, usual.modal().feed()).related(usual.arc().block(), "a pass at the usual feed");
			if (!speeds && odd.modal().feedMode() == usual.modal().feedMode()) {
				odd.modal().feed().word().flatMap(word -> Draft.change(word, usual.modal().feed().value(), 4, false,
						"see that the other passes are fed as they are to be")).ifPresent(draft::fix);
			}
			return draft;
		});
	}

	private static boolean sameSpeed(Modal one, Modal other) {
		return one.feedMode() == FeedMode.PER_REVOLUTION || one.speed().value() == other.speed().value();
	}

	/** A feed or a speed that no cutter takes. */
	private Optional<Draft> asNoCutter(ThreadMilling operation, MillFeeds.Fed fed) {
		Optional<Fact<Double>> cutter = operation.tool().facts().diameter().filter(Fact::stated).filter(size -> size.value() > 0);
		double share = cutter.map(size -> fed.edge() / size.value()).orElse(Double.NaN);
		double surface = cutter.filter(size -> fed.modal().speed().known() && !fed.modal().constantSurface())
				.map(size -> Math.PI * size.value() * fed.modal().speed().value() / 1000).orElse(Double.NaN);
		boolean fast = surface > FAST && share < FED_WHEN_FAST;
		boolean slow = surface < SLOW && share > FED_WHEN_SLOW;
		OptionalDouble stated = EdgeFeedHigh.right(operation, fed.pass());
		// where no unit is stated F may be in inches
		if (EdgeFeedHigh.tells(operation, fed.pass()) || !(share > NO_FEED) || !fed.modal().unitStated()) {
			return Optional.empty();
		}
		if (share > MOST || share < LEAST || fast || slow) {
			return Optional.of(far(operation, fed, share, surface, fast || slow));
		}
		return stated.isPresent() && fed.modal().feed().value() * fed.modal().unit().mm() < PART_OF_STATED * stated.getAsDouble()
				? Optional.of(lessThanStated(operation, fed, stated.getAsDouble())) : Optional.empty();
	}

	private Draft far(ThreadMilling operation, MillFeeds.Fed fed, double share, double surface, boolean speed) {
		Figures figures = new Figures(fed.modal().unit());
		Fact<Double> cutter = operation.tool().facts().diameter().orElseThrow();
		boolean more = share > FED_WHEN_SLOW;
		Draft draft = Draft.of(this, Severity.WARNING, speed ? fed.modal().speed() : fed.modal().feed(), fed.arc().block(),
				said(fed.modal()) + " feeds the cutter of " + figures.length(cutter.value()) + " " + figures.advance(fed.edge()) + " "
				+ figures.symbol() + " a turn at its edge" + (speed ? " at " + Figures.number(surface, 0) + " m/min" : "")
				+ ", cutters take 0.003 to 0.06 of their diameter: " + (more ? "its teeth break" : "it rubs and wears")
				+ "; see the digits of F and S").programmed("feed", said(fed.modal().feed()), fed.modal().feed())
				.known("diameter of the cutter", figures.length(cutter.value()), cutter)
				.from("feed a turn at the edge", figures.advance(fed.edge()), "geometry");
		return fed.modal().feedMode() == FeedMode.PER_MINUTE ? draft.programmed("speed", "S" + Figures.number(fed.modal().speed().value(),
				1), fed.modal().speed()) : draft;
	}

	private Draft lessThanStated(ThreadMilling operation, MillFeeds.Fed fed, double right) {
		double mm = fed.modal().unit().mm();
		String shown = "F" + Figures.number(right / mm, mm > 1 ? 2 : 0);
		Draft draft = Draft.of(this, Severity.WARNING, fed.modal().feed(), fed.arc().block(), said(fed.modal().feed())
				+ " at the cutter's centre is no more than " + Figures.number(fed.modal().feed().value() * mm / right, 2)
				+ " of what its teeth and the feed a tooth make: it rubs and wears; " + shown)
				.programmed("feed", said(fed.modal().feed()), fed.modal().feed());
		operation.tool().facts().toothFeed().ifPresent(feed -> draft.known("feed a tooth", new Figures(fed.modal().unit())
				.fine(feed.value()), feed));
		operation.tool().facts().teeth().ifPresent(teeth -> draft.known("teeth", teeth.value().toString(), teeth));
		fed.modal().feed().word().flatMap(word -> Draft.change(word, right / mm, mm > 1 ? 2 : 0, false,
				"look whether the control takes F at the contour under compensation")).ifPresent(draft::fix);
		return draft;
	}

	private static String said(Modal modal) {
		return said(modal.feed()) + (modal.feedMode() == FeedMode.PER_MINUTE ? " at " + said(modal.speed(), "S") : "");
	}

	private static String said(Setting feed) {
		return said(feed, "F");
	}

	private static String said(Setting setting, String address) {
		return setting.word().map(Figures::written).orElse(address + Figures.number(setting.value(), 4));
	}
}
