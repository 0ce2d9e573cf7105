package truelead.checker.machine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.grammar.Element;
import truelead.grammar.Element.ControlKeyword;

/** Which statements belong together of those that open, divide and close branches and loops, one inside the other. */
final class Structures {

	/**
	 * A branch or loop.
	 *
	 * @param keyword what opens it
	 * @param open    line of the statement that opens it
	 * @param between ELSEIF and ELSE, in order
	 * @param close   line of the statement that closes it
	 */
	record Structure(ControlKeyword keyword, int open, List<Outline.Mark> between, int close) {

		/** The next ELSEIF or ELSE behind a line. */
		Optional<Outline.Mark> next(int line) {
			return between.stream().filter(mark -> mark.line() > line).findFirst();
		}

		boolean holds(int line) {
			return line >= open && line <= close;
		}
	}

	private static final Map<ControlKeyword, ControlKeyword> OPENERS = Map.of(ControlKeyword.ENDIF, ControlKeyword.IF,
			ControlKeyword.ENDFOR, ControlKeyword.FOR, ControlKeyword.ENDWHILE, ControlKeyword.WHILE, ControlKeyword.ENDLOOP,
			ControlKeyword.LOOP, ControlKeyword.UNTIL, ControlKeyword.REPEAT);

	private record Open(ControlKeyword keyword, int line, List<Outline.Mark> between) {
	}

	private final Map<Integer, Structure> byLine = new HashMap<>();

	/** @param marks the statements of a file in their order */
	Structures(Collection<Outline.Mark> marks) {
		Deque<Open> open = new ArrayDeque<>();
		for (Outline.Mark mark : marks) {
			keyword(mark.element()).ifPresent(keyword -> read(mark, keyword, open));
		}
	}

	private void read(Outline.Mark mark, ControlKeyword keyword, Deque<Open> open) {
		if (OPENERS.containsValue(keyword)) {
			open.push(new Open(keyword, mark.line(), new ArrayList<>()));
		} else if (keyword == ControlKeyword.ELSE || keyword == ControlKeyword.ELSEIF) {
			open.stream().filter(opener -> opener.keyword == ControlKeyword.IF).findFirst().ifPresent(opener -> opener.between.add(mark));
		} else if (open.stream().anyMatch(opener -> opener.keyword == OPENERS.get(keyword))) {
			Open opener = open.pop();
			while (opener.keyword != OPENERS.get(keyword)) {
				opener = open.pop(); // what is never closed opens nothing
			}
			keep(new Structure(opener.keyword, opener.line, List.copyOf(opener.between), mark.line()));
		}
	}

	private void keep(Structure structure) {
		byLine.put(structure.open, structure);
		byLine.put(structure.close, structure);
		structure.between.forEach(mark -> byLine.put(mark.line(), structure));
	}

	/** The branch or loop that a line opens, divides or closes. */
	Optional<Structure> at(int line) {
		return Optional.ofNullable(byLine.get(line));
	}

	/** The keyword of a statement, one whose values could not be read included; empty for another element. */
	static Optional<ControlKeyword> keyword(Element element) {
		if (element instanceof Element.Control control) {
			return Optional.of(control.keyword());
		} else if (element instanceof Element.Conditional) {
			return Optional.of(ControlKeyword.IF);
		} else if (element instanceof Element.Opaque opaque) {
			return OPENERS.values().stream().filter(keyword -> keyword.name().equals(opaque.name())).findFirst();
		}
		return Optional.empty();
	}
}
