package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Modal;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.Hand;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** No speed, a speed of zero, or a spindle that stands still before the tap or the thread mill goes in. */
public final class SpindleNotTurning extends TappingRule {

	public SpindleNotTurning() {
		super("spindle-not-turning");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.NO_SPEED);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.UNREAD_BLOCK, Slip.LEFT_ON, Slip.RIGID_CODE_LEFT_OUT);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		DrillSpindle.still(this, work).forEach(draft -> found.accept(draft.finding()));
		work.course().singlePoints().forEach(turned -> TurnedSpindle.still(this, turned, work.shop().profile()).map(Draft::finding)
				.ifPresent(found));
		if (!work.course().subprogramAlone()) {
			work.threadMillings().forEach(milling -> milling.passes().typical().stream().filter(pass -> still(pass.modal())).findFirst()
					.ifPresent(pass -> found.accept(still(milling, pass).finding())));
		}
	}

	private static boolean still(Modal modal) {
		return modal.spindle() == SpindleTurn.STOPPED || !modal.speed().isSet() || modal.speed().known() && modal.speed().value() <= 0;
	}

	/** A thread mill turns by S and M3 or M4 alone. */
	private Draft still(ThreadMilling milling, MillPass pass) {
		Modal modal = pass.modal();
		Optional<WordRef> stop = modal.spindle() == SpindleTurn.STOPPED ? modal.spindleWord() : Optional.empty();
		String why = modal.spindle() == SpindleTurn.STOPPED
				? stop.map(w -> Figures.written(w) + " stopped the spindle").orElse("nothing starts the spindle")
				: modal.speed().word().map(w -> Figures.written(w) + " does not turn the spindle").orElse("no S is in force");
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(pass.block()), why + " before " + milling.tool().name()
				+ " cuts: it breaks at the wall; S and M3 before it goes in").on(milling);
		stop.ifPresent(word -> draft.related(Location.of(word), "the spindle stop"));
		return draft;
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (tapping.method().taps()) {
			first(tapping, stroke -> still(tapping, work, stroke), found);
		}
	}

	private Optional<Draft> still(Tapping tapping, Work work, TapStroke stroke) {
		Setting speed = stroke.speed();
		boolean rigid = stroke.modal().rigid().map(Setting::known).orElse(false);
		if (!speed.isSet() && !rigid) {
			return work.course().subprogramAlone() ? Optional.empty()
					: Optional.of(Draft.of(this, Severity.ERROR, Location.of(block(tapping, stroke)),
							"no S is in force: the tap does not turn while it is fed " + new Figures(stroke.modal()
									.unit()).length(stroke.travel())));
		}
		if (speed.known() && speed.value() <= 0) {
			return Optional.of(Draft.of(this, Severity.ERROR, speed, stroke.block(), speed.word().map(Figures::written).orElse("S0")
					+ " does not turn the tap while it is fed " + new Figures(stroke.modal().unit()).length(stroke.travel()))
					.programmed("speed", "0 rev/min", speed));
		}
		return stroke.turning() == SpindleTurn.STOPPED && !rigid ? stopped(tapping, work, stroke) : Optional.empty();
	}

	private Optional<Draft> stopped(Tapping tapping, Work work, TapStroke stroke) {
		boolean cycle = tapping.cycle().isPresent();
		String starts = work.shop().profile().text(ProfileKey.TAPPING_STARTS_SPINDLE.key()).orElse("unstated");
		// G84.2 and G84.3 are synchronised by themselves (from memory)
		boolean synchronised = cycle && tapping.cycle().get().code() % 10 != 0;
		if (cycle && starts.equals("yes") || synchronised && !starts.equals("no")) {
			return Optional.empty();
		}
		boolean everyTap = cycle && work.survey(tapping, StandingTaps.SURVEY, every -> every);
		boolean own = cycle && ownSpeed(stroke);
		Optional<MeantSpeed> old = everyTap || own ? Optional.empty() : leftOver(tapping, stroke);
		Severity severity = !cycle || starts.equals("no") || old.isPresent() ? Severity.ERROR : everyTap || own ? Severity.INFORMATION
				: Severity.WARNING;
		Optional<WordRef> word = stroke.modal().spindleWord();
		String turn = tapping.wanted().statedThread().map(t -> t.value().hand()).orElse(Hand.RIGHT) == Hand.LEFT ? "M4" : "M3";
		String start = old.map(speed -> speed.text() + " ").orElse("") + turn;
		String message = word.map(w -> Figures.written(w) + " stopped the spindle").orElse("nothing starts the spindle") + " before "
				+ tapping.tool().name() + " goes in" + (old.isPresent() ? ", and " + old.get().whose() + "; " : severity != Severity.ERROR
						? (everyTap ? ", as before every tap of the program" : own ? ", S stands in the cycle's own block" : "")
						+ ", and the machine profile does not say whether the cycle starts it; " : ", and the " + (cycle ? "cycle" : "move")
						+ " does not start it; ") + start + " before the block";
		FirstPlace place = severity == Severity.INFORMATION ? new FirstPlace(false, false) : FirstPlace.of(tapping, work);
		Draft draft = Draft.of(this, severity, Location.of(block(tapping, stroke)), message + (place.left() && place.several()
				? ", in one that goes to its own first place" : "")).from("tapping cycle starts the spindle", starts, "machine profile "
						+ work.shop().profile().name());
		word.ifPresent(w -> draft.related(Location.of(w), "the spindle stop"));
		if (place.left()) {
			draft.tells(Slip.BLOCK_LEFT_OUT);
		}
		if (severity == Severity.INFORMATION || place.left() && place.several()) {
			// M3 alone would not bring the tap to its place
			return Optional.of(draft);
		}
		if (old.isEmpty() && SpeedOverLimit.drills(tapping, stroke)) {
			// M3 alone would turn the tap as fast as the drill
			return Optional.of(draft.adds(", and an S of its own: " + stroke.speed().word().map(Figures::written).orElseThrow()
					+ " is the drill's"));
		}
		draft.fix(new Fix("Put " + start + " before the tapping block", false, "see that the speed in force is the tap's",
				List.of(BlockText.before(FeedFix.opening(stroke), start))));
		return Optional.of(draft);
	}

	/** The speed that the feed was meant for, where S is the tool's before: S and M3 were left out together. */
	private static Optional<MeantSpeed> leftOver(Tapping tapping, TapStroke stroke) {
		return tapping.wanted().statedThread().map(thread -> thread.value().lead()).flatMap(lead -> TapFeed.of(tapping, stroke)
				.filter(feed -> !feed.fits(lead)).flatMap(feed -> MeantSpeed.of(feed, tapping, lead)))
				.filter(speed -> speed.leftOver() && speed.known());
	}

	/** S in the block of the cycle and no M3 or M4 are written for a cycle that starts the spindle. */
	private static boolean ownSpeed(TapStroke stroke) {
		return stroke.step() instanceof Step.Stroke step && stroke.speed().word().filter(word -> word.block()
				.sameBlock(step.cycle().start())).isPresent();
	}
}
