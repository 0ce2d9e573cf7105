package truelead.checker.tool;

import java.util.Optional;
import truelead.checker.machine.Modal;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/**
 * The feeds one tool used under one feed mode word, threading strokes left out.
 *
 * @param mode     how F was read
 * @param modeWord the word that set the mode; empty for the default
 * @param unit     unit in force
 * @param odd      the F, with its word, that makes the least sense in the mode: under a minute the smallest, a turn the largest; empty
 *                 where each may be meant
 * @param first    the first block that fed so
 */
public record FeedUse(FeedMode mode, Optional<WordRef> modeWord, LengthUnit unit, Optional<Setting> odd, BlockRef first) {

	/** More than this a turn no tool feeds, mm (common practice, no source). */
	private static final double PER_TURN = 5;
	/** Less than this a minute no tool feeds, mm (common practice, no source). */
	private static final double PER_MINUTE = 1;

	/** The feed in force at a block, which is known. */
	static FeedUse of(Modal modal, BlockRef block) {
		double feed = modal.feed().value() * modal.unit().mm();
		boolean odd = modal.feedMode() == FeedMode.PER_REVOLUTION && feed > PER_TURN || modal.feedMode() == FeedMode.PER_MINUTE && feed > 0
				&& feed < PER_MINUTE;
		return new FeedUse(modal.feedMode(), modal.feedModeStated(), modal.unit(), Optional.of(modal.feed()).filter(any -> odd), block);
	}

	/** The same with a feed that is used later. */
	FeedUse with(FeedUse later) {
		boolean odder = later.odd.isPresent()
				&& (odd.isEmpty() || (mode == FeedMode.PER_MINUTE ? later.odd.get().value() < odd.get().value()
						: later.odd.get().value() > odd.get().value()));
		return odder ? new FeedUse(mode, modeWord, unit, later.odd, first) : this;
	}
}
