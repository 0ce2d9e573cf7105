package truelead.checker.callout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.thread.DataFile;
import truelead.checker.thread.DataRow;

/** Words that mean together what neither means by itself, of phrases.csv: GEW-FR, C'DRILL, AVANT TROU. */
final class Phrases {
	private static final String ANY_SIGN = ".-/'’";

	/** The words of a phrase, and the sign before each of them: + for any or none. */
	private record Phrase(Meaning meaning, List<String> words, String signs) {
	}

	private static final class Loaded {
		static final Map<String, List<Phrase>> BY_FIRST = load();
	}

	private Phrases() {
	}

	/** Puts one word in the place of the parts that make a phrase. */
	static void join(List<Part> parts) {
		for (int i = 0; i + 1 < parts.size(); i++) {
			for (Phrase phrase : Loaded.BY_FIRST.getOrDefault(text(parts, i), List.of())) {
				int end = end(parts, i, phrase);
				if (end > 0 && !(phrase.meaning() == Meaning.TAP && bores(parts, end - 1))) {
					Part.Word word = new Part.Word(phrase.meaning(), String.join(" ", phrase.words()), parts.get(i).start(),
							parts.get(end - 1).end());
					parts.subList(i, end).clear();
					parts.add(i, word);
					break;
				}
			}
		}
	}

	/** GEWINDE BOHREN 6.8: a number of its own, and the word for any drill, say that the hole is drilled. */
	private static boolean bores(List<Part> parts, int last) {
		return parts.get(last) instanceof Part.Word w && w.meaning() == Meaning.DRILL
				&& parts.stream().anyMatch(part -> part instanceof Part.Amount a
						&& (a.role() == Part.Role.PLAIN || a.role() == Part.Role.DIAMETER));
	}

	/** The part behind a phrase that begins at i; 0 where another one stands there. */
	private static int end(List<Part> parts, int i, Phrase phrase) {
		int at = i + 1;
		for (int word = 1; word < phrase.words().size(); word++) {
			char wanted = phrase.signs().charAt(word);
			Optional<Character> sign = sign(parts, at);
			boolean right = wanted == '+' ? sign.isEmpty() || ANY_SIGN.indexOf(sign.get()) >= 0
					: sign.filter(s -> s == wanted || wanted == '\'' && s == '’').isPresent();
			at += sign.isPresent() ? 1 : 0;
			if (!right || !phrase.words().get(word).equals(text(parts, at))) {
				return 0;
			}
			at++;
		}
		return at;
	}

	private static Optional<Character> sign(List<Part> parts, int i) {
		return i < parts.size() && parts.get(i) instanceof Part.Other o && o.text().length() == 1 && !Character.isLetterOrDigit(o.text()
				.charAt(0)) ? Optional.of(o.text().charAt(0)) : Optional.empty();
	}

	private static String text(List<Part> parts, int i) {
		Part part = i < parts.size() ? parts.get(i) : null;
		return part instanceof Part.Word w ? w.text() : part instanceof Part.Other o ? TradeWords.fold(o.text()) : "";
	}

	private static Map<String, List<Phrase>> load() {
		Map<String, List<Phrase>> phrases = new HashMap<>();
		for (DataRow row : DataFile.rows(Phrases.class, "phrases.csv")) {
			List<String> words = new ArrayList<>();
			StringBuilder signs = new StringBuilder("+");
			String said = row.get("phrase");
			int start = 0;
			for (int i = 0; i <= said.length(); i++) {
				if (i == said.length() || !Character.isLetter(said.charAt(i))) {
					words.add(said.substring(start, i));
					signs.append(i == said.length() ? "" : said.charAt(i));
					start = i + 1;
				}
			}
			phrases.computeIfAbsent(words.get(0), first -> new ArrayList<>())
					.add(new Phrase(Meaning.valueOf(row.get("meaning")), List.copyOf(words), signs.toString()));
		}
		return phrases;
	}
}
