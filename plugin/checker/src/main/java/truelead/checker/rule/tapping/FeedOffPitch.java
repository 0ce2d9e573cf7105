package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.job.Holder;
import truelead.checker.program.Location;
import truelead.checker.rule.AnotherThread;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.stroke.Strokes;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The feed does not advance the tap one lead a turn. Error a turn e = F/S - P, F - P or K - P; over the depth it adds up to e times the
 * turns, which the holder takes, or the thread does. M6x1 at S520 F500: 0.9615 - 1 = -0.0385 mm a turn, 12 turns, 0.46 mm.
 */
public final class FeedOffPitch extends TappingRule {

	/** What a thread stands without a holder's help, as a part of the lead (common practice, no source). */
	private static final double STANDS = 0.1;

	/** How much less than its lead a tap in a floating holder is fed, as a part of it (common practice, no source: 95 to 99 % is usual). */
	private static final double HELD_BACK = 0.05;

	/**
	 * How much less, and how much more, than its lead a tap in a floating holder is fed at most on purpose, as parts of it (common
	 * practice, no source).
	 */
	private static final double FLOATS_BEHIND = 0.1;
	private static final double FLOATS_AHEAD = 0.03;
	/**
	 * What a feed may be off as a part of the lead: that of S times a pitch written with three digits, .0313 for 1/32 in (common practice,
	 * no source).
	 */
	private static final double SLIGHT = 0.002;

	public FeedOffPitch() {
		super("feed-off-pitch");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.FEED_OFF);
	}

	@Override
	public boolean isOfWords() {
		return true;
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.NO_TAP, Slip.UNREAD_BLOCK, Slip.LEFT_ON, Slip.UNIT_WORD, Slip.OTHER_UNIT,
				Slip.OTHER_TOOLS_FEED, Slip.MODE_LEFT_ON, Slip.OTHER_FEED_MODE, Slip.NO_SPEED, Slip.RIGID_CODE_LEFT_OUT, Slip.TWO_SPEEDS);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		List<SinglePoint> turned = work.course().singlePoints();
		for (SinglePoint one : turned) {
			boolean alone = turned.stream().filter(other -> other.tool().index() == one.tool().index()).count() == 1;
			SinglePointFeed.check(this, one, alone).or(() -> TwoLeads.check(this, one, turned)).map(Draft::finding).ifPresent(found);
		}
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		Optional<Fact<ThreadSpec>> thread = tapping.wanted().statedThread();
		if (thread.isEmpty() || !tapping.method().taps()) {
			return;
		}
		Map<String, List<TapFeed>> byValue = new LinkedHashMap<>();
		for (TapStroke stroke : tapping.strokes().typical()) {
			for (Optional<TapFeed> feed : List.of(TapFeed.of(tapping, stroke), TapFeed.comingOut(tapping, stroke))) {
				if (feed.isPresent() && !fitsAny(tapping, feed.get())) {
					byValue.computeIfAbsent(feed.get().feed().value() + " at " + feed.get().speed(), w -> new ArrayList<>())
							.add(feed.get());
				}
			}
		}
		double lead = thread.get().value().lead();
		byValue.values().forEach(feeds -> {
			TapFeed worst = feeds.stream().max(Comparator.comparingDouble(feed -> drift(tapping, feed, lead))).orElseThrow();
			long places = places(tapping.strokes(), feeds);
			Optional<AnotherThread> another = another(tapping, worst, thread.get().value());
			Draft draft = draft(tapping, worst, thread.get(), places, another, FeedFix.shared(work, worst, lead));
			another.ifPresentOrElse(other -> tell(other, draft, tapping, thread.get()),
					() -> fix(tapping, work, feeds, worst).ifPresent(draft::fix));
			feeds.stream().filter(feed -> !saidWithCycle(feed)).flatMap(feed -> feed.feed().word().stream()).map(Location::of).distinct()
					.limit(10).forEach(at -> draft.related(at, "the same feed"));
			found.accept(draft);
		});
	}

	/** The speed that was meant, where it is the slip more likely; else the feed. */
	private static Optional<Fix> fix(Tapping tapping, Work work, List<TapFeed> feeds, TapFeed worst) {
		double lead = tapping.wanted().statedThread().orElseThrow().value().lead();
		Optional<MeantSpeed> meant = MeantSpeed.of(worst, tapping, lead);
		return meant.filter(speed -> !speed.known()).isPresent() ? Optional.empty()
				: meant.flatMap(speed -> speed.fix(worst, tapping, work)).or(() -> FeedFix.of(tapping, work, feeds, lead));
	}

	/** Another thread is made than the one called out: the tool is another's where H is, too. */
	private static void tell(AnotherThread other, Draft draft, Tapping tapping, Fact<ThreadSpec> called) {
		Optional<MeantTool> meant = MeantTool.of(tapping.tool());
		if (meant.isPresent()) {
			meant.get().fix(tapping.tool()).ifPresent(draft::fix);
			other.tell(draft.tells(Slip.FEED_AND_DRILL), "feed");
		} else {
			other.tell(draft.tells(Slip.FEED_AND_DRILL), "feed", called, tapping.block().file());
		}
	}

	/** Whether the feed stands in the block of the cycle: what is true of it there is told of all blocks that say the cycle. */
	private static boolean saidWithCycle(TapFeed feed) {
		return feed.stroke().step() instanceof Step.Stroke step && step.cycle().says(feed.feed());
	}

	/** At how many places the strokes are made that have these feeds, of which the typical ones are given. */
	private static long places(Strokes strokes, List<TapFeed> feeds) {
		Set<TapStroke> typical = Collections.newSetFromMap(new IdentityHashMap<>());
		feeds.forEach(feed -> typical.add(feed.stroke()));
		boolean each = strokes.typical().size() == strokes.size();
		List<TapStroke> all = each ? List.copyOf(typical) : strokes.where(typical::contains);
		return all.size() == strokes.size() ? strokes.holes().size() : all.stream().map(TapStroke::place).distinct().count();
	}

	/** Exact for the nearest source, or right for another source that names a thread: the disagreement is another rule's. */
	private static boolean fitsAny(Tapping tapping, TapFeed feed) {
		return feed.exact(tapping.wanted().statedThread().orElseThrow().value().lead())
				|| !feed.fits(tapping.wanted().statedThread().orElseThrow().value().lead())
						&& tapping.wanted().named().stream().anyMatch(named -> feed.fits(named.value().lead()));
	}

	private static double drift(Tapping tapping, TapFeed feed, double lead) {
		double turns = Turns.toDepth(tapping, feed.stroke(), lead);
		return Math.abs(feed.error(lead)) * (Double.isNaN(turns) ? 1 : turns);
	}

	/** In and out by G1 nobody taps with a rigid holder, and a floating tap is held back a little on purpose. */
	private static boolean heldBack(Tapping tapping, TapFeed feed, double lead) {
		return tapping.method() == Tapping.Method.FEED && !tapping.wanted().holder().stated() && feed.error(lead) < 0
				&& feed.error(lead) >= -HELD_BACK * lead;
	}

	private static boolean onPurpose(TapFeed feed, double lead) {
		return feed.error(lead) >= -FLOATS_BEHIND * lead && feed.error(lead) <= FLOATS_AHEAD * lead;
	}

	private static Optional<AnotherThread> another(Tapping tapping, TapFeed feed, ThreadSpec called) {
		Optional<Double> drill = feed.stroke().hole().threadedBefore(feed.stroke().order(), called.diameter()).flatMap(Cut::diameter)
				.filter(Fact::stated).map(Fact::value);
		return tapping.wanted().wireInsert() ? Optional.empty()
				: AnotherThread.of(feed.advance(), drill, called, ToolName.forms(tapping.tool().facts()));
	}

	private Draft draft(Tapping tapping, TapFeed feed, Fact<ThreadSpec> thread, long places, Optional<AnotherThread> another,
			boolean shared) {
		double lead = thread.value().lead();
		Figures figures = new Figures(feed.stroke().modal().unit());
		double drift = drift(tapping, feed, lead);
		double turns = Turns.toDepth(tapping, feed.stroke(), lead);
		Fact<Holder> holder = tapping.wanted().holder();
		boolean rounded = feed.fits(lead) || Math.abs(feed.error(lead)) <= SLIGHT * lead;
		boolean floats = holder.value().floats() && drift <= holder.value().travel() && onPurpose(feed, lead)
				|| heldBack(tapping, feed, lead);
		Severity severity = rounded || floats ? Severity.INFORMATION
				: another.isPresent() || drift > holder.value().travel() + STANDS * lead ? Severity.ERROR : Severity.WARNING;
		String way = feed.error(lead) < 0 ? " behind" : " ahead";
		String message = feed.said() + " advances " + figures.advance(feed.advance()) + " " + figures.symbol() + " a turn, "
				+ thread.value().withoutClass().designation() + " needs " + figures.advance(lead) + ": " + (rounded ? "rounded, " : "")
				+ figures.drift(drift) + way + (Double.isNaN(turns) ? " each turn" : " after " + Figures.turns(turns) + " turns")
				+ (places > 1 ? " at " + places + " holes" : "") + (floats && !rounded ? ", which the floating holder takes" : "") + "; "
				+ (rounded ? "" : MeantSpeed.of(feed, tapping, lead).map(MeantSpeed::said).orElse(""))
				+ another.flatMap(other -> MeantTool.of(tapping.tool())).map(tool -> tool.said() + ", as H" + tool.number()
						+ " says, or ").orElse("")
				+ FeedFix.text(feed, lead) + (shared ? " for " + tapping.tool().name() + " alone, the word is that of another tap too" : "")
				+ another.map(other -> other.said("feed", figures)).orElse("");
		Draft draft = Draft.of(this, severity, feed.feed(), feed.stroke().block(), message)
				.programmed("feed", feed.said(), feed.feed());
		if (!feed.perTurn()) {
			draft.programmed("speed", "S" + Figures.number(feed.speed(), 1), feed.stroke().speed());
			feed.stroke().speed().word().ifPresent(word -> draft.related(Location.of(word), "the speed"));
		}
		if (feed.stroke().feedOut().known() && tapping.method() == Tapping.Method.FEED
				&& feed.stroke().feedOut().value() != feed.stroke().feed().value()) {
			draft.programmed("feed out", Figures.number(feed.stroke().feedOut().value(), 4), feed.stroke().feedOut())
					.tells(Slip.FEED_IN_OFF);
		}
		draft.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread);
		draft.from("turns", Figures.turns(turns), "depth " + figures.length(Turns.engaged(tapping, feed.stroke())) + " / pitch");
		draft.from("free travel of the holder", figures.length(holder.value().travel()), holder.origin());
		return draft;
	}
}
