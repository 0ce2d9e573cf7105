package truelead.checker.machine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import truelead.checker.arithmetic.Value;
import truelead.checker.program.BlockRef;
import truelead.grammar.Element;

/** A program or subprogram being executed: where it stands, who called it, and which loops are open in it. */
final class CallFrame {

	/** An open loop: the line it starts at and how many passes are left where it counts them. */
	static final class Loop {
		final int line;
		final String name;
		final Optional<Element.OKeyword> keyword;
		int left;

		Loop(int line, String name, Optional<Element.OKeyword> keyword, int left) {
			this.line = line;
			this.name = name;
			this.keyword = keyword;
			this.left = left;
		}
	}

	final Source source;
	final Optional<BlockRef> caller;
	final int start;
	final int end;
	/** Whether it has local variables of its own. */
	final boolean ownLocals;
	/** Whether an o-word ends it, so that program numbers do not. */
	final boolean oWord;
	final Deque<Loop> loops = new ArrayDeque<>();
	/** What a call has given to a subprogram with a head of its own. */
	List<Value> arguments = List.of();
	int line;
	int repeatsLeft;
	/** The blocks from this line on to here were passed one after the other, and nothing could have led elsewhere. */
	int straight;
	private int behind;

	CallFrame(Source source, Optional<BlockRef> caller, int start, int end, boolean ownLocals, boolean oWord, int repeats) {
		this.source = source;
		this.caller = caller;
		this.start = start;
		this.end = end;
		this.ownLocals = ownLocals;
		this.oWord = oWord;
		this.line = start;
		this.straight = start;
		this.behind = start;
		this.repeatsLeft = repeats - 1;
	}

	/** The line at which it stands; the next one is its next, if nothing leads elsewhere. */
	int pass() {
		passedTo(line + 1);
		return line - 1;
	}

	/** All lines up to this one are passed at once. */
	void passedTo(int next) {
		straight = line == behind ? straight : line;
		behind = next;
		line = next;
	}

	/** All that its further way depends on. */
	List<Object> memory() {
		List<Object> memory = new ArrayList<>(List.of(source, line, start, end, repeatsLeft, arguments));
		loops.forEach(loop -> memory.addAll(List.of(loop.line, loop.name, loop.left)));
		return memory;
	}

	/** Passes left in loops and repeats that count them. */
	int passesLeft() {
		int left = repeatsLeft;
		for (Loop loop : loops) {
			left += loop.left;
		}
		return left;
	}

	/** Opens a loop, closing what a jump out of it or of inner ones has left open. */
	void open(Loop loop) {
		close(loop.line);
		loops.push(loop);
	}

	/** Closes the loop that starts at a line, and all inside it; nothing where it is not open. */
	void close(int line) {
		if (loops.stream().anyMatch(open -> open.line == line)) {
			while (loops.pop().line != line) {
				continue;
			}
		}
	}

	/** The innermost open loop of that name. */
	Optional<Loop> loop(String name) {
		return loops.stream().filter(open -> open.name.equals(name)).findFirst();
	}
}
