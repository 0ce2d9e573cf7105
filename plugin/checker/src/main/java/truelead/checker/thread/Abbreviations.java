package truelead.checker.thread;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Short words that mean a tool only beside a thread: M8 GF is a forming tap, PA6 GF30 a plastic (common practice of German shops, no source). */
final class Abbreviations {
	private static final Map<String, Meaning> BESIDE_A_THREAD = Map.of("GF", Meaning.FORM_TAP, "GB", Meaning.TAP, "FORMER", Meaning.FORM_TAP);

	private Abbreviations() {
	}

	/** Gives such words their meaning. */
	static void name(List<Part> parts) {
		for (int i = 0; i < parts.size(); i++) {
			String text = text(parts.get(i));
			Optional<Meaning> meaning = Optional.ofNullable(BESIDE_A_THREAD.get(text));
			if (meaning.isPresent() && beside(parts, i)) {
				parts.set(i, new Part.Word(meaning.get(), text, parts.get(i).start(), parts.get(i).end()));
			}
		}
	}

	private static String text(Part part) {
		return part instanceof Part.Other o && o.text().length() == 2 ? TradeWords.fold(o.text()) : part instanceof Part.Word w && w.meaning() == Meaning.FORM ? w.text() : "";
	}

	/** A thread next to it, or with no more than a size or a sign between. */
	private static boolean beside(List<Part> parts, int i) {
		return thread(parts, i - 1) || thread(parts, i + 1) || thread(parts, i - 2) && !(parts.get(i - 1) instanceof Part.Word)
				|| thread(parts, i + 2) && !(parts.get(i + 1) instanceof Part.Word) && !(parts.get(i + 1) instanceof Part.Amount);
	}

	private static boolean thread(List<Part> parts, int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Thread;
	}
}
