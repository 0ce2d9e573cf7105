package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** Tapping by moves in and out: the feed override is not locked, or feed over speed differs between in and out. */
public final class OverrideOpen extends TappingRule {

	/** How much faster or slower a tap in a floating holder comes out on purpose, as a part of its feed (common practice, no source). */
	private static final double FLOATS = 0.1;

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
		if (!feed && !synchronised) {
			return;
		}
		for (TapStroke stroke : tapping.strokes().typical()) {
			boolean floats = tapping.wanted().holder().stated() && tapping.wanted().holder().value().floats();
			Optional<Draft> draft = feed ? uneven(stroke, floats) : Optional.empty();
			if (draft.isEmpty() && !stroke.modal().overridesLocked()) {
				draft = Optional.of(Draft.of(this, floats ? Severity.INFORMATION : Severity.WARNING, Location.of(stroke.block()),
						"the tap is led by " + (feed ? "feed moves" : "a synchronised move")
								+ " with the overrides free: at 90 % feed it is 10 % off the pitch" + (floats ? ", more than the floating holder may take" : "") + "; lock them before the block (M49 in RS-274), free them behind it")
						.from("override", "free", "no code that locks it is in force"));
			}
			if (draft.isPresent()) {
				found.accept(draft.get());
				return;
			}
		}
	}

	private Optional<Draft> uneven(TapStroke stroke, boolean floats) {
		double in = ratio(stroke, stroke.feed(), stroke.speed());
		double out = ratio(stroke, stroke.feedOut(), stroke.speedOut());
		if (!(Math.abs(in - out) > (floats ? FLOATS : 0.002) * in)) {
			return Optional.empty();
		}
		Figures figures = new Figures(stroke.modal().unit());
		String message = "the tap goes in at " + figures.advance(in) + " " + figures.symbol() + " a turn and comes out at " + figures.advance(out)
				+ ": it strips the thread on the way out; one F and one S for both";
		return Optional.of(Draft.of(this, Severity.WARNING, stroke.feedOut(), stroke.back().map(s -> s.block()).orElse(stroke.block()), message)
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
