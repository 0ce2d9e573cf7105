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
