package truelead.checker.program;

import java.util.Optional;

/**
 * A number in force and the word that set it.
 *
 * @param value the number in the program's own unit, NaN where it is not known
 * @param word  the word that set it; empty where a default or the machine did
 * @param why   why it is not known, or what default it is; nothing where a word says it all
 */
public record Setting(double value, Optional<WordRef> word, Reason why) {

	/** Nothing has set it yet. */
	public static final Setting NONE = new Setting(Double.NaN, Optional.empty(), Reason.of("never set"));

	/** Set by a word to a known number, in the program's own unit. */
	public static Setting of(double value, WordRef word) {
		return new Setting(value, Optional.of(word), Reason.NONE);
	}

	/** Whether the number is known. */
	public boolean known() {
		return !Double.isNaN(value);
	}

	/** Whether any word or default has set it, to a known number or not. */
	public boolean isSet() {
		return this != NONE;
	}

	/**
	 * Half a unit of the last decimal written, here or where a variable was given the number: how far the programmer may have rounded; 0
	 * for what was worked out or a default.
	 */
	public double rounding() {
		return word.isPresent() && word.get().asWritten() ? 0.5 * Math.pow(10, -word.get().decimals()) : 0;
	}
}
