package truelead.checker.callout;

import java.util.List;
import java.util.Set;

/** Parts a comment that names several threads among them: {@code 4X M6 THRU, 2X M8 X 12 DEEP}. */
final class OwnParts {
	private static final Set<String> BETWEEN = Set.of(",", ";", "&", "+", "/", "|", "-", ".", "AND", "UND", "ET", "Y", "E");

	private OwnParts() {
	}

	/**
	 * What is said of a thread: all between the last sign of a list before it and the last one before the next thread; without signs all up
	 * to the next thread.
	 */
	static List<Part> of(List<Part> parts, int thread) {
		int next = thread + 1;
		while (next < parts.size() && !(parts.get(next) instanceof Part.Thread)) {
			next++;
		}
		return parts.subList(thread == first(parts) ? 0 : begin(parts, thread), next == parts.size() ? next : begin(parts, next));
	}

	/** The first thread of a comment; the last part's place where there is none. */
	static int first(List<Part> parts) {
		int first = 0;
		while (first + 1 < parts.size() && !(parts.get(first) instanceof Part.Thread)) {
			first++;
		}
		return first;
	}

	private static int begin(List<Part> parts, int thread) {
		for (int i = thread - 1; i > 0 && !(parts.get(i) instanceof Part.Thread); i--) {
			if (parts.get(i) instanceof Part.Other o && BETWEEN.contains(TradeWords.fold(o.text()))) {
				return i + 1;
			}
		}
		return thread;
	}
}
