package truelead.checker.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.arithmetic.Functions;
import truelead.checker.program.Location;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** The variables in what is written at a place. */
final class Spoken {

	private Spoken() {
	}

	/** What is written at a place that is exactly one word, or one argument of a call by name; empty elsewhere. */
	static Optional<Expression> at(Location place) {
		Block block = place.file().text().block(place.line());
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word && word.span().equals(place.span())) {
				return Optional.of(word.value());
			}
			for (Expression argument : arguments(element)) {
				if (argument.span().equals(place.span())) {
					return Optional.of(argument);
				}
			}
		}
		return Optional.empty();
	}

	/** What a call by name, or one of a subprogram with an O word, gives in its order. */
	static List<Expression> arguments(Element element) {
		return element instanceof Element.Statement statement ? statement.arguments()
				: element instanceof Element.ModalCall call ? call.arguments()
				: element instanceof Element.OStatement o && o.keyword() == Element.OKeyword.CALL ? o.arguments() : List.of();
	}

	/** All variables of an expression; empty where one of them has a number or a place that is worked out. */
	static Optional<List<Expression>> variables(Expression expression) {
		List<Expression> variables = new ArrayList<>();
		return gather(expression, variables) ? Optional.of(variables) : Optional.empty();
	}

	private static boolean gather(Expression expression, List<Expression> variables) {
		if (expression instanceof Expression.NumberedVariable numbered) {
			return numbered.index() instanceof Expression.Number && variables.add(numbered);
		} else if (expression instanceof Expression.NamedVariable named) {
			return variables.add(named);
		} else if (expression instanceof Expression.Unary unary) {
			return gather(unary.operand(), variables);
		} else if (expression instanceof Expression.Group group) {
			return gather(group.inner(), variables);
		} else if (expression instanceof Expression.Binary binary) {
			return gather(binary.left(), variables) && gather(binary.right(), variables);
		} else if (expression instanceof Expression.Function function) {
			return Functions.known(function.name()) && function.arguments().stream().allMatch(one -> gather(one, variables));
		}
		return true;
	}

	/** Whether an expression has a number in it that is more than a sign, a half, a quarter or a whole turn. */
	static boolean ownNumber(Expression expression) {
		if (expression instanceof Expression.Number number) {
			double value = Math.abs(number.value());
			return value != 0 && value != 1 && value != 2 && value != 4 && value != 180 && value != 360;
		} else if (expression instanceof Expression.Unary unary) {
			return ownNumber(unary.operand());
		} else if (expression instanceof Expression.Group group) {
			return ownNumber(group.inner());
		} else if (expression instanceof Expression.Binary binary) {
			return ownNumber(binary.left()) || ownNumber(binary.right());
		}
		return expression instanceof Expression.Function function && function.arguments().stream().anyMatch(Spoken::ownNumber);
	}

	/** The name of a variable, or its number. */
	static String name(Expression variable) {
		return variable instanceof Expression.NamedVariable named ? named.name()
				: variable instanceof Expression.NumberedVariable numbered && numbered.index() instanceof Expression.Number number
						? "#" + number.value() : "";
	}

	/** Whether two expressions are one variable. */
	static boolean same(Expression one, Expression other) {
		return !name(one).isEmpty() && name(one).equals(name(other));
	}
}
