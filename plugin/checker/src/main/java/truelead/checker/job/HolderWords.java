package truelead.checker.job;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a free comment says of the tap's holder: {@code 3/8-24 TAP IN FLOATING HOLDER}, {@code M8 AUSGLEICHSFUTTER}. Words of the trade in the usual
 * languages of programs (common practice, no source). That a holder is rigid is taken where nobody says anything, so it is not looked for.
 */
final class HolderWords {

	private static final List<String> FLOATS = List.of("FLOAT", "AUSGLEICH", "LANGENAUSGLEICH", "LAENGENAUSGLEICH", "PENDELFUTTER", "FLOTTANT", "FLOTANTE", "COMPENSAT", "COMPENSAD",
			"COMPENSE", "FLUTUANTE", "KOMPENSAC", "ПЛАВАЮЩ", "КОМПЕНСИР");
	private static final List<String> HOLDERS = List.of("HOLDER", "CHUCK", "HEAD", "FUTTER", "MANDRIN", "PORTAMACHO", "PORTAMASCHI", "OPRAWK", "ПАТРОН");

	private HolderWords() {
	}

	/**
	 * The holder that a text names; empty where it names none.
	 *
	 * @param tap whether the text is about a tap, so that FLOATING can only be said of its holder
	 */
	static Optional<Holder> read(String text, boolean tap) {
		List<String> words = words(text);
		boolean holder = any(words, HOLDERS);
		boolean tension = words.contains("TENSION") && words.contains("COMPRESSION");
		if (any(words, List.of("REVERSING")) && (holder || words.contains("SELF"))) {
			return Optional.of(Holder.usual(HolderKind.SELF_REVERSING));
		}
		if (any(words, List.of("SYNCHRO")) && holder) {
			return Optional.of(Holder.usual(HolderKind.SYNCHRO));
		}
		return tension || any(words, FLOATS) && (tap || holder) ? Optional.of(Holder.usual(HolderKind.FLOATING)) : Optional.empty();
	}

	private static boolean any(List<String> words, List<String> stems) {
		return words.stream().anyMatch(word -> stems.stream().anyMatch(stem -> word.startsWith(stem) || stem.equals("FUTTER") && word.endsWith(stem)));
	}

	/** The runs of letters in a text, in capitals and without accents. */
	private static List<String> words(String text) {
		List<String> words = new ArrayList<>();
		StringBuilder word = new StringBuilder();
		for (char c : (Normalizer.normalize(text, Normalizer.Form.NFD).toUpperCase(Locale.ROOT) + " ").toCharArray()) {
			if (Character.isLetter(c)) {
				word.append(c);
			} else if (Character.getType(c) != Character.NON_SPACING_MARK && !word.isEmpty()) {
				words.add(word.toString());
				word.setLength(0);
			}
		}
		return words;
	}
}
