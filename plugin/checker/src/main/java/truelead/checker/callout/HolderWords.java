package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import truelead.checker.thread.HolderKind;

/** Finds the holder that a comment names in passing. That it is rigid is taken where nobody says anything, so it is not looked for. */
final class HolderWords {

	private static final String HOLDER_IN_WORD = "FUTTER";

	private HolderWords() {
	}

	/**
	 * The holder that the parts of a comment name; empty where they name none.
	 *
	 * @param tap whether the comment is about a tap, so that FLOATING can only be said of its holder
	 */
	static Optional<HolderKind> read(List<Part> parts, boolean tap) {
		boolean holder = says(parts, Meaning.HOLDER);
		if (says(parts, Meaning.REVERSING) && (holder || says(parts, Meaning.SELF))) {
			return Optional.of(HolderKind.SELF_REVERSING);
		}
		if (says(parts, Meaning.SYNCHRO) && holder) {
			return Optional.of(HolderKind.SYNCHRO);
		}
		boolean floats = says(parts, Meaning.TENSION) && says(parts, Meaning.COMPRESSION) || says(parts, Meaning.TENSION_COMPRESSION)
				&& holder || says(parts, Meaning.FLOATING) && (tap || holder || glued(parts));
		return floats ? Optional.of(HolderKind.FLOATING) : Optional.empty();
	}

	/** AUSGLEICHSFUTTER: floating and holder in one word. */
	private static boolean glued(List<Part> parts) {
		return parts.stream().anyMatch(part -> part instanceof Part.Word word && word.meaning() == Meaning.FLOATING
				&& TradeWords.fold(word.text()).endsWith(HOLDER_IN_WORD));
	}

	private static boolean says(List<Part> parts, Meaning meaning) {
		return parts.stream().anyMatch(part -> part instanceof Part.Word word && word.meaning() == meaning);
	}
}
