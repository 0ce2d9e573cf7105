package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.arithmetic.Value;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Element.ControlKeyword;
import truelead.grammar.Expression;

/**
 * Branches and loops that are closed by statements of their own: IF, FOR, WHILE, LOOP, REPEAT. One whose condition is not known is passed
 * once.
 */
final class Controls {

	private final Flow flow;
	private final Doubts doubts;

	Controls(Flow flow, Doubts doubts) {
		this.flow = flow;
		this.doubts = doubts;
	}

	/** Goes where the statement of the block just begun leads; false where it neither opens, divides nor closes anything. */
	boolean statement(CallFrame frame, Element element) {
		Optional<ControlKeyword> keyword = Structures.keyword(element);
		if (keyword.isEmpty()) {
			return false;
		}
		Optional<Structures.Structure> structure = frame.source.outline().structures().at(frame.line - 1);
		if (structure.isEmpty()) {
			return false;
		}
		follow(frame, structure.get(), keyword.get(), values(element));
		return true;
	}

	private static List<Expression> values(Element element) {
		if (element instanceof Element.Control control) {
			return control.values();
		}
		return element instanceof Element.Conditional conditional ? List.of(conditional.condition()) : List.of();
	}

	private void follow(CallFrame frame, Structures.Structure structure, ControlKeyword keyword, List<Expression> values) {
		switch (keyword) {
			case IF -> branch(frame, structure, values);
			case ELSEIF, ELSE -> otherBranch(frame, structure);
			case FOR -> count(frame, structure, values);
			case WHILE -> whileLoop(frame, structure, values);
			case LOOP, REPEAT -> {
				// Its end decides.
			}
			default -> close(frame, structure, values);
		}
	}

	private void branch(CallFrame frame, Structures.Structure structure, List<Expression> values) {
		Value value = values.isEmpty() ? Value.ONE : condition(values);
		int line = frame.line - 1;
		while (value.known() && value.number() == 0) {
			Optional<Outline.Mark> next = structure.next(line);
			line = next.map(Outline.Mark::line).orElse(structure.close());
			frame.line = line + 1;
			boolean another = next.isPresent() && next.get().element() instanceof Element.Control control
					&& control.keyword() == ControlKeyword.ELSEIF;
			value = another ? condition(values(next.get().element())) : Value.ONE;
		}
		if (!value.known() || values.isEmpty()) {
			doubts.open(frame, structure, flow.variables().depth());
		}
	}

	private Value condition(List<Expression> values) {
		return flow.endless().condition(values.get(0));
	}

	/** The end of one branch: behind the last; where it is not known which one the machine takes, into the next. */
	private void otherBranch(CallFrame frame, Structures.Structure structure) {
		if (doubts.holds(frame, structure)) {
			doubts.settle();
			doubts.open(frame, structure, flow.variables().depth());
		} else {
			frame.line = structure.close() + 1;
		}
	}

	private void count(CallFrame frame, Structures.Structure structure, List<Expression> values) {
		flow.endless().decided();
		Value first = values.isEmpty() ? Value.unknown("") : flow.evaluator().value(values.get(1)).inArithmetic();
		Value last = values.isEmpty() ? Value.unknown("") : flow.evaluator().value(values.get(2)).inArithmetic();
		if (!values.isEmpty()) {
			flow.assign(values.get(0), first);
		}
		if (!first.known() || !last.known()) {
			doubts.open(frame, structure, flow.variables().depth());
		} else if (first.number() > last.number()) {
			frame.line = structure.close() + 1;
		}
	}

	private void whileLoop(CallFrame frame, Structures.Structure structure, List<Expression> values) {
		Value value = values.isEmpty() ? Value.unknown("") : condition(values);
		if (!value.known()) {
			doubts.open(frame, structure, flow.variables().depth());
		} else if (value.number() == 0) {
			frame.line = structure.close() + 1;
		}
	}

	private void close(CallFrame frame, Structures.Structure structure, List<Expression> values) {
		if (doubts.holds(frame, structure)) {
			doubts.settle();
			return;
		}
		switch (structure.keyword()) {
			case WHILE -> flow.goTo(frame, structure.open());
			case FOR -> countOn(frame, structure);
			case REPEAT -> until(frame, structure, values);
			case LOOP -> {
				if (hasWayOut(frame, structure)) {
					flow.goTo(frame, structure.open() + 1);
				} else {
					flow.end(Optional.empty());
				}
			}
			default -> {
				// The branches meet here.
			}
		}
	}

	private void countOn(CallFrame frame, Structures.Structure structure) {
		Block opening = frame.source.block(structure.open());
		for (Element element : opening.elements()) {
			if (element instanceof Element.Control control && control.keyword() == ControlKeyword.FOR) {
				flow.endless().decided();
				Value counted = flow.evaluator().value(control.values().get(0)).inArithmetic();
				Value next = counted.known() ? Value.of(counted.number() + 1) : counted;
				Value last = flow.evaluator().value(control.values().get(2)).inArithmetic();
				flow.assign(control.values().get(0), next);
				if (!next.known() || !last.known()) {
					howOften(next.known() ? last : next);
				} else if (next.number() <= last.number()) {
					flow.goTo(frame, structure.open() + 1);
				}
			}
		}
	}

	private void until(CallFrame frame, Structures.Structure structure, List<Expression> values) {
		Value value = condition(values);
		if (!value.known()) {
			howOften(value);
		} else if (value.number() == 0) {
			flow.goTo(frame, structure.open() + 1);
		}
	}

	private void howOften(Value unknown) {
		flow.out().notFollowed(flow.block(), unknown.why().behind("how often this loop is passed is not known"), Optional.empty());
	}

	/** Whether anything inside an endless loop can leave it; else a pass is the whole program. */
	private static boolean hasWayOut(CallFrame frame, Structures.Structure structure) {
		for (int line = structure.open() + 1; line < structure.close(); line++) {
			for (Element element : frame.source.block(line).elements()) {
				if (element instanceof Element.Jump || element instanceof Element.Choice || element instanceof Element.Statement
						|| element instanceof Element.Opaque || element instanceof Element.Word word && word.address() == 'M'
						&& word.value() instanceof Expression.Number number && (number.value() == 2 || number.value() == 17
								|| number.value() == 30 || number.value() == 99)) {
					return true;
				}
			}
		}
		return false;
	}
}
