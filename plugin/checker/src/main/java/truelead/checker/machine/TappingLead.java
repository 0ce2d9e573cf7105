package truelead.checker.machine;

import java.util.Locale;
import java.util.Optional;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;

/** What a tapping cycle in force advances in a turn where its F does not say it by the feed mode: another word, or F as the lead. */
final class TappingLead {

	/** Cycles, times ten, whose F is a feed on some controls and the lead on others (from memory). */
	private static final int IN_STEP = 842;
	private static final int IN_STEP_LEFT = 843;
	/** No tap advances less in a turn, nor more, mm (ISO 261: M1 and M64). */
	private static final double FINEST = 0.2;
	private static final double COARSEST = 6.5;

	private final MachineState state;
	/** Whether I or J leads the spindle. */
	private final boolean words;
	private Kept kept = Kept.NONE;

	TappingLead(MachineState state) {
		this.state = state;
		this.words = state.profile.is(ProfileKey.TAPPING_LEAD, "i-j");
	}

	/**
	 * What later blocks depend on.
	 *
	 * @param pitchFeed whether F of the cycle in force is its lead a turn, whatever the feed mode
	 * @param said      another word that is the lead a turn, in program units
	 */
	record Kept(boolean pitchFeed, Optional<Setting> said) {

		/** By the feed mode. */
		static final Kept NONE = new Kept(false, Optional.empty());
	}

	Kept kept() {
		return kept;
	}

	void resume(Kept before) {
		kept = before;
	}

	/** The word in place of F; empty where F counts. */
	Optional<Setting> said() {
		return kept.said();
	}

	/** A word in place of F. */
	void say(Optional<Setting> lead) {
		kept = new Kept(kept.pitchFeed(), lead);
	}

	/** A block starts a cycle, behind another one where there was one in force. */
	void start(Cycle.Kind kind, int code, Words block, boolean behindAnother) {
		boolean pitchFeed = kind.taps() && (block.synchronous() || state.profile.is(ProfileKey.TAPPING_FEED, "pitch")
				|| (code == IN_STEP || code == IN_STEP_LEFT) && onlyAsLead(block));
		Optional<Setting> said = kind.taps() && behindAnother ? kept.said() : Optional.empty();
		kept = pitchFeed || said.isPresent() ? new Kept(pitchFeed, said) : Kept.NONE;
	}

	/** Whether F by the minute would be less than any tap advances, and as a lead is one. */
	private boolean onlyAsLead(Words block) {
		double feed = (block.has('F') ? block.value('F') : state.feed.value()) * state.unit.mm();
		return feed >= FINEST && feed <= COARSEST && feed / state.speed.value() < FINEST / 2;
	}

	/** The words of a block under the cycle. */
	void read(Cycle cycle, Words block) {
		if (!cycle.kind().taps()) {
			return;
		}
		if (block.has('F') && kept.said().isPresent()) {
			say(Optional.empty());
		}
		if (words) {
			leadWord(block);
		} else if (block.synchronous() && block.has('E')) {
			// threads an inch beside ,R1 (from memory)
			say(Optional.of(byInch(block.setting('E'))));
		} else if (isLead(block)) {
			say(Optional.of(block.setting('K')));
		} else if (speedForFeed(block)) {
			say(Optional.of(block.setting('Q')));
		}
	}

	private void leadWord(Words block) {
		if (block.has('I')) {
			say(Optional.of(block.setting('I')));
		} else if (block.has('J')) {
			say(Optional.of(byInch(block.setting('J'))));
		}
	}

	/** K that is no whole number without F, or beside an R plane that is called ER, is the lead (from memory). */
	private static boolean isLead(Words block) {
		boolean count = block.has('K') && block.value('K') == Math.rint(block.value('K'))
				&& !(block.has('R') && block.ref('R').written().toUpperCase(Locale.ROOT).startsWith("E"));
		return block.has('K') && !block.has('F') && !block.has('I') && !block.has('J') && !count;
	}

	/** Where F says the speed over again, which as a feed would be an inch a turn, Q is the lead (from memory). */
	private boolean speedForFeed(Words block) {
		return state.unit == LengthUnit.INCH && block.has('F') && block.has('Q') && block.value('F') == Math.floor(state.speed.value())
				&& block.value('Q') * state.unit.mm() <= COARSEST;
	}

	/** The lead that threads an inch make; not known where they are none. */
	private Setting byInch(Setting threads) {
		if (threads.value() <= 0) {
			return new Setting(Double.NaN, threads.word(), Reason.of("a count of threads an inch is above 0"));
		}
		return new Setting(LengthUnit.INCH.mm() / threads.value() / state.unit.mm(), threads.word(), threads.why());
	}

	/** The state at a stroke of the cycle. */
	Modal modal(Cycle cycle) {
		if (kept.said().isEmpty()) {
			return kept.pitchFeed() ? state.pitchModal(cycle.code()) : state.cycleModal(cycle.code());
		}
		SpindleTurn turn = cycle.kind() == Cycle.Kind.TAP ? SpindleTurn.CLOCKWISE : SpindleTurn.COUNTERCLOCKWISE;
		return state.leadModal(kept.said(), Optional.empty(), words ? Optional.of(turn) : Optional.empty());
	}
}
