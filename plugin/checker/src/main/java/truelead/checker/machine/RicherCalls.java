package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import truelead.checker.arithmetic.Value;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * Calls of subprograms by name with arguments in their order, calls behind every motion, parts of a program that are repeated, and heads.
 */
final class RicherCalls {

	private final Flow flow;
	private final Calls calls;
	private final VariableRows rows;
	private Optional<Element.ModalCall> modal = Optional.empty();
	private Optional<CallFrame> modalFrame = Optional.empty();

	RicherCalls(Flow flow, Calls calls) {
		this.flow = flow;
		this.calls = calls;
		this.rows = new VariableRows(flow);
	}

	/** Calls the subprogram of that name in this file or beside it; false where there is none. */
	boolean call(String name, List<Expression> arguments, Optional<Expression> repeats) {
		Optional<Calls.Found> found = find(name, repeats(repeats));
		if (found.isEmpty()) {
			return false;
		}
		List<Value> values = new ArrayList<>();
		arguments.forEach(argument -> values.add(argument instanceof Expression.Missing ? Value.VACANT : flow.evaluator().value(argument)));
		boolean head = found.get().source().outline().hasProcedure(found.get().start(), found.get().end());
		if (calls.enter(found.get(), head, false, Optional.empty())) {
			flow.frames().peek().arguments = values;
			if (head) {
				flow.variables().enter(null);
			}
		}
		return true;
	}

	/**
	 * The contour that a turning cycle names, followed once as it stands: a subprogram, {@code "SHAFT"}, or what stands between two labels
	 * of this program, {@code "BEGIN:END"}; false where there is neither.
	 */
	boolean contour(List<Expression> arguments) {
		String named = arguments.isEmpty() || !(arguments.get(0) instanceof Expression.Text text) ? ""
				: text.text().replace("\"", "").strip().toUpperCase(Locale.ROOT);
		int colon = named.indexOf(':');
		Outline outline = flow.frames().peek().source.outline();
		int here = flow.block().line();
		String first = colon < 0 ? named : named.substring(0, colon);
		String last = colon < 0 ? named + "_END" : named.substring(colon + 1);
		Optional<Calls.Found> found = named.isEmpty() || colon >= 0 ? Optional.empty() : find(named, 1);
		OptionalInt from = outline.label(first, here, true);
		OptionalInt to = from.isEmpty() ? from : outline.label(last, from.getAsInt(), true);
		if (found.isEmpty() && from.isPresent() && to.isPresent() && to.getAsInt() > from.getAsInt()) {
			found = Optional.of(new Calls.Found(flow.frames().peek().source, from.getAsInt(), to.getAsInt() + 1, 1));
		}
		return found.isPresent() && calls.enter(found.get(), false, false, Optional.empty());
	}

	/** {@code L100 P2}: a call, where the folder has a program of that name. */
	void numbered(Words words) {
		String name = words.ref('L').written().replace(" ", "").toUpperCase(Locale.ROOT);
		Optional<Calls.Found> found = find(name, words.has('P') ? (int) words.value('P') : 1);
		found.ifPresent(program -> calls.enter(program, false, false, Optional.of(words.ref('L'))));
	}

	private Optional<Calls.Found> find(String name, int repeats) {
		for (Source source : List.of(flow.frames().peek().source, calls.main())) {
			OptionalInt line = source.outline().procedure(name);
			if (line.isPresent()) {
				return Optional.of(new Calls.Found(source, line.getAsInt(), source.lines(), repeats));
			}
			OptionalInt behind = source.outline().archived(name);
			if (behind.isPresent()) {
				return Optional.of(new Calls.Found(source, behind.getAsInt(), source.outline().programEnd(behind.getAsInt()), repeats));
			}
		}
		return calls.neighbour(name).or(() -> calls.neighbour(name.toLowerCase(Locale.ROOT)))
				.map(source -> new Calls.Found(source, source.outline().procedure(name).orElse(0), source.lines(), repeats));
	}

	private int repeats(Optional<Expression> repeats) {
		Value count = repeats.map(flow.evaluator()::value).orElse(Value.ONE).inArithmetic();
		if (!count.known()) {
			flow.out().notFollowed(flow.block(), count.why().behind("how often the call is repeated is not known"), Optional.empty());
		}
		return count.known() ? (int) Math.min(Math.round(count.number()), Integer.MAX_VALUE) : 1;
	}

	/** The head of a subprogram: its parameters get what the call has given, or what they are if left out. */
	void head(CallFrame frame, Element.Procedure procedure) {
		for (int i = 0; i < procedure.parameters().size(); i++) {
			boolean given = i < frame.arguments.size() && !frame.arguments.get(i).vacant();
			Expression otherwise = procedure.values().get(i);
			Value value = given ? frame.arguments.get(i) : otherwise instanceof Expression.Missing
					? Value.unknown("no call gives it a value") : flow.evaluator().value(otherwise);
			define(procedure.parameters().get(i), value);
		}
	}

	/** Variables of this program alone. */
	void define(Element.Definition definition) {
		for (int i = 0; i < definition.variables().size(); i++) {
			Expression value = definition.values().get(i);
			if (rows.define(definition.variables().get(i), value)) {
				continue;
			}
			define(definition.variables().get(i), value instanceof Expression.Missing
					? Value.unknown("it is defined, and nothing has set it") : flow.evaluator().value(value));
		}
	}

	private void define(Expression variable, Value value) {
		if (variable instanceof Expression.NamedVariable named) {
			flow.variables().define(named.name(), value);
		}
	}

	/** From now on every motion calls the subprogram; false where there is none of that name. */
	boolean modal(Element.ModalCall call) {
		boolean found = !call.name().isEmpty() && find(call.name(), 1).isPresent();
		modal = found ? Optional.of(call) : Optional.empty();
		return found || call.name().isEmpty();
	}

	/** What later blocks depend on. */
	List<Object> memory() {
		return List.of(modal, modalFrame.filter(flow.frames()::contains).isPresent());
	}

	/** Whether every motion calls a subprogram. */
	boolean modal() {
		return modal.isPresent();
	}

	/** A block has moved. */
	void moved() {
		if (modal.isPresent() && modalFrame.filter(flow.frames()::contains).isEmpty()) {
			call(modal.get().name(), modal.get().arguments(), Optional.empty());
			modalFrame = Optional.of(flow.frames().peek());
		}
	}

	/** The line of a label or block number that stands above, as a repetition names it. */
	private static OptionalInt block(Outline outline, Expression name, int here) {
		return name instanceof Expression.Number number ? outline.blockNumber((int) Math.round(number.value()), here)
				: outline.label(((Expression.NamedVariable) name).name().toUpperCase(Locale.ROOT), here, false);
	}

	/** A part of the program again, from a block to another one or to here. */
	void repeat(CallFrame frame, Element.Repetition again) {
		Outline outline = frame.source.outline();
		int here = frame.line - 1;
		OptionalInt from = block(outline, again.from(), here);
		OptionalInt to = again.to().isEmpty() ? OptionalInt.of(here) : block(outline, again.to().get(), here);
		if (from.isEmpty() || to.isEmpty()) {
			flow.out().notFollowed(flow.block(), "the block that the program goes back to is not in this file", Optional.empty());
			return;
		}
		int end = again.to().isEmpty() ? here : to.getAsInt() + 1;
		calls.enter(new Calls.Found(frame.source, from.getAsInt(), end, repeats(again.count())), false, false, Optional.empty());
	}
}
