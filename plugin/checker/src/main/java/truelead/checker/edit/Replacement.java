package truelead.checker.edit;

import java.util.List;

/**
 * Characters to put in place of others.
 *
 * @param offset from the start of the program's text as it stands before any replacement
 * @param length characters that go; 0 inserts
 */
public record Replacement(int offset, int length, String text) {

	/** The text with all replacements made; they stand in order and do not overlap. */
	public static String apply(String text, List<Replacement> replacements) {
		StringBuilder changed = new StringBuilder(text.length() + 8 * replacements.size());
		int from = 0;
		for (Replacement replacement : replacements) {
			changed.append(text, from, replacement.offset).append(replacement.text);
			from = replacement.offset + replacement.length;
		}
		return changed.append(text, from, text.length()).toString();
	}
}
