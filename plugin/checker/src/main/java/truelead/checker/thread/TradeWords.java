package truelead.checker.thread;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** The words of words.csv. Case and accents do not count; a word that ends in a star stands for all words that begin so. */
final class TradeWords {
	private static final int SHORTEST_STEM = 2;

	private final Map<String, Meaning> words = new HashMap<>();
	private final Map<String, Meaning> stems = new HashMap<>();

	private static final class Loaded {
		static final TradeWords WORDS = new TradeWords();
	}

	private TradeWords() {
		for (CSVRecord row : DataFile.rows("words.csv")) {
			Meaning meaning = Meaning.valueOf(row.get("meaning"));
			for (String word : row.get("words").split(" ")) {
				if (word.endsWith("*")) {
					stems.putIfAbsent(fold(word.substring(0, word.length() - 1)), meaning);
				} else {
					words.putIfAbsent(fold(word), meaning);
				}
			}
		}
	}

	static TradeWords words() {
		return Loaded.WORDS;
	}

	/** What a word of letters means; empty for words that are not of the trade. */
	Optional<Meaning> meaning(String word) {
		String folded = fold(word);
		Meaning exact = words.get(folded);
		for (int length = folded.length(); exact == null && length >= SHORTEST_STEM; length--) {
			exact = stems.get(folded.substring(0, length));
		}
		return Optional.ofNullable(exact);
	}

	/** Upper case, without accents: Fräser, FRÄSER and FRASER are one word. */
	static String fold(String word) {
		String upper = word.toUpperCase(Locale.ROOT);
		if (upper.chars().allMatch(c -> c < 0x80)) {
			return upper;
		}
		return Normalizer.normalize(upper.replace('Ł', 'L'), Normalizer.Form.NFD).codePoints()
				.filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
				.collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
	}
}
