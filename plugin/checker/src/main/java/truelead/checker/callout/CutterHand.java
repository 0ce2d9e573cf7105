package truelead.checker.callout;

import java.util.Iterator;
import java.util.Locale;
import java.util.Set;

/** LEFT HAND CUTTING, LH CUT, LINKS SCHNEIDEND: so is a cutter ground, whatever thread it makes. */
public final class CutterHand {

	private static final Set<String> BETWEEN = Set.of("-", "HAND", "HANDED");
	private static final Set<String> CUTS = Set.of("CUT", "CUTTING", "SCHNEIDEND");

	private CutterHand() {
	}

	/** Whether a text names a left hand, in any language of the trade: 8.5 DRILL LH, BOHRER LINKS. */
	public static boolean left(String text) {
		for (int from = 0, to; from < text.length(); from = to + 1) {
			to = from;
			while (to < text.length() && Character.isLetter(text.charAt(to))) {
				to++;
			}
			if (to > from && TradeWords.words().meaning(text.substring(from, to)).filter(meaning -> meaning == Meaning.LEFT).isPresent()) {
				return true;
			}
		}
		return false;
	}

	/** Whether the pieces of a comment behind LEFT or RIGHT say that the cutter is meant: words in any case, and hyphens. */
	public static boolean meant(Iterator<String> behind) {
		while (behind.hasNext()) {
			String piece = behind.next().toUpperCase(Locale.ROOT);
			if (!BETWEEN.contains(piece)) {
				return CUTS.contains(piece);
			}
		}
		return false;
	}
}
