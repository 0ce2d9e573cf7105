package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The depth of a thread said with a word between: PROF. ROSCA 15, DEPTH OF THREAD 15, 15 MIN FULL THREAD, 15 MIN DEEP (common practice, no source). */
final class FullThread {
	private static final Set<String> SMALL = Set.of("OF", "DE", "DI", "DU", "DEL", ".", "=", ":");
	private static final Set<String> AT_LEAST = Set.of("MIN", "MINIMUM");

	private FullThread() {
	}

	/** The depth; empty where a comment says none so, or speaks of a drill besides, whose depth it may be. */
	static Optional<Dimension> depth(List<Part> parts) {
		if (parts.stream().anyMatch(p -> p instanceof Part.Word w && w.meaning().drills())) {
			return Optional.empty();
		}
		for (int i = 0; i < parts.size(); i++) {
			Optional<Dimension> found = word(parts, i, Meaning.DEPTH) ? behind(parts, i + 1) : full(parts, i);
			if (found.isPresent()) {
				return found;
			}
		}
		return Optional.empty();
	}

	/** Behind DEPTH: a word of threads, and the number. */
	private static Optional<Dimension> behind(List<Part> parts, int from) {
		int at = from;
		while (text(parts, at, SMALL)) {
			at++;
		}
		if (!threads(parts, at)) {
			return Optional.empty();
		}
		at++;
		while (text(parts, at, SMALL)) {
			at++;
		}
		return amount(parts, at);
	}

	/** 15 FULL THREAD, 15 MIN FULL THREAD, FULL THREAD 15, 15 MIN DEEP. */
	private static Optional<Dimension> full(List<Part> parts, int i) {
		if (text(parts, i, AT_LEAST) && word(parts, i + 1, Meaning.DEPTH)) {
			return amount(parts, i - 1);
		}
		if (!text(parts, i, Set.of("FULL")) || !threads(parts, i + 1)) {
			return Optional.empty();
		}
		int before = text(parts, i - 1, AT_LEAST) ? i - 2 : i - 1;
		return amount(parts, before).or(() -> amount(parts, text(parts, i + 2, AT_LEAST) ? i + 3 : i + 2));
	}

	private static boolean threads(List<Part> parts, int i) {
		return word(parts, i, Meaning.THREAD) || word(parts, i, Meaning.TAPPED) || word(parts, i, Meaning.TAP);
	}

	private static boolean word(List<Part> parts, int i, Meaning meaning) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Word w && w.meaning() == meaning;
	}

	private static boolean text(List<Part> parts, int i, Set<String> texts) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Other o && texts.contains(TradeWords.fold(o.text()));
	}

	private static Optional<Dimension> amount(List<Part> parts, int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN ? Optional.of(a.dimension()) : Optional.empty();
	}
}
