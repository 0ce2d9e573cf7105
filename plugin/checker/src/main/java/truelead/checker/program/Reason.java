package truelead.checker.program;

import java.util.Optional;

/**
 * Why a number is not known, or whose it is where no word of the program says it.
 *
 * @param words one sentence, without a full stop; empty where there is nothing to say
 * @param unset the variable that nothing sets, as it is written, where it is to blame
 */
public record Reason(String words, Optional<String> unset) {

	/** Nothing to say: the number is known, and a word says it. */
	public static final Reason NONE = of("");

	/** A reason in words. */
	public static Reason of(String words) {
		return new Reason(words, Optional.empty());
	}

	/** A variable that the program uses and nothing in it sets. */
	public static Reason notSet(String variable) {
		return new Reason(variable + " is not set in the program", Optional.of(variable));
	}

	/** The same reason for something else that is not known because of it: {@code X is not known: #500 is not set in the program}. */
	public Reason behind(String what) {
		return new Reason(what + ": " + words, unset);
	}

	/** Whether there is nothing to say. */
	public boolean isEmpty() {
		return words.isEmpty();
	}
}
