package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.arithmetic.Value;
import truelead.checker.program.WordRef;
import truelead.grammar.Element;

/** Leads back from subprograms and macros to their callers, and ends the program. */
final class Returns {

	private final Flow flow;
	private final Output out;

	Returns(Flow flow, Output out) {
		this.flow = flow;
		this.out = out;
	}

	/** The end of the program; not inside a branch that the machine may leave out. */
	void end(WordRef word) {
		if (flow.doubts().statement().isPresent()) {
			doubtful("whether the program ends here", Optional.of(word));
		} else {
			flow.end(Optional.of(word));
		}
	}

	private void doubtful(String what, Optional<WordRef> word) {
		out.remark(flow.block(), what + flow.block().line(), what + " depends on " + flow.doubts().statement().orElse("")
				+ ", which is not followed: taken not to", word);
	}

	/** A return statement without a word of its own. */
	void returned() {
		if (flow.doubts().inside(flow.frames().peek()).isPresent()) {
			doubtful("whether the program returns here", Optional.empty());
		} else if (flow.frames().peek().caller.isPresent()) {
			flow.leave();
		} else {
			flow.end(Optional.empty());
		}
	}

	/** M99: back to the caller, with P to a block of it; in a main program to a block, else the machine would begin again. */
	void returned(Words words, WordRef word) {
		CallFrame frame = flow.frames().peek();
		boolean called = frame.caller.isPresent();
		if (flow.doubts().inside(frame).isPresent()) {
			doubtful("whether the program returns here", Optional.of(word));
			return;
		}
		if (!called && words.block().skippable() && !words.has('P')) {
			return;
		}
		if (!called && !words.has('P')) {
			flow.end(Optional.of(word));
			return;
		}
		if (called) {
			flow.leave();
		}
		boolean again = called && flow.frames().peek() == frame;
		if (words.has('P') && !again) {
			CallFrame back = flow.frames().peek();
			back.source.outline().blockNumber((int) words.value('P'), back.line).ifPresentOrElse(line -> backTo(back, line, called, word),
					() -> out.notFollowed(words.block(), "the block that " + word.written() + " returns to is not in the program",
							Optional.of(words.ref('P'))));
		}
	}

	private void backTo(CallFrame frame, int line, boolean called, WordRef word) {
		if (called) {
			flow.goTo(frame, line);
		} else {
			flow.beginAgain(frame, line, word);
		}
	}

	/** endsub or return: back to the caller; a value behind it is the call's. */
	void leaveSub(Element.OStatement statement) {
		CallFrame frame = flow.frames().peek();
		while (frame != null && !frame.oWord) {
			if (frame.caller.isEmpty()) {
				return;
			}
			flow.leave();
			frame = flow.frames().peek();
		}
		Optional<Value> result = statement.arguments().isEmpty() ? Optional.empty()
				: Optional.of(flow.evaluator().value(statement.arguments().get(0)));
		flow.leave();
		flow.variables().set("_value", false, result.orElse(Value.ZERO));
		flow.variables().set("_value_returned", false, Value.of(result.isPresent()));
	}
}
