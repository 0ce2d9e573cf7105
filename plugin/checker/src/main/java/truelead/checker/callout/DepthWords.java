package truelead.checker.callout;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.thread.DataFile;
import truelead.checker.thread.DataRow;

/** The words of depth-words.csv: in what form a word for a depth stands. Words are folded, see {@link TradeWords#fold}. */
final class DepthWords {

	private static final DepthWords NOUNS = new DepthWords("noun");
	private static final DepthWords CUT_SHORT = new DepthWords("cut-short");

	private static final DepthWords LENGTHS = new DepthWords("length");

	private final List<String> words = new ArrayList<>();

	private DepthWords(String form) {
		for (DataRow row : DataFile.rows(DepthWords.class, "depth-words.csv")) {
			words.addAll(row.get("form").equals(form) ? row.words("words") : List.of());
		}
	}

	/** Whether the depth is the number behind the word. */
	static boolean noun(String folded) {
		return NOUNS.has(folded);
	}

	/** Whether the word ends in a point that is no decimal one. */
	static boolean cutShort(String folded) {
		return CUT_SHORT.has(folded);
	}

	/** Whether the number before the word is the length of a turned thread. */
	static boolean length(String folded) {
		return LENGTHS.has(folded);
	}

	private boolean has(String folded) {
		for (String word : words) {
			if (word.endsWith("*") ? folded.startsWith(word.substring(0, word.length() - 1)) : word.equals(folded)) {
				return true;
			}
		}
		return false;
	}
}
