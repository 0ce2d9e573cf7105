package truelead.checker.machine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.profile.Meaning;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/**
 * A canned cycle as the program says it, with the words gathered from the block that starts it and the blocks that change it.
 *
 * @param kind  what it does, by the profile's meaning of the code
 * @param code  the G code times ten: 840 for G84, 842 for G84.2, 740 for G74
 * @param start the block that holds the G code
 * @param since the first of the blocks that say it one after the other, without an end between them: its start, where it is not said anew
 * @param gWord the G word
 * @param words the words in force by address (R, Z, Q, P, F, S, K, L, ...), values in program units; along the hole's axis Z stands under
 *              the axis letter
 */
public record Cycle(Kind kind, int code, BlockRef start, BlockRef since, WordRef gWord, Map<Character, Setting> words) {

	/** What a canned cycle does. */
	public enum Kind {
		/** Feed to depth, rapid out: G81, G82. */
		DRILL,
		/** Pecking: G73, G83. */
		PECK_DRILL,
		/** Right-hand tapping: G84. */
		TAP,
		/** Left-hand tapping: G74. */
		TAP_LEFT,
		/** Feed in, feed out: G85, G89. */
		BORE_FEED_OUT,
		/** Boring with spindle stop or shift: G76, G86 to G88. */
		BORE,
		/** A cycle the profile does not know. */
		OTHER;

		/** Whether it taps. */
		public boolean taps() {
			return this == TAP || this == TAP_LEFT;
		}

		/** What a code of that meaning does. */
		static Kind of(Meaning meaning) {
			return switch (meaning) {
				case DRILL -> DRILL;
				case PECK_DRILL, FACE_PECK -> PECK_DRILL;
				case TAP -> TAP;
				case TAP_LEFT -> TAP_LEFT;
				case BORE_FEED_OUT -> BORE_FEED_OUT;
				case BORE -> BORE;
				default -> OTHER;
			};
		}
	}

	/** A cycle that is said for the first time. */
	Cycle(Kind kind, int code, BlockRef start, WordRef gWord, Map<Character, Setting> words) {
		this(kind, code, start, start, gWord, words);
	}

	public Cycle {
		words = Map.copyOf(words);
	}

	/** Whether a number in force is said by the block that starts the cycle. */
	public boolean says(Setting setting) {
		return setting.word().filter(word -> word.block().sameBlock(start)).isPresent();
	}

	/** What it says; equal to that of one said anew that differs in no more than where its block stands, and its words in the block. */
	public Object said() {
		Map<Character, Object> said = new HashMap<>();
		words.forEach((address, setting) -> said.put(address, says(setting) ? List.of(setting.value(), setting.rounding()) : setting));
		return List.of(kind, code, since, said);
	}

	/** A word in force in the cycle. */
	public Optional<Setting> word(char address) {
		return Optional.ofNullable(words.get(address));
	}
}
