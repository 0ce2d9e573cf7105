package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.arithmetic.Value;
import truelead.grammar.Element;
import truelead.grammar.Element.OKeyword;
import truelead.grammar.Expression;

/** Statements that begin with an O word: sub, call, if, while, do, repeat and their ends, matched by number or name. */
final class OWords {

	private static final Set<OKeyword> BRANCHES = Set.of(OKeyword.ELSEIF, OKeyword.ELSE, OKeyword.ENDIF);
	private static final Set<OKeyword> LOOP_ENDS = Set.of(OKeyword.ENDWHILE, OKeyword.ENDREPEAT, OKeyword.WHILE);
	private static final int MOST_REPEATS = 1_000_000_000;

	private final Flow flow;
	private final Calls calls;

	OWords(Flow flow, Calls calls) {
		this.flow = flow;
		this.calls = calls;
	}

	void statement(CallFrame frame, Element.OStatement statement) {
		int line = frame.line - 1;
		String name = name(statement);
		switch (statement.keyword()) {
			case SUB -> skip(frame, name, Set.of(OKeyword.ENDSUB), 1);
			case ENDSUB, RETURN -> calls.returns().leaveSub(statement);
			case CALL -> calls.oCall(name, statement);
			case IF -> branch(frame, name, statement);
			case ELSEIF, ELSE -> skip(frame, name, Set.of(OKeyword.ENDIF), 1);
			case ENDIF -> {
				// The branches meet here.
			}
			case WHILE -> whileLoop(frame, name, line, statement);
			case DO -> frame.loops.open(new OpenLoops.Loop(line, name, Optional.of(OKeyword.DO), 0));
			case REPEAT -> repeat(frame, name, line, statement);
			case ENDWHILE -> frame.loops.named(name).ifPresent(open -> flow.goTo(frame, open.line));
			case ENDREPEAT -> frame.loops.named(name).ifPresent(open -> again(frame, open));
			case CONTINUE -> skip(frame, name, LOOP_ENDS, 0);
			case BREAK -> {
				frame.loops.named(name).ifPresent(open -> frame.loops.close(open.line));
				skip(frame, name, LOOP_ENDS, 1);
			}
		}
	}

	private String name(Element.OStatement statement) {
		if (!statement.name().isEmpty()) {
			return statement.name();
		}
		return statement.number().map(number -> String.valueOf((int) flow.evaluator().value(number).number())).orElse("");
	}

	/** Goes to the next statement of that name among some keywords, and by so many lines behind it. */
	private Optional<Element.OStatement> skip(CallFrame frame, String name, Set<OKeyword> keywords, int behind) {
		for (Outline.Mark mark : frame.source.outline().marks(frame.line)) {
			if (mark.element() instanceof Element.OStatement statement && keywords.contains(statement.keyword())
					&& name(statement).equals(name)) {
				frame.line = mark.line() + behind;
				return Optional.of(statement);
			}
		}
		flow.out().stopped(flow.block(), "o" + name + " has no end that this statement could go to", Optional.empty());
		flow.stop();
		return Optional.empty();
	}

	private void branch(CallFrame frame, String name, Element.OStatement statement) {
		Element.OStatement at = statement;
		while (!holds(at)) {
			Optional<Element.OStatement> next = skip(frame, name, BRANCHES, 1);
			if (next.isEmpty() || next.get().keyword() != OKeyword.ELSEIF) {
				return;
			}
			at = next.get();
		}
	}

	private boolean holds(Element.OStatement statement) {
		return !statement.arguments().isEmpty() && flow.holds(statement.arguments().get(0));
	}

	private void whileLoop(CallFrame frame, String name, int line, Element.OStatement statement) {
		Optional<OpenLoops.Loop> open = frame.loops.named(name);
		boolean closesDo = open.isPresent() && open.get().keyword.equals(Optional.of(OKeyword.DO)) && open.get().line < line;
		if (closesDo) {
			if (holds(statement)) {
				flow.goTo(frame, open.get().line + 1);
			} else {
				frame.loops.close(open.get().line);
			}
		} else if (holds(statement)) {
			frame.loops.open(new OpenLoops.Loop(line, name, Optional.of(OKeyword.WHILE), 0));
		} else {
			frame.loops.close(line);
			skip(frame, name, Set.of(OKeyword.ENDWHILE), 1);
		}
	}

	private void repeat(CallFrame frame, String name, int line, Element.OStatement statement) {
		flow.endless().decided();
		Value count = statement.arguments().isEmpty() ? Value.unknown("no count is written")
				: flow.evaluator().value(statement.arguments().get(0)).inArithmetic();
		if (!count.known()) {
			flow.out().notFollowed(flow.block(), count.why().behind("how often this loop is passed is not known"), Optional.empty());
		}
		int passes = count.known() ? (int) Math.min(MOST_REPEATS, Math.round(count.number())) : 1;
		if (passes <= 0) {
			skip(frame, name, Set.of(OKeyword.ENDREPEAT), 1);
		} else {
			frame.loops.open(new OpenLoops.Loop(line, name, Optional.of(OKeyword.REPEAT), passes - 1));
		}
	}

	private void again(CallFrame frame, OpenLoops.Loop open) {
		flow.endless().decided();
		if (frame.loops.again(open)) {
			flow.goTo(frame, open.line + 1);
		} else {
			frame.loops.close(open.line);
		}
	}

	/** The values of a call's arguments. */
	List<Value> values(List<Expression> arguments) {
		List<Value> values = new ArrayList<>();
		arguments.forEach(argument -> values.add(flow.evaluator().value(argument)));
		return values;
	}
}
