package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds how deep a thread is by the comment that names it: M6 15 DEEP, M8X1.25X20, DRILL 5.0 DEEP 20 TAP M6 DEEP 15. */
final class CalledDepth {
	/** Words of a print-out of how a tapping unit was programmed: its depth is that of the tap (common practice, no source). */
	private static final Set<String> OF_THE_TAP = Set.of("UNIT", "NOM");

	private final List<Part> parts;
	private final List<Part> own;
	private final boolean printOut;

	/**
	 * The depths of a comment.
	 *
	 * @param own the parts that speak of the thread
	 */
	CalledDepth(List<Part> parts, List<Part> own) {
		this.parts = parts;
		this.own = own;
		this.printOut = parts.stream().anyMatch(part -> part instanceof Part.Other o && OF_THE_TAP.contains(TradeWords.fold(o.text())));
	}

	/**
	 * The depth of the thread at a part: behind it, in words of the thread, or before it; empty where none is said.
	 *
	 * @param through whether its own parts say that it goes through, so that a depth before them is another's
	 */
	Optional<Dimension> of(int i, boolean through) {
		for (int j = i + 1; j < parts.size() && !(parts.get(j) instanceof Part.Thread); j++) {
			if (ofThread(j)) {
				return Optional.of(((Part.Amount) parts.get(j)).dimension());
			}
		}
		Optional<Dimension> said = FullThread.depth(own);
		boolean others = through && own.size() < parts.size();
		for (int j = i - 1; j >= 0 && said.isEmpty() && !others; j--) {
			if (ofThread(j) && (j < OwnParts.first(parts) || parts.get(j).start() >= own.get(0).start())) {
				said = Optional.of(((Part.Amount) parts.get(j)).dimension());
			}
		}
		return said;
	}

	/** THR DEPTH 16, THR-DEP 16: of the thread, not through. */
	static boolean follows(List<Part> parts, int i) {
		int at = i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().equals("-") ? i + 2 : i + 1;
		return at < parts.size() && (is(parts.get(at)) || parts.get(at) instanceof Part.Word w && w.meaning() == Meaning.DEPTH);
	}

	/** Whether a part is a depth. */
	static boolean is(Part part) {
		return part instanceof Part.Amount a && a.role() == Part.Role.DEPTH;
	}

	/** A depth that is no drill's and no pocket's: of tools, threads and shapes the nearest one before it says whose it is. */
	private boolean ofThread(int j) {
		if (!is(parts.get(j))) {
			return false;
		}
		for (int k = j - 1; k >= 0; k--) {
			Part part = parts.get(k);
			if (part instanceof Part.Word w && (w.meaning() == Meaning.THREAD || w.text().equals("THR"))) {
				return true;
			}
			if (part instanceof Part.Thread || part instanceof Part.Word w && w.meaning().threading()) {
				return !printOut;
			}
			if (part instanceof Part.Word w && (w.meaning().drills() || w.meaning() == Meaning.COUNTERBORE
					|| w.meaning() == Meaning.POCKET)) {
				return false;
			}
		}
		return !printOut;
	}
}
