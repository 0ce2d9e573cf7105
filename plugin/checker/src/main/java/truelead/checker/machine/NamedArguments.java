package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.Expression;

/** The arguments of a call by name, by their place in it. */
final class NamedArguments {

	private final Flow flow;
	private final String name;
	private final List<Expression> arguments;
	private final String text;

	NamedArguments(Flow flow, String name, List<Expression> arguments, String text) {
		this.flow = flow;
		this.name = name;
		this.arguments = arguments;
		this.text = text;
	}

	/** Name of what is called, in capitals. */
	String name() {
		return name;
	}

	/** Whether an argument is written. */
	boolean said(int index) {
		return index < arguments.size() && !(arguments.get(index) instanceof Expression.Missing);
	}

	/** An argument; NaN where it is left out or not known. */
	double number(int index) {
		return said(index) ? flow.evaluator().value(arguments.get(index)).number() : Double.NaN;
	}

	/** An argument; another number where it is left out, NaN where it is not known. */
	double number(int index, double otherwise) {
		return said(index) ? number(index) : otherwise;
	}

	/** An argument that is written, as a setting of another value, called by the name that it has in the order of arguments. */
	Setting setting(int index, String called, double value) {
		Expression argument = arguments.get(index);
		String written = called + " " + text.substring(argument.span().start(), argument.span().end());
		return new Setting(value, Optional.of(new WordRef(flow.block(), called.charAt(0), argument.span(), -1, false, written)),
				Reason.NONE);
	}
}
