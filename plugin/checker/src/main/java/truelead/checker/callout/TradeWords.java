package truelead.checker.callout;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import truelead.checker.thread.DataFile;
import truelead.checker.thread.DataRow;

/**
 * The words of words.csv. Case and accents do not count; a word that ends in a star stands for all words that begin so, one that begins
 * with it for all that end so and are no other word.
 */
final class TradeWords {
	private static final int SHORTEST_STEM = 2;
	/** Shorter words that are no others without an E are many, DUE and BLUE among them. */
	private static final int SHORTEST_WITH_TWO = 6;

	private final Map<String, Meaning> words = new HashMap<>();
	private final Map<String, Meaning> stems = new HashMap<>();
	private final Map<String, Meaning> endings = new LinkedHashMap<>();
	/** As in the file, for the words that are no ASCII: folding the first of them takes long, and few shops write them. */
	private final Map<String, Meaning> unfolded = new LinkedHashMap<>();
	private TradeWords foreign;

	private static final class Loaded {
		static final TradeWords WORDS = new TradeWords(DataFile.rows(TradeWords.class, "words.csv"));
	}

	private static final class English {
		static final TradeWords WORDS = new TradeWords(DataFile.rows(TradeWords.class, "words.csv").stream()
				.filter(row -> row.get("language").equals("en")).toList());
	}

	private TradeWords(List<DataRow> rows) {
		for (DataRow row : rows) {
			Meaning meaning = Meaning.valueOf(row.get("meaning"));
			for (String word : row.words("words")) {
				if (ascii(word)) {
					add(word, meaning);
				} else {
					unfolded.putIfAbsent(word, meaning);
				}
			}
		}
	}

	private void add(String word, Meaning meaning) {
		if (word.endsWith("*")) {
			stems.putIfAbsent(word.substring(0, word.length() - 1), meaning);
		} else if (word.startsWith("*")) {
			endings.putIfAbsent(word.substring(1), meaning);
		} else {
			words.putIfAbsent(word, meaning);
		}
	}

	static TradeWords words() {
		return Loaded.WORDS;
	}

	/** What a word of letters means; empty for words that are not of the trade. */
	Optional<Meaning> meaning(String word) {
		String folded = fold(word);
		return Optional.ofNullable(ascii(folded) ? known(folded) : all().known(folded))
				.or(() -> withoutUmlauts(folded).map(this::known));
	}

	/** A long word whose letters with dots are written as two, GAENGTAPP, FOERBORR, with one for each; empty for any other. */
	private static Optional<String> withoutUmlauts(String folded) {
		return Optional.of(folded).filter(word -> word.length() >= SHORTEST_WITH_TWO)
				.map(word -> word.replace("AE", "A").replace("OE", "O").replace("UE", "U")).filter(word -> !word.equals(folded));
	}

	/** Whether a word is one of the trade in another language, and none in English. */
	static boolean abroad(String word) {
		return words().meaning(word).isPresent() && English.WORDS.meaning(word).isEmpty();
	}

	private Meaning known(String folded) {
		Meaning known = words.get(folded);
		for (int length = folded.length(); known == null && length >= SHORTEST_STEM; length--) {
			known = stems.get(folded.substring(0, length));
		}
		return known != null ? known : ending(folded);
	}

	private Meaning ending(String folded) {
		for (Map.Entry<String, Meaning> ending : endings.entrySet()) {
			if (folded.endsWith(ending.getKey())) {
				return ending.getValue();
			}
		}
		return null;
	}

	/** These words and the foreign ones, folded. */
	private synchronized TradeWords all() {
		if (foreign == null) {
			foreign = new TradeWords(List.of());
			foreign.words.putAll(words);
			foreign.stems.putAll(stems);
			foreign.endings.putAll(endings);
			unfolded.forEach((word, meaning) -> foreign.add(fold(word), meaning));
		}
		return foreign;
	}

	/**
	 * Upper case, without accents: Fräser, FRÄSER and FRASER are one word; letters that are two in other languages are these two, and
	 * narrow kana the wide ones.
	 */
	static String fold(String word) {
		String upper = word.toUpperCase(Locale.ROOT);
		if (ascii(upper)) {
			return upper;
		}
		return Normalizer.normalize(upper.replace('Ł', 'L').replace('Ø', 'O').replace('Đ', 'D').replace("Æ", "AE").replace("Œ", "OE"),
				Normalizer.Form.NFKD).codePoints().filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
				.collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
	}

	private static boolean ascii(String text) {
		for (int i = 0; i < text.length(); i++) {
			if (text.charAt(i) >= 0x80) {
				return false;
			}
		}
		return true;
	}
}
