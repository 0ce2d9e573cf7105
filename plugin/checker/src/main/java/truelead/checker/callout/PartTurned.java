package truelead.checker.callout;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.thread.DataFile;
import truelead.checker.thread.Remembered;

/** Whether a comment says that the part is turned over or another one is clamped, in the words of part-words.csv: FLIP, OP 2, UMSPANNEN. */
public final class PartTurned {

	/** Other words between those of a phrase: TURN THE PART OVER. */
	private static final int BETWEEN = 2;
	private static final int LONGEST = 200;
	private static final String NUMBER = "NN";
	private static final Remembered<String, Boolean> SAID = new Remembered<>(1000, PartTurned::read);

	private static final class Loaded {
		static final List<List<String>> PHRASES = DataFile.rows(PartTurned.class, "part-words.csv").stream()
				.map(row -> row.words("words").stream().map(TradeWords::fold).toList()).toList();
	}

	private PartTurned() {
	}

	/** Of a text longer than 200 characters the first of them are read. */
	public static boolean says(String comment) {
		return SAID.of(comment.length() <= LONGEST ? comment : comment.substring(0, LONGEST));
	}

	private static boolean read(String comment) {
		List<String> words = words(TradeWords.fold(comment));
		for (List<String> phrase : Loaded.PHRASES) {
			for (int at = 0; at < words.size(); at++) {
				if (stands(phrase, words, at)) {
					return true;
				}
			}
		}
		return false;
	}

	/** Whether the words of a phrase stand from a place on in their order, the number of something right beside it. */
	private static boolean stands(List<String> phrase, List<String> words, int first) {
		int at = first;
		for (int i = 0; i < phrase.size(); i++) {
			boolean beside = i == 0 || phrase.get(i).equals(NUMBER) || phrase.get(i - 1).equals(NUMBER);
			int last = Math.min(words.size() - 1, beside ? at : at + BETWEEN);
			while (at <= last && !is(phrase.get(i), words.get(at))) {
				at++;
			}
			if (at > last) {
				return false;
			}
			at++;
		}
		return true;
	}

	private static boolean is(String wanted, String word) {
		if (wanted.equals(NUMBER)) {
			return word.chars().allMatch(c -> c >= '0' && c <= '9') && !word.equals("0") && !word.equals("1");
		}
		return wanted.endsWith("*") ? word.startsWith(wanted.substring(0, wanted.length() - 1)) : word.equals(wanted);
	}

	/** Letters and digits in a row are a word; in OP20 letters and number are two, in 2ND one. */
	private static List<String> words(String text) {
		List<String> words = new ArrayList<>();
		int start = -1;
		for (int i = 0; i <= text.length(); i++) {
			boolean in = i < text.length() && Character.isLetterOrDigit(text.charAt(i));
			boolean parted = start >= 0 && in && Character.isLetter(text.charAt(i - 1)) && Character.isDigit(text.charAt(i));
			if (start >= 0 && (!in || parted)) {
				words.add(text.substring(start, i));
				start = -1;
			}
			start = in && start < 0 ? i : start;
		}
		return words;
	}
}
