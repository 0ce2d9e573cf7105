package truelead.checker.arithmetic;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.grammar.Expression;

/** Works out expressions. What depends on something not known is not known; brackets deeper than {@value #DEPTH} are not followed. */
public final class Evaluator {

	private static final int DEPTH = 200;

	private final Variables variables;
	private final boolean bits;
	private int depth;

	/**
	 * @param bits whether AND, OR and XOR join whole numbers bit by bit and FIX cuts a fraction off; else as RS-274 has it, by truth and
	 *             downwards
	 */
	public Evaluator(Variables variables, boolean bits) {
		this.variables = variables;
		this.bits = bits;
	}

	/** What the expression comes to now. */
	public Value value(Expression expression) {
		if (expression instanceof Expression.Number number) {
			return Value.written(number.value(), number.decimals());
		}
		if (depth >= DEPTH) {
			return Value.unknown("its brackets are more than " + DEPTH + " deep");
		}
		depth++;
		try {
			return branch(expression);
		} finally {
			depth--;
		}
	}

	/** What the value of a word comes to. */
	public Value ofWord(Expression expression) {
		boolean variable = expression instanceof Expression.NumberedVariable;
		Value index = variable ? value(((Expression.NumberedVariable) expression).index()) : Value.ZERO;
		return variable && index.known() ? variables.alone((int) Math.round(index.number())) : value(expression);
	}

	private Value branch(Expression expression) {
		if (expression instanceof Expression.Group group) {
			return value(group.inner());
		} else if (expression instanceof Expression.NumberedVariable variable) {
			Value index = value(variable.index());
			return index.known() ? variables.get((int) Math.round(index.number()))
					: Value.unknown(index.why().behind("the number of a variable is not known"));
		} else if (expression instanceof Expression.NamedVariable variable) {
			return variables.get(variable.name(), variable.bare());
		} else if (expression instanceof Expression.Unary unary) {
			Value operand = value(unary.operand()).inArithmetic();
			return operand.known() && unary.operator().equals("-") ? Value.written(-operand.number(), operand.decimals()) : operand;
		} else if (expression instanceof Expression.Binary binary) {
			return binary(binary.operator(), value(binary.left()), value(binary.right()));
		} else if (expression instanceof Expression.Function function) {
			return function(function);
		} else if (expression instanceof Expression.Text) {
			return Value.unknown("it is a name, not a number");
		}
		return Value.unknown("no value is written");
	}

	private Value binary(String operator, Value left, Value right) {
		if (left.vacant() || right.vacant()) {
			boolean both = left.vacant() && right.vacant();
			if (operator.equals("EQ") && (both || left.known() || right.known())) {
				return Value.of(both);
			} else if (operator.equals("NE") && (both || left.known() || right.known())) {
				return Value.of(!both);
			}
		}
		Value a = left.inArithmetic();
		Value b = right.inArithmetic();
		if (!a.known() || !b.known()) {
			return decided(operator, a, b) ? Value.of(operator.equals("OR")) : a.known() ? b : a;
		}
		return known(operator, a.number(), b.number());
	}

	/** Whether one side alone decides: false AND anything, true OR anything. */
	private static boolean decided(String operator, Value a, Value b) {
		return operator.equals("AND") && (a.number() == 0 || b.number() == 0)
				|| operator.equals("OR") && (a.known() && a.number() != 0 || b.known() && b.number() != 0);
	}

	private Value known(String operator, double a, double b) {
		return switch (operator) {
			case "+" -> Value.of(a + b);
			case "-" -> Value.of(a - b);
			case "*" -> Value.of(a * b);
			case "/" -> b == 0 ? Value.unknown("something is divided by zero") : Value.of(a / b);
			case "**" -> Value.of(Math.pow(a, b));
			case "MOD" -> b == 0 ? Value.unknown("something is divided by zero") : Value.of(a - b * Math.floor(a / b));
			case "DIV" -> b == 0 ? Value.unknown("something is divided by zero") : Value.of((double) (long) (a / b));
			case "EQ" -> Value.of(same(a, b));
			case "NE" -> Value.of(!same(a, b));
			case "GT" -> Value.of(a > b && !same(a, b));
			case "GE" -> Value.of(a >= b || same(a, b));
			case "LT" -> Value.of(a < b && !same(a, b));
			case "LE" -> Value.of(a <= b || same(a, b));
			case "AND" -> whole(a) && whole(b) ? Value.of((long) a & (long) b) : Value.of(a != 0 && b != 0);
			case "OR" -> whole(a) && whole(b) ? Value.of((long) a | (long) b) : Value.of(a != 0 || b != 0);
			case "XOR" -> whole(a) && whole(b) ? Value.of((long) a ^ (long) b) : Value.of((a != 0) != (b != 0));
			case "<<" -> Value.unknown("it is a text");
			default -> Value.unknown("the operator " + operator + " is not known");
		};
	}

	/**
	 * Whether two plain numbers are equal as controls compare, to within their last digits (a billionth part of the larger, of 1 at least):
	 * a loop that counts 0.1 up to 1 ends. NaN equals nothing.
	 */
	public static boolean same(double a, double b) {
		return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
	}

	private boolean whole(double number) {
		return bits && number == Math.rint(number) && Math.abs(number) < 1e15;
	}

	private Value function(Expression.Function function) {
		List<Expression> arguments = function.arguments();
		if (function.name().equals("EXISTS") && arguments.size() == 1) {
			return exists(arguments.get(0));
		}
		if (arguments.isEmpty()) {
			return Value.unknown(function.name() + " has no argument");
		}
		Optional<String> array = Functions.NAMES.contains(function.name()) ? Optional.empty() : arrayName(function);
		if (array.isPresent() && (function.name().length() == 1 || variables.set(array.get(), true))) {
			return variables.get(array.get(), true);
		}
		Value first = value(arguments.get(0)).inArithmetic();
		Value second = arguments.size() > 1 ? value(arguments.get(1)).inArithmetic() : Value.ONE;
		if (!first.known() || !second.known()) {
			return first.known() ? second : first;
		}
		if (!bits && (function.name().equals("FIX") || function.name().equals("FUP"))) {
			return Functions.whole(function.name(), first.number());
		}
		return Functions.value(function.name(), first.number(), second.number(), arguments.size());
	}

	/** The name of a variable that is one of many: R[3] is R3, A[1,2] is a name of its own; empty where the place is not known. */
	public Optional<String> arrayName(Expression.Function array) {
		StringBuilder name = new StringBuilder(array.name().toLowerCase(Locale.ROOT));
		boolean parameter = array.arguments().size() == 1 && name.length() == 1;
		for (Expression argument : array.arguments()) {
			Value index = value(argument).inArithmetic();
			if (!index.known()) {
				return Optional.empty();
			}
			name.append(parameter ? "" : "[").append(Math.round(index.number()));
		}
		return Optional.of(name.toString());
	}

	private Value exists(Expression variable) {
		if (variable instanceof Expression.Group group) {
			return exists(group.inner());
		} else if (variable instanceof Expression.NamedVariable named) {
			return Value.of(variables.set(named.name(), named.bare()));
		}
		return Value.of(value(variable).known());
	}
}
