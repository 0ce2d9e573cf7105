package truelead.grammar;

import java.util.List;

/** A value as it is written: a plain number, a variable, or a tree of bracketed operations. */
public sealed interface Expression {

	/** Where it stands in the block. */
	Span span();

	/**
	 * A number as written.
	 *
	 * @param value    its value in the program's own unit, with the decimal point as written; a control may still read a number without a
	 *                 point in least increments
	 * @param decimals digits written after the point, 0 for none
	 * @param point    whether a decimal point is written
	 */
	record Number(double value, int decimals, boolean point, Span span) implements Expression {
	}

	/** A numbered variable: {@code #1}, {@code #[#2+1]}, {@code ##3}. */
	record NumberedVariable(Expression index, Span span) implements Expression {
	}

	/**
	 * A named variable: {@code #<depth>}, {@code #<_global>}, {@code R1}, {@code _X_HOME}; the name without the brackets, in lower case.
	 *
	 * @param bare whether it stands without {@code #<} and {@code >}
	 */
	record NamedVariable(String name, boolean bare, Span span) implements Expression {
	}

	/** A sign or a logical negation before a value; {@code operator} is {@code "-"} or {@code "+"}. */
	record Unary(String operator, Expression operand, Span span) implements Expression {
	}

	/**
	 * Two values and an operator, in capitals: + - * / ** MOD AND OR XOR EQ NE GT GE LT LE; signs such as {@code ==} are read to their
	 * words.
	 */
	record Binary(String operator, Expression left, Expression right, Span span) implements Expression {
	}

	/** A function in capitals with its arguments; {@code ATAN[a]/[b]} has two. */
	record Function(String name, List<Expression> arguments, Span span) implements Expression {
	}

	/** An expression in brackets of its own. */
	record Group(Expression inner, Span span) implements Expression {
	}

	/** A text in quotation marks, without the marks: {@code T="DRILL 8.5"}. */
	record Text(String text, Span span) implements Expression {
	}

	/** A place where a value should stand and none does, or none that can be read. */
	record Missing(Span span) implements Expression {
	}
}
