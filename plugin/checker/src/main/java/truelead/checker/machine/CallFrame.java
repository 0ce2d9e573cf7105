package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.arithmetic.Value;
import truelead.checker.program.BlockRef;

/** A program or subprogram being executed: where it stands, who called it, and which loops are open in it. */
final class CallFrame {

	final Source source;
	final Optional<BlockRef> caller;
	final int start;
	final int end;
	/** Whether it has local variables of its own. */
	final boolean ownLocals;
	/** Whether an o-word ends it, so that program numbers do not. */
	final boolean oWord;
	final OpenLoops loops = new OpenLoops();
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
		loops.memory(memory);
		return memory;
	}

	/** Passes left in loops and repeats that count them. */
	int passesLeft() {
		return repeatsLeft + loops.left();
	}
}
