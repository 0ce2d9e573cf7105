package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The depth of a thread said with a word between: PROF. ROSCA 15, DEPTH OF THREAD 15, 15 MIN FULL THREAD, 15 MIN DEEP (common practice, no
 * source).
 */
final class FullThread {
	private static final Set<String> SMALL = Set.of("OF", "DE", "DI", "DU", "DEL", ".", "=", ":");
	private static final Set<String> AT_LEAST = Set.of("MIN", "MINIMUM");

	private static final Set<String> OF_THE_THREAD = Set.of("MIN", "MINIMUM", "MIND", "FULL", "USABLE", "USEFUL", "EFFECTIVE", "NUTZBAR",
			"UTILE", "UTIL");

	private final PartRow row;
	private final List<Part> parts;

	private FullThread(List<Part> parts) {
		this.row = new PartRow(parts);
		this.parts = parts;
	}

	/** The depth; empty where a comment says none so, or speaks of a drill besides, whose depth it may be. */
	static Optional<Dimension> depth(List<Part> parts) {
		if (parts.stream().anyMatch(p -> p instanceof Part.Word w && w.meaning().drills())) {
			return Optional.empty();
		}
		FullThread words = new FullThread(parts);
		for (int i = 0; i < parts.size(); i++) {
			Optional<Dimension> found = words.row.is(i, Meaning.DEPTH) ? words.behind(i + 1) : words.full(i);
			if (found.isPresent()) {
				return found;
			}
		}
		return Optional.empty();
	}

	/** Whether a comment speaks of the least or the full thread. */
	static boolean said(List<Part> parts) {
		return parts.stream().anyMatch(p -> p instanceof Part.Other o && OF_THE_THREAD.contains(TradeWords.fold(o.text())));
	}

	/** Behind DEPTH: a word of threads, and the number. */
	private Optional<Dimension> behind(int from) {
		int at = from;
		while (text(at, SMALL)) {
			at++;
		}
		if (!threads(at)) {
			return Optional.empty();
		}
		at++;
		while (text(at, SMALL)) {
			at++;
		}
		return amount(at);
	}

	/** 15 FULL THREAD, 15 MIN FULL THREAD, FULL THREAD 15, 15 MIN DEEP. */
	private Optional<Dimension> full(int i) {
		if (text(i, AT_LEAST) && row.is(i + 1, Meaning.DEPTH)) {
			return amount(i - 1);
		}
		if (!text(i, Set.of("FULL")) || !threads(i + 1)) {
			return Optional.empty();
		}
		int before = text(i - 1, AT_LEAST) ? i - 2 : i - 1;
		return amount(before).or(() -> amount(text(i + 2, AT_LEAST) ? i + 3 : i + 2));
	}

	private boolean threads(int i) {
		return row.is(i, Meaning.THREAD) || row.is(i, Meaning.TAPPED) || row.is(i, Meaning.TAP);
	}

	private boolean text(int i, Set<String> texts) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Other o && texts.contains(TradeWords.fold(o.text()));
	}

	private Optional<Dimension> amount(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN
				? Optional.of(a.dimension()) : Optional.empty();
	}
}
