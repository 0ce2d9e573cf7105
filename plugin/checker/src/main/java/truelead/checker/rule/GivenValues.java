package truelead.checker.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.machine.MacroArguments;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/**
 * Looks through the text for what has given variables their values: assignments above a block of the program, or anywhere in the subprogram
 * that it stands in, definitions, arguments of the calls that led to it. It gives up where several may have done so.
 */
final class GivenValues {

	private static final int DEEPEST = 8;

	/** A value given to a variable in a line; {@code sure} where no branch is in that line. */
	private record Given(int line, Span span, Expression value, boolean sure) {
	}

	private final Set<Location> places = new LinkedHashSet<>();
	private final Set<String> followed = new LinkedHashSet<>();

	/** Where values are said that are worked out no further, in the order found. */
	Set<Location> places() {
		return places;
	}

	/** Follows all variables of an expression that a block says; false where one cannot be followed with certainty. */
	boolean follow(Expression expression, BlockRef block, int depth) {
		Optional<List<Expression>> variables = Spoken.variables(expression);
		return depth < DEEPEST && variables.isPresent()
				&& variables.get().stream().allMatch(variable -> variable(variable, block, depth));
	}

	private boolean variable(Expression variable, BlockRef block, int depth) {
		Optional<PartOfProgram> part = PartOfProgram.of(block);
		if (part.isEmpty()) {
			return false;
		}
		if (!followed.add(Spoken.name(variable) + " " + block.line() + " " + part.get().first())) {
			return true;
		}
		List<Given> given = given(variable, block, part.get());
		Optional<Boolean> argument = argument(variable, block, part.get(), depth);
		if (argument.isPresent()) {
			return argument.get() && given.stream().filter(Given::sure).allMatch(one -> follow(one, variable, block, depth));
		}
		if (given.isEmpty()) {
			return block.caller().isPresent() && !(own(variable) && part.get().ownVariables(block.caller().get()))
					&& variable(variable, block.caller().get(), depth + 1);
		}
		return decide(given, variable, block, part.get(), depth);
	}

	/**
	 * The nearest value above counts, and those below it; those above that one do where the way may not have led over it. Of plain numbers
	 * one is certain. Where a variable that counts starts says nothing.
	 */
	private boolean decide(List<Given> given, Expression variable, BlockRef block, PartOfProgram part, int depth) {
		boolean counts = given.stream().anyMatch(one -> itself(one, variable));
		int numbers = 0;
		Set<String> alike = new LinkedHashSet<>();
		for (int i = given.size() - 1; i >= 0; i--) {
			Given one = given.get(i);
			boolean itself = itself(one, variable);
			boolean another = alike.add(text(block.file().text().block(one.line).text(), one.span));
			numbers += itself || zero(one.value) || !another ? 0 : 1;
			if (numbers > 1 || !(counts && one.value instanceof Expression.Number) && !follow(one, variable, block, depth)) {
				return false;
			}
			if (!itself && one.sure && one.line < block.line() && part.leadsOn(one.line, block.line())) {
				return true;
			}
		}
		return true;
	}

	private static boolean itself(Given given, Expression variable) {
		return Spoken.variables(given.value).stream().flatMap(List::stream).anyMatch(other -> Spoken.same(other, variable));
	}

	private static boolean zero(Expression value) {
		return value instanceof Expression.Number number && number.value() == 0;
	}

	private boolean follow(Given given, Expression variable, BlockRef block, int depth) {
		Optional<List<Expression>> others = Spoken.variables(given.value);
		if (others.isEmpty()) {
			return false;
		}
		boolean itself = itself(given, variable);
		boolean plain = others.get().isEmpty() && !zero(given.value);
		if (plain || !others.get().isEmpty() && !itself && Spoken.ownNumber(given.value)) {
			places.add(new Location(block.file(), given.line, given.span));
		}
		BlockRef there = new BlockRef(block.file(), given.line, block.caller());
		return others.get().stream().filter(other -> !Spoken.same(other, variable)).allMatch(other -> variable(other, there, depth + 1));
	}

	/** All values given to a variable before a block of the main program, or in all of a subprogram, in the order of the text. */
	private static List<Given> given(Expression variable, BlockRef block, PartOfProgram part) {
		List<Given> given = new ArrayList<>();
		int end = block.caller().isPresent() ? part.end() : part.endOfLoops(block.line());
		for (int line = part.first(); line < end; line++) {
			List<Element> elements = block.file().text().block(line).elements();
			boolean sure = elements.stream().noneMatch(Element.Conditional.class::isInstance);
			for (Element element : elements) {
				if (element instanceof Element.Assignment assignment && Spoken.same(assignment.target(), variable)) {
					given.add(new Given(line, assignment.span(), assignment.value(), sure));
				} else if (element instanceof Element.Definition definition) {
					for (int i = 0; i < definition.variables().size(); i++) {
						Expression value = definition.values().get(i);
						Expression defined = definition.variables().get(i);
						if (Spoken.same(defined, variable) && !(value instanceof Expression.Missing)) {
							given.add(new Given(line, new Span(defined.span().start(), value.span().end()), value, true));
						}
					}
				}
			}
		}
		return given;
	}

	/** Whether each call of a macro has a variable of its own of that name. */
	private static boolean own(Expression variable) {
		return variable instanceof Expression.NumberedVariable numbered && numbered.index() instanceof Expression.Number number
				? number.value() <= 33 : variable instanceof Expression.NamedVariable named && !named.name().startsWith("_")
						&& !(named.name().startsWith("r") && named.name().chars().skip(1).allMatch(Character::isDigit));
	}

	/** Follows the argument that a call has given to a variable; empty where it has given none. */
	private Optional<Boolean> argument(Expression variable, BlockRef block, PartOfProgram part, int depth) {
		if (block.caller().isEmpty() || !own(variable)) {
			return Optional.empty();
		}
		Optional<BlockRef> call = part.call(block.caller().get());
		if (call.isEmpty()) {
			return Optional.empty();
		}
		Block words = call.get().file().text().block(call.get().line());
		int index = variable instanceof Expression.NumberedVariable numbered
				? (int) ((Expression.Number) numbered.index()).value() : part.parameter(variable);
		for (Element element : words.elements()) {
			List<Expression> arguments = Spoken.arguments(element);
			if (!arguments.isEmpty() && index >= 1 && index <= arguments.size()) {
				return Optional.of(argument(arguments.get(index - 1), arguments.get(index - 1).span(), call.get(), depth));
			}
		}
		boolean numbered = variable instanceof Expression.NumberedVariable && part.isMacroCall(call.get());
		for (Element.Word word : words.words()) {
			if (numbered && MacroArguments.variable(word.address()) == index) {
				return Optional.of(argument(word.value(), word.span(), call.get(), depth));
			}
		}
		return Optional.empty();
	}

	private boolean argument(Expression value, Span span, BlockRef call, int depth) {
		boolean plain = Spoken.variables(value).filter(List::isEmpty).isPresent();
		if (plain || Spoken.ownNumber(value)) {
			places.add(new Location(call.file(), call.line(), span));
		}
		return plain || follow(value, call, depth + 1);
	}

	private static String text(String line, Span span) {
		return line.substring(span.start(), span.end());
	}
}
