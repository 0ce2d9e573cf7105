package truelead.checker.callout;

import java.util.Locale;
import java.util.Set;

/**
 * Words for several of something, behind a number that counts them and is no size: 3 PORTS, 4 CORNERS, 2 ROWS. A word of five letters or
 * more that ends in one S is taken for several in English (common practice, no source).
 */
final class CountedThings {

	private static final int LONG = 5;
	private static final Set<String> SHORT = Set.of("LUGS", "PADS", "EARS", "ENDS", "ROWS", "PCS", "PTS", "FEET");
	/** Units of a size, of which there may be several. */
	private static final Set<String> ONE = Set.of("INCHES", "MILLIMETERS", "MILLIMETRES", "THOUS");

	private CountedThings() {
	}

	/** Whether a word, in any case, stands for several of something. */
	static boolean several(String word) {
		String capitals = word.toUpperCase(Locale.ROOT);
		boolean plural = capitals.length() >= LONG && capitals.endsWith("S") && !capitals.endsWith("SS") && !capitals.endsWith("US")
				&& !capitals.endsWith("IS") && capitals.chars().allMatch(c -> c >= 'A' && c <= 'Z');
		return SHORT.contains(capitals) || plural && !ONE.contains(capitals);
	}
}
