package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.NoLead;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** F is the pitch while feed per minute is in force, or pitch times speed while feed per revolution is: the value fits the other mode. */
public final class FeedInWrongMode extends TappingRule {

	/**
	 * How far F is rounded at most, a part of it: in the other mode it is far from everything (real programs round by up to 0.64 %; common
	 * practice, no source).
	 */
	private static final double ROUNDED = 0.01;
	/** More than a thread mill of many teeth is fed in a turn, mm (common practice, no source). */
	private static final double MOST_MILLED = 5;

	public FeedInWrongMode() {
		super("feed-in-wrong-mode");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.OTHER_FEED_MODE);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.NO_TAP, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.OTHER_TOOLS_FEED, Slip.MODE_LEFT_ON,
				Slip.NO_SPEED);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		work.threadMillings().forEach(milling -> rushes(milling).map(draft -> draft.on(milling).finding()).ifPresent(found));
		work.course().singlePoints().forEach(turned -> SinglePointFeed.otherMode(this, turned)
				.or(() -> SinglePointFeed.perMinute(this, turned)).map(Draft::finding).ifPresent(found));
	}

	/** A thread mill whose F, as of a feed per minute, is read per revolution. */
	private Optional<Draft> rushes(ThreadMilling milling) {
		Modal modal = milling.passes().get(0).modal();
		double turn = modal.feed().value() * modal.unit().mm();
		if (modal.feedMode() != FeedMode.PER_REVOLUTION || modal.feedModeStated().isEmpty() || !(turn > MOST_MILLED)) {
			return Optional.empty();
		}
		Figures figures = new Figures(modal.unit());
		return Optional.of(Draft.of(this, Severity.ERROR, modal.feed(), milling.block(), "F" + Figures.number(modal.feed().value(), 4)
				+ " is read per revolution, " + Figures.written(modal.feedModeStated().get()) + ": " + figures.length(turn)
				+ " a turn, the teeth take a few hundredths each; the word for feed per minute")
				.related(Location.of(modal.feedModeStated().get()), "the feed mode"));
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		Optional<Fact<ThreadSpec>> thread = tapping.wanted().statedThread();
		if (!tapping.method().taps()) {
			return;
		}
		Optional<TapStroke> timed = tapping.strokes().typical().stream().filter(stroke -> stroke.step() instanceof Step.Stroke
				&& stroke.modal().feedMode() == FeedMode.INVERSE_TIME).findFirst();
		if (timed.isPresent()) {
			timed.flatMap(stroke -> stroke.modal().feedModeStated().map(word -> timed(stroke, word))).ifPresent(found);
			return;
		}
		if (thread.isEmpty()) {
			TapFeed.alike(tapping, feed -> otherMode(feed).filter(other -> NoLead.unless(feed.advance(), other.advance())).isPresent())
					.stream().findFirst().ifPresent(feed -> found.accept(unnamed(work, feed)));
			return;
		}
		double lead = thread.get().value().lead();
		List<TapFeed> feeds = TapFeed.alike(tapping, feed -> !feed.fits(lead) && otherMode(feed).filter(other ->
				Math.abs(other.advance() - lead) <= ROUNDED * lead).isPresent());
		if (!feeds.isEmpty()) {
			found.accept(draft(tapping, work, feeds, thread.get()));
		}
	}

	/** Under inverse time F says how long a move takes, which in a cycle is nothing that goes with the spindle. */
	private Draft timed(TapStroke stroke, WordRef word) {
		String mode = Figures.written(word);
		return Draft.of(this, Severity.ERROR, stroke.feed(), stroke.block(), mode
				+ " is in force, under which F says how long a move takes and not how far the tap advances: the control stops, or the "
				+ "tap is not led by its pitch; the word for feed per minute before the cycle").related(Location.of(word), "the feed mode");
	}

	/** The same F read in the other mode. */
	static Optional<TapFeed> otherMode(TapFeed feed) {
		TapStroke stroke = feed.stroke();
		double length = Math.abs(feed.feed().value()) * stroke.modal().unit().mm();
		if (!feed.perTurn()) {
			return Optional.of(new TapFeed(stroke, feed.feed(), true, feed.speed(), length));
		}
		return feed.speed() > 0 ? Optional.of(new TapFeed(stroke, feed.feed(), false, feed.speed(), length / feed.speed()))
				: Optional.empty();
	}

	private Draft unnamed(Work work, TapFeed feed) {
		Figures figures = new Figures(feed.stroke().modal().unit());
		String meant = feed.perTurn() ? "per minute" : "per revolution";
		String message = feed.said() + " is read " + (feed.perTurn() ? "per revolution" : "per minute") + " and advances "
				+ figures.advance(feed.advance()) + " " + figures.symbol() + " a turn, the lead of no thread; " + meant + " it is "
				+ figures.advance(otherMode(feed).orElseThrow().advance()) + ": the word for feed " + meant;
		return modes(work, feed, Draft.of(this, Severity.ERROR, feed.feed(), feed.stroke().block(), message));
	}

	private static Draft modes(Work work, TapFeed feed, Draft draft) {
		draft.programmed("feed", feed.said(), feed.feed());
		if (feed.speed() > 0) {
			draft.programmed("speed", "S" + Figures.number(feed.speed(), 1), feed.stroke().speed());
		}
		String mode = feed.perTurn() ? "per revolution" : "per minute";
		feed.stroke().modal().feedModeStated().ifPresent(word -> draft.related(Location.of(word), "the word for feed " + mode));
		return draft.from("feed mode", mode, feed.stroke().modal().feedModeStated().map(w -> "programmed: " + Figures.written(w))
				.orElse("machine profile " + work.shop().profile().name()));
	}

	/** The drill of the hole, where its feed is none in this mode either: the mode is wrong, and no F. */
	private static Optional<Cut> misreadToo(Tapping tapping, TapFeed feed) {
		FeedMode mode = feed.stroke().modal().feedMode();
		return feed.stroke().hole().makingBefore(feed.stroke().order()).stream().filter(cut -> cut.tool().index() != tapping.tool().index()
				&& cut.kind().drills() && cut.step().modal().feedMode() == mode && cut.step().modal().feed().known()
				&& cut.tool().summary().feeds().stream().anyMatch(use -> use.mode() == mode && use.odd().isPresent())).findFirst();
	}

	private Draft draft(Tapping tapping, Work work, List<TapFeed> feeds, Fact<ThreadSpec> thread) {
		TapFeed feed = feeds.get(0);
		double lead = thread.value().lead();
		Figures figures = new Figures(feed.stroke().modal().unit());
		String mode = feed.perTurn() ? "per revolution" : "per minute";
		String meant = feed.perTurn() ? "per minute" : "per revolution";
		Optional<Cut> drilled = misreadToo(tapping, feed);
		String message = feed.said() + " is read " + mode + " and advances " + figures.advance(feed.advance()) + " " + figures.symbol()
				+ " a turn, " + thread.value().withoutClass().designation() + " needs " + figures.advance(lead) + ": the value is meant "
				+ meant + drilled.map(cut -> ", as F" + Figures.number(cut.step().modal().feed().value(), 4) + " of " + cut.tool().name()
						+ ", which drills; the word for feed " + meant + " before both")
						.orElseGet(() -> "; " + FeedFix.text(feed, lead) + " or the word for feed " + meant);
		Draft draft = modes(work, feed, Draft.of(this, Severity.ERROR, feed.feed(), feed.stroke().block(), message));
		draft.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread);
		drilled.ifPresent(cut -> draft.related(cut.block(), "the drill block"));
		if (drilled.isEmpty()) {
			FeedFix.of(tapping, work, feeds, lead).ifPresent(draft::fix);
		}
		return draft;
	}
}
