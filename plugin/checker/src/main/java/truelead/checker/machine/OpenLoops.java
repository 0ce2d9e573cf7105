package truelead.checker.machine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Element;

/** The loops that are open in a program, one inside the other; thousands that are never closed are as quick as one. */
final class OpenLoops {

	/** An open loop: the line it starts at and how many passes are left where it counts them. */
	static final class Loop {
		final int line;
		final String name;
		final Optional<Element.OKeyword> keyword;
		private int left;

		Loop(int line, String name, Optional<Element.OKeyword> keyword, int left) {
			this.line = line;
			this.name = name;
			this.keyword = keyword;
			this.left = left;
		}
	}

	private final Deque<Loop> loops = new ArrayDeque<>();
	private final Set<Integer> lines = new HashSet<>();
	private final Map<String, Deque<Loop>> named = new HashMap<>();
	private int left;

	/** Opens a loop, closing what a jump out of it or of inner ones has left open. */
	void open(Loop loop) {
		close(loop.line);
		loops.push(loop);
		lines.add(loop.line);
		named.computeIfAbsent(loop.name, fresh -> new ArrayDeque<>(1)).push(loop);
		left += loop.left;
	}

	/** Closes the loop that starts at a line, and all inside it; nothing where it is not open. */
	void close(int line) {
		while (lines.contains(line)) {
			Loop inner = loops.pop();
			lines.remove(inner.line);
			named.get(inner.name).pop();
			left -= inner.left;
		}
	}

	/** Closes all. */
	void clear() {
		loops.clear();
		lines.clear();
		named.clear();
		left = 0;
	}

	/** The innermost open loop of that name. */
	Optional<Loop> named(String name) {
		return Optional.ofNullable(named.get(name)).map(Deque::peek);
	}

	/** Counts one pass of an open loop; false where none is left. */
	boolean again(Loop loop) {
		if (loop.left <= 0) {
			return false;
		}
		loop.left--;
		left--;
		return true;
	}

	/** Passes left in those that count them. */
	int left() {
		return left;
	}

	/** All that the further way depends on, added to a list. */
	void memory(List<Object> memory) {
		loops.forEach(loop -> memory.addAll(List.of(loop.line, loop.name, loop.left)));
	}
}
