package truelead.editor.command;

import java.util.Arrays;
import java.util.List;
import truelead.checker.edit.Replacement;

/**
 * A change of very many places, worked out beforehand as one new text of the whole program.
 *
 * @param text the program's text behind the change
 */
record Rewrite(String text, List<Replacement> replacements) {

	/** The change of a text; for any thread. */
	static Rewrite of(String text, List<Replacement> replacements) {
		return new Rewrite(Replacement.apply(text, replacements), replacements);
	}

	/**
	 * Where offsets of the text before stand behind the change: one at which something is put in before that, so that a line's start stays
	 * one.
	 */
	Moved moved() {
		int[] starts = new int[replacements.size()];
		int[] shifts = new int[replacements.size() + 1];
		for (int i = 0; i < starts.length; i++) {
			Replacement replacement = replacements.get(i);
			starts[i] = replacement.offset();
			shifts[i + 1] = shifts[i] + replacement.text().length() - replacement.length();
		}
		return offset -> {
			int found = Arrays.binarySearch(starts, offset);
			int at = found >= 0 ? found : -found - 2;
			if (found >= 0 || at < 0) {
				return offset + shifts[Math.max(0, at)];
			}
			Replacement last = replacements.get(at);
			return offset < last.offset() + last.length() ? Math.min(offset, last.offset() + last.text().length()) + shifts[at]
					: offset + shifts[at + 1];
		};
	}

	/** Where a place is behind a change. */
	interface Moved {
		int of(int offset);
	}
}
