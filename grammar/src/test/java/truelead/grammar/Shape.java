package truelead.grammar;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes what was read in one short line, brackets around every operation, so that a test shows what it expects. */
final class Shape {

	private Shape() {
	}

	static String of(String line) {
		return of(BlockReader.read(line));
	}

	static String of(Block block) {
		return block.elements().stream().map(Shape::of).collect(Collectors.joining(" "));
	}

	private static String of(Element element) {
		if (element instanceof Element.Word word) {
			return word.address() + (word.extension() < 0 ? "" : word.extension() + "=") + of(word.value());
		} else if (element instanceof Element.Corner corner) {
			return "," + corner.address() + of(corner.value());
		} else if (element instanceof Element.Comment comment) {
			return comment.mark().name().toLowerCase(Locale.ROOT) + "{" + comment.text() + "}";
		} else if (element instanceof Element.BlockDelete delete) {
			return "/" + delete.level();
		} else if (element instanceof Element.Percent) {
			return "%";
		} else if (element instanceof Element.Assignment assignment) {
			return of(assignment.target()) + ":=" + of(assignment.value());
		} else if (element instanceof Element.Jump jump) {
			return "jump(" + of(jump.condition()) + "->" + of(jump.target()) + ")";
		} else if (element instanceof Element.Conditional conditional) {
			return "if(" + of(conditional.condition()) + ")";
		} else if (element instanceof Element.LoopStart loop) {
			return "while(" + of(loop.condition()) + ")do" + of(loop.number());
		} else if (element instanceof Element.LoopEnd end) {
			return "end" + of(end.number());
		} else if (element instanceof Element.OStatement statement) {
			String called = statement.name().isEmpty() ? of(statement.number()) : statement.name();
			return "o<" + called + ">" + statement.keyword().name().toLowerCase(Locale.ROOT) + of(statement.arguments());
		} else if (element instanceof Element.Label label) {
			return label.name() + ":";
		} else if (element instanceof Element.Statement statement) {
			return statement.name() + of(statement.arguments()) + statement.repeats().map(count -> "*" + of(count)).orElse("");
		} else if (element instanceof Element.Control control) {
			return control.keyword().name().toLowerCase(Locale.ROOT) + of(control.values());
		} else if (element instanceof Element.Repetition again) {
			return "repeat{" + of(again.from()) + ">" + of(again.to()) + "}*" + of(again.count());
		} else if (element instanceof Element.Choice choice) {
			return "case(" + of(choice.value()) + ")" + of(choice.values()) + "->" + of(choice.targets()) + "else" + of(choice.otherwise());
		} else if (element instanceof Element.Definition definition) {
			return "def" + of(definition.variables()) + of(definition.values());
		} else if (element instanceof Element.Procedure procedure) {
			return "proc{" + procedure.name() + "}" + of(procedure.parameters()) + of(procedure.values());
		} else if (element instanceof Element.ModalCall call) {
			return "modal{" + call.name() + "}" + of(call.arguments());
		} else if (element instanceof Element.Opaque opaque) {
			return "opaque{" + opaque.name() + "}";
		}
		return "unread";
	}

	private static String of(Optional<Expression> value) {
		return value.map(Shape::of).orElse("");
	}

	private static String of(List<Expression> values) {
		return values.stream().map(Shape::of).collect(Collectors.joining(",", "(", ")"));
	}

	static String of(Expression value) {
		if (value instanceof Expression.Number number) {
			String text = String.format(Locale.ROOT, "%." + number.decimals() + "f", number.value());
			return number.point() && number.decimals() == 0 ? text + "." : text;
		} else if (value instanceof Expression.NumberedVariable variable) {
			return "#" + of(variable.index());
		} else if (value instanceof Expression.NamedVariable variable) {
			return "<" + variable.name() + ">";
		} else if (value instanceof Expression.Unary unary) {
			return unary.operator() + of(unary.operand());
		} else if (value instanceof Expression.Binary binary) {
			return "(" + of(binary.left()) + " " + binary.operator() + " " + of(binary.right()) + ")";
		} else if (value instanceof Expression.Function function) {
			return function.name() + of(function.arguments());
		} else if (value instanceof Expression.Group group) {
			return "[" + of(group.inner()) + "]";
		} else if (value instanceof Expression.Text text) {
			return "'" + text.text() + "'";
		}
		return "?";
	}
}
