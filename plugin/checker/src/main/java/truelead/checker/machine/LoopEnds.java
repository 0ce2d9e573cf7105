package truelead.checker.machine;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Which END closes which loop by number, one inside the other, as far as the text alone tells it. */
final class LoopEnds {

	private final Map<Integer, Integer> ends = new HashMap<>();
	private boolean plain = true;

	/** @param marks the statements of a file in their order */
	LoopEnds(Collection<Outline.Mark> marks) {
		Map<Integer, Deque<Integer>> open = new HashMap<>();
		for (Outline.Mark mark : marks) {
			if (mark.element() instanceof Element.LoopStart start) {
				open(start.number(), open).push(mark.line());
			} else if (mark.element() instanceof Element.LoopEnd end) {
				Integer start = open(end.number(), open).poll();
				if (start != null) {
					ends.put(start, mark.line());
				}
			}
		}
	}

	private Deque<Integer> open(Expression number, Map<Integer, Deque<Integer>> open) {
		plain &= number instanceof Expression.Number || number instanceof Expression.Missing;
		int name = number instanceof Expression.Number literal ? (int) literal.value() : 0;
		return open.computeIfAbsent(name, fresh -> new ArrayDeque<>());
	}

	/** Whether each loop is numbered by a number, so that no variable has to be asked for it. */
	boolean plain() {
		return plain;
	}

	/** Line of the END of the loop that begins at a line; empty where it has none. */
	OptionalInt of(int line) {
		Integer end = ends.get(line);
		return end == null ? OptionalInt.empty() : OptionalInt.of(end);
	}
}
