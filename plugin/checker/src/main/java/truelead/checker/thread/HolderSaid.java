package truelead.checker.thread;

import java.util.List;
import java.util.Optional;

/** How a comment says in passing that a tap is held; that a holder is rigid is taken where nobody says anything, so it is not looked for. */
public enum HolderSaid {
	/** FLOATING HOLDER, TENSION-COMPRESSION. */
	FLOATING,
	/** SYNCHRO HOLDER. */
	SYNCHRO,
	/** SELF-REVERSING, REVERSING HEAD. */
	SELF_REVERSING;

	/**
	 * The holder that the parts of a comment name; empty where they name none.
	 *
	 * @param tap whether the comment is about a tap, so that FLOATING can only be said of its holder
	 */
	static Optional<HolderSaid> of(List<Part> parts, boolean tap) {
		boolean holder = says(parts, Meaning.HOLDER);
		if (says(parts, Meaning.REVERSING) && (holder || says(parts, Meaning.SELF))) {
			return Optional.of(SELF_REVERSING);
		}
		if (says(parts, Meaning.SYNCHRO) && holder) {
			return Optional.of(SYNCHRO);
		}
		boolean floats = says(parts, Meaning.TENSION) && says(parts, Meaning.COMPRESSION) || says(parts, Meaning.FLOATING) && (tap || holder);
		return floats ? Optional.of(FLOATING) : Optional.empty();
	}

	private static boolean says(List<Part> parts, Meaning meaning) {
		return parts.stream().anyMatch(part -> part instanceof Part.Word word && word.meaning() == meaning);
	}
}
