package truelead.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;
import truelead.grammar.Element.ControlKeyword;

/**
 * Reads the statements of richer control languages that steer the program: branches, loops, definitions, heads and calls of subprograms.
 */
final class StatementReader {

	private static final Set<String> ALONE = Set.of("ELSE", "ENDIF", "ENDFOR", "ENDWHILE", "LOOP", "ENDLOOP");

	private final ExpressionReader values;

	StatementReader(ExpressionReader values) {
		this.values = values;
	}

	private static Part leading(Element element, ParserRuleContext tree) {
		return new Part.Leading(element, tree.getStart().getText());
	}

	private static Part name(ParserRuleContext tree) {
		return new Part.Keyword(tree.getStart().getText(), ExpressionReader.span(tree));
	}

	/** A branch or loop by a condition; a name where none is written. */
	Part condition(ControlKeyword keyword, Expression condition, ParserRuleContext tree) {
		return condition instanceof Expression.Missing ? name(tree)
				: leading(new Element.Control(keyword, List.of(condition), ExpressionReader.span(tree)), tree);
	}

	/** A keyword alone; one that steers nothing is a name. */
	Part keyword(ParserRuleContext tree) {
		String keyword = tree.getText().toUpperCase(Locale.ROOT);
		return ALONE.contains(keyword)
				? leading(new Element.Control(ControlKeyword.valueOf(keyword), List.of(), ExpressionReader.span(tree)), tree) : name(tree);
	}

	Part countedLoop(GCodeParser.CountedLoopContext tree) {
		Expression start = values.visit(tree.expression(0));
		boolean counts = tree.TO() != null && start instanceof Expression.Binary first && first.operator().equals("EQ");
		if (!counts) {
			return name(tree);
		}
		Expression.Binary first = (Expression.Binary) start;
		Expression last = values.part(tree.expression(1), tree.TO().getSymbol());
		return leading(new Element.Control(ControlKeyword.FOR, List.of(first.left(), first.right(), last), ExpressionReader.span(tree)),
				tree);
	}

	Part repetition(GCodeParser.RepetitionContext tree) {
		Span span = ExpressionReader.span(tree);
		if (tree.blockName().isEmpty()) {
			return leading(new Element.Control(ControlKeyword.REPEAT, List.of(), span), tree);
		}
		boolean other = tree.LETTER() != null && !tree.LETTER().getText().equalsIgnoreCase("P");
		if (other) {
			return name(tree);
		}
		Optional<Expression> count = tree.NUMBER() != null ? Optional.of(Numbers.read(tree.NUMBER().getSymbol()))
				: Optional.ofNullable(tree.expression()).map(written -> values.part(written, tree.EQUALS().getSymbol()));
		Optional<Expression> last = tree.blockName().size() > 1 ? Optional.of(block(tree.blockName(1))) : Optional.empty();
		return leading(new Element.Repetition(block(tree.blockName(0)), last, count, span), tree);
	}

	/** The block that an IF jumps to without a word for it. */
	static Expression block(GCodeParser.BlockOfJumpContext tree) {
		return tree.NUMBER() != null ? Numbers.read(tree.NUMBER().getSymbol())
				: new Expression.NamedVariable(tree.NAME().getText().toLowerCase(Locale.ROOT), true, ExpressionReader.span(tree));
	}

	/** A block by its number or its label, as jumps name it. */
	private static Expression block(GCodeParser.BlockNameContext tree) {
		return tree.NUMBER() != null ? Numbers.read(tree.NUMBER().getSymbol())
				: new Expression.NamedVariable(tree.NAME().getText().toLowerCase(Locale.ROOT), true, ExpressionReader.span(tree));
	}

	Part choices(GCodeParser.ChoicesContext tree) {
		List<Expression> cases = new ArrayList<>();
		List<Expression> targets = new ArrayList<>();
		Optional<Expression> otherwise = Optional.empty();
		for (GCodeParser.ChoiceContext choice : tree.choice()) {
			if (choice.GOTO() == null) {
				return name(tree);
			}
			Expression target = target(choice.expression(1), choice.GOTO());
			Expression value = values.visit(choice.expression(0));
			if (value instanceof Expression.NamedVariable named && named.name().equals("default")) {
				otherwise = Optional.of(target);
			} else {
				cases.add(value);
				targets.add(target);
			}
		}
		return targets.isEmpty() && otherwise.isEmpty() ? name(tree)
				: leading(new Element.Choice(values.visit(tree.expression()), cases, targets, otherwise, ExpressionReader.span(tree)),
						tree);
	}

	/** Where a jump goes: a block number, written {@code N100} too, a label, or an expression. */
	Expression target(GCodeParser.ExpressionContext tree, TerminalNode jump) {
		Expression target = values.part(tree, jump.getSymbol());
		boolean blockNumber = target instanceof Expression.NamedVariable name && name.name().length() > 1 && name.name().charAt(0) == 'n'
				&& name.name().chars().skip(1).allMatch(c -> c >= '0' && c <= '9');
		return blockNumber ? Numbers.read(tree.getStop()) : target;
	}

	Part definition(GCodeParser.DefinitionContext tree) {
		List<Expression> variables = new ArrayList<>();
		List<Expression> given = new ArrayList<>();
		tree.declared().forEach(declared -> declare(declared, variables, given));
		boolean named = tree.declared(0).expression().size() > 1 && variables.stream().noneMatch(Expression.Missing.class::isInstance);
		return named ? leading(new Element.Definition(variables, given, ExpressionReader.span(tree)), tree) : name(tree);
	}

	Part procedure(GCodeParser.ProcedureContext tree) {
		if (tree.NAME().isEmpty()) {
			return name(tree);
		}
		List<Expression> parameters = new ArrayList<>();
		List<Expression> given = new ArrayList<>();
		tree.declared().forEach(declared -> declare(declared, parameters, given));
		if (parameters.size() == 1 && parameters.get(0) instanceof Expression.Missing) {
			parameters.clear();
			given.clear();
		}
		return leading(new Element.Procedure(upper(tree.NAME(0)), parameters, given, ExpressionReader.span(tree)), tree);
	}

	/** The last of some values is the variable, or variable = value; those before it are its type. */
	private void declare(GCodeParser.DeclaredContext tree, List<Expression> variables, List<Expression> given) {
		Expression last = values.visit(tree.expression(tree.expression().size() - 1));
		boolean set = last instanceof Expression.Binary binary && binary.operator().equals("EQ");
		variables.add(set ? ((Expression.Binary) last).left() : last);
		given.add(set ? ((Expression.Binary) last).right() : new Expression.Missing(new Span(last.span().end(), last.span().end())));
	}

	Part calling(GCodeParser.CallingContext tree) {
		Span span = ExpressionReader.span(tree);
		List<Expression> arguments = tree.call() == null ? List.of() : values.arguments(null, tree.call());
		boolean modal = tree.called.getType() == GCodeLexer.MCALL;
		String called = tree.NAME() != null ? upper(tree.NAME()) : tree.STRING() != null ? quoted(tree.STRING()) : "";
		if (modal) {
			return leading(new Element.ModalCall(called, arguments, span), tree);
		}
		return called.isEmpty() ? name(tree) : leading(new Element.Statement(called, arguments, Optional.empty(), span), tree);
	}

	private static String quoted(TerminalNode string) {
		String text = upper(string);
		return text.substring(1, text.length() > 1 && text.endsWith("\"") ? text.length() - 1 : text.length()).strip();
	}

	private static String upper(ParseTree name) {
		return name.getText().toUpperCase(Locale.ROOT);
	}
}
