package truelead.checker.machine;

import java.util.Optional;
import java.util.OptionalInt;
import truelead.checker.arithmetic.Value;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** WHILE, DO and END by number. */
final class MacroLoops {

	private MacroLoops() {
	}

	/** A pass through the loop while its condition holds; else on behind its end. A condition that is not known makes one pass. */
	static void start(Flow flow, CallFrame frame, Element.LoopStart loop) {
		int line = frame.line - 1;
		String name = name(flow, loop.number());
		boolean again = frame.loops.named(name).filter(open -> open.line == line).isPresent();
		Value value = loop.condition().map(flow.endless()::condition).orElse(Value.ONE);
		if (!value.known()) {
			flow.out().notFollowed(flow.block(), value.why().behind("how often this loop is passed is not known"), Optional.empty());
		}
		boolean pass = value.known() ? value.number() != 0 : !again;
		if (pass) {
			frame.loops.open(new OpenLoops.Loop(line, name, Optional.empty(), 0));
		} else {
			frame.loops.close(line);
			frame.line = endLine(flow, frame, name) + 1;
		}
	}

	/** Back to the start of the loop; nothing where none is open. */
	static void end(Flow flow, CallFrame frame, Element.LoopEnd end) {
		frame.loops.named(name(flow, end.number())).ifPresent(open -> flow.goTo(frame, open.line));
	}

	private static int endLine(Flow flow, CallFrame frame, String name) {
		LoopEnds ends = frame.source.outline().loopEnds();
		OptionalInt end = ends.plain() ? ends.of(frame.line - 1) : search(flow, frame, name);
		if (end.isEmpty()) {
			flow.out().notFollowed(flow.block(), "the loop has no END " + name, Optional.empty());
		}
		return end.orElse(frame.line - 1);
	}

	/** The END of a loop where variables say which is which. */
	private static OptionalInt search(Flow flow, CallFrame frame, String name) {
		int depth = 1;
		for (Outline.Mark mark : frame.source.outline().marks(frame.line)) {
			if (mark.element() instanceof Element.LoopStart inner && name(flow, inner.number()).equals(name)) {
				depth++;
			} else if (mark.element() instanceof Element.LoopEnd end && name(flow, end.number()).equals(name) && --depth == 0) {
				return OptionalInt.of(mark.line());
			}
		}
		return OptionalInt.empty();
	}

	private static String name(Flow flow, Expression number) {
		return String.valueOf((int) flow.evaluator().value(number).number());
	}
}
