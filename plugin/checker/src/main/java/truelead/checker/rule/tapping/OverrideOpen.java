package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Holder;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** Tapping by moves in and out: the feed override is not locked, or feed over speed differs between in and out. */
public final class OverrideOpen extends TappingRule {

	/** A holder that floats is led out by so much more than in at most on purpose, a part of the lead (common practice, no source). */
	private static final double FLOATED = 0.12;

	/** What somebody turns the override down by, of which a message speaks. */
	private static final double TURNED_DOWN = 0.1;

	public OverrideOpen() {
		super("override-open");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.FEED_IN_OFF);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		boolean feed = tapping.method() == Tapping.Method.FEED;
		boolean synchronised = tapping.method().synchronised() && !work.shop().profile().yes(ProfileKey.SYNCHRONISED_LOCKS_OVERRIDES);
		if (!feed && !synchronised || dieHead(tapping)) {
			return;
		}
		for (TapStroke stroke : tapping.strokes().typical()) {
			Holder holder = tapping.wanted().holder().value();
			Optional<Draft> draft = feed ? uneven(stroke, holder) : Optional.empty();
			if (draft.isEmpty() && !stroke.modal().overridesLocked()) {
				boolean floats = tapping.wanted().holder().stated() && holder.floats();
				boolean taken = floats && TURNED_DOWN * stroke.travel() <= holder.travel();
				draft = Optional.of(Draft.of(this, floats ? Severity.INFORMATION : Severity.WARNING, Location.of(stroke.block()),
						"the tap is led by " + (feed ? "feed moves" : "a synchronised move")
								+ " with the overrides free: at 90 % feed it is 10 % off the pitch"
								+ (floats && !taken ? ", more than the floating holder takes" : "")
								+ "; lock them before the block (M49 in RS-274), free them behind it")
						.from("override", "free", "no code that locks it is in force"));
			}
			if (draft.isPresent()) {
				found.accept(draft.get());
				return;
			}
		}
	}

	/** Dies and rolls that open lead themselves along the thread that they have begun. */
	private static boolean dieHead(Tapping tapping) {
		return tapping.tool().facts().kind().filter(kind -> kind.value() == ToolKind.DIE_HEAD).isPresent();
	}

	/** The way out is led at another lead than the way in, by more than a holder that floats takes over the depth. */
	private Optional<Draft> uneven(TapStroke stroke, Holder holder) {
		double in = ratio(stroke, stroke.feed(), stroke.speed());
		double out = ratio(stroke, stroke.feedOut(), stroke.speedOut());
		double drift = Math.abs(in - out) / in * stroke.travel();
		if (!(Math.abs(in - out) > 0.002 * in) || holder.floats() && drift <= holder.travel() && Math.abs(in - out) <= FLOATED * in) {
			return Optional.empty();
		}
		Figures figures = new Figures(stroke.modal().unit());
		String message = "the tap goes in at " + figures.advance(in) + " " + figures.symbol() + " a turn and comes out at "
				+ figures.advance(out) + ": it strips the thread on the way out; one F and one S for both";
		return Optional.of(Draft.of(this, Severity.WARNING, stroke.feedOut(),
				stroke.back().map(s -> s.block()).orElse(stroke.block()), message)
				.programmed("feed in", Figures.number(stroke.feed().value(), 4), stroke.feed())
				.programmed("feed out", Figures.number(stroke.feedOut().value(), 4), stroke.feedOut())
				.programmed("speed in", Figures.number(stroke.speed().value(), 1), stroke.speed())
				.programmed("speed out", Figures.number(stroke.speedOut().value(), 1), stroke.speedOut()));
	}

	private static double ratio(TapStroke stroke, Setting feed, Setting speed) {
		double length = feed.value() * stroke.modal().unit().mm();
		return stroke.modal().feedMode() == FeedMode.PER_REVOLUTION ? length : length / speed.value();
	}
}
