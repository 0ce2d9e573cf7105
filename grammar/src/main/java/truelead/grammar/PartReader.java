package truelead.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;

/** Turns the parse tree of a block into its parts, in the order written. */
final class PartReader extends GCodeBaseVisitor<Part> {

	private final List<Problem> problems = new ArrayList<>();
	private final ExpressionReader values = new ExpressionReader(problems);
	private final StatementReader statements = new StatementReader(values);
	private final WordReader words = new WordReader(values);
	private final List<Part> parts = new ArrayList<>();

	/** Reads a whole block. */
	PartReader(GCodeParser.BlockContext block) {
		for (GCodeParser.PartContext part : block.part()) {
			if (!(part instanceof GCodeParser.GapContext)) {
				add(visit(part));
			}
		}
	}

	/** Misfits that touch are one; the first says what was expected. */
	private void add(Part part) {
		int last = parts.size() - 1;
		Optional<Part> jump = last < 0 ? Optional.empty() : jump(parts.get(last), part);
		if (jump.isPresent()) {
			parts.set(last, jump.get());
		} else if (part instanceof Part.Misfit && last >= 0 && parts.get(last) instanceof Part.Misfit before
				&& before.span().end() == part.span().start()) {
			parts.set(last, new Part.Misfit(before.message(), before.span().to(part.span())));
		} else {
			parts.add(part);
		}
	}

	/** A condition without THEN and a block number behind it, {@code IF [#1 EQ 2] N100}, is a jump to that block. */
	private static Optional<Part> jump(Part before, Part part) {
		if (before instanceof Part.Whole first && first.element() instanceof Element.Conditional conditional
				&& conditional.span().end() == conditional.condition().span().end() && part instanceof Part.Whole second
				&& second.element() instanceof Element.Word word && word.address() == 'N') {
			return Optional.of(whole(new Element.Jump(Optional.of(conditional.condition()), word.value(), before.span().to(part.span()))));
		}
		return Optional.empty();
	}

	/** What was found. */
	List<Part> parts() {
		return parts;
	}

	/** What is missing inside the parts. */
	List<Problem> problems() {
		return problems;
	}

	private static Span span(ParserRuleContext tree) {
		return ExpressionReader.span(tree);
	}

	private static Span span(Token token) {
		return ExpressionReader.span(token);
	}

	private static Part whole(Element element) {
		return new Part.Whole(element);
	}

	@Override
	public Part visitRemark(GCodeParser.RemarkContext tree) {
		return whole(Comments.read(tree.mark));
	}

	@Override
	public Part visitPercent(GCodeParser.PercentContext tree) {
		return whole(new Element.Percent(span(tree)));
	}

	@Override
	public Part visitBlockDelete(GCodeParser.BlockDeleteContext tree) {
		Span slash = span(tree.SLASH().getSymbol());
		if (tree.NUMBER() == null) {
			return whole(new Element.BlockDelete(1, slash));
		}
		String number = tree.NUMBER().getText();
		Span all = span(tree);
		if (number.length() == 1 && all.length() == 2 && number.charAt(0) != '0') {
			return whole(new Element.BlockDelete(number.charAt(0) - '0', all));
		}
		return new Part.Misfit("a number from 1 to 9 may stand right behind the slash; type the address letter before " + number
				+ ", or take it away", all);
	}

	@Override
	public Part visitProgramNumber(GCodeParser.ProgramNumberContext tree) {
		if (tree.NUMBER() == null || tree.getStart().getTokenIndex() > 0) {
			return new Part.Misfit("a colon has no meaning here; take it away", span(tree));
		}
		return whole(new Element.Word('O', -1, Numbers.read(tree.NUMBER().getSymbol()), span(tree)));
	}

	@Override
	public Part visitLabel(GCodeParser.LabelContext tree) {
		return whole(new Element.Label(tree.NAME().getText().toUpperCase(Locale.ROOT), span(tree)));
	}

	@Override
	public Part visitOStatement(GCodeParser.OStatementContext tree) {
		List<Expression> arguments = new ArrayList<>();
		tree.group().forEach(group -> arguments.add(values.visit(group)));
		GCodeParser.OTargetContext target = tree.oTarget();
		Optional<Expression> number = Optional.empty();
		String name = "";
		if (target.O_NAME() != null) {
			String text = target.getText();
			name = ExpressionReader.plainName(text.substring(text.indexOf('<') + 1, text.length() - 1));
		} else if (target.NUMBER() != null) {
			name = target.NUMBER().getText();
			number = Optional.of(Numbers.read(target.NUMBER().getSymbol()));
		} else {
			number = Optional.of(values.visit(target.variable() != null ? target.variable() : target.group()));
		}
		return whole(new Element.OStatement(Element.OKeyword.valueOf(tree.oKeyword().getText().toUpperCase(Locale.ROOT)), name, number,
				arguments, span(tree)));
	}

	@Override
	public Part visitOWord(GCodeParser.OWordContext tree) {
		Part word = words.word(tree, 'O', tree.operand());
		boolean fraction = tree.operand() != null && tree.operand().getText().indexOf('.') >= 0;
		boolean behindDigit = !parts.isEmpty() && parts.get(parts.size() - 1).span().end() == tree.getStart().getStartIndex()
				&& parts.get(parts.size() - 1) instanceof Part.Whole whole && whole.element() instanceof Element.Word before
				&& before.address() != 'N';
		return fraction || behindDigit
				? new Part.Misfit("a program number cannot stand here; type the digit 0 if that is meant, or take it away", span(tree))
				: word;
	}

	@Override
	public Part visitONameAlone(GCodeParser.ONameAloneContext tree) {
		boolean alone = parts.isEmpty()
				&& tree.getParent().children.stream().skip(1).allMatch(part -> part instanceof GCodeParser.RemarkContext
						|| part instanceof TerminalNode);
		if (alone) {
			String text = tree.getText();
			int open = text.indexOf('<');
			Span span = span(tree);
			return whole(new Element.Word('O', -1, new Expression.Text(text.substring(open + 1, text.length() - 1),
					new Span(span.start() + open, span.end())), span));
		}
		return new Part.Misfit("a named O word needs sub, call, if, while, repeat or the like behind it; type what it is to do",
				span(tree));
	}

	@Override
	public Part visitAssignment(GCodeParser.AssignmentContext tree) {
		Expression target = values.visit(tree.variable());
		if (tree.EQUALS() == null) {
			return new Part.Misfit(tree.variable().getText()
					+ " stands alone; type = and its value behind it, or an address letter before it", span(tree));
		}
		return whole(new Element.Assignment(target, values.part(tree.expression(), tree.EQUALS().getSymbol()), span(tree)));
	}

	@Override
	public Part visitNamedAssignment(GCodeParser.NamedAssignmentContext tree) {
		String name = tree.NAME().getText();
		if (tree.EQUALS() == null) {
			return new Part.Keyword(name, span(tree)); // a statement such as DPRNT[X#1[35]], whose text has rules of its own
		}
		Expression target = tree.list() == null ? new Expression.NamedVariable(ExpressionReader.plainName(name), true,
				span(tree.NAME().getSymbol())) : new Expression.Function(name.toUpperCase(Locale.ROOT), values.arguments(tree.list(), null),
						span(tree.NAME().getSymbol()).to(span(tree.list())));
		return whole(new Element.Assignment(target, values.part(tree.expression(), tree.EQUALS().getSymbol()), span(tree)));
	}

	@Override
	public Part visitStatement(GCodeParser.StatementContext tree) {
		return whole(new Element.Statement(tree.NAME().getText().toUpperCase(Locale.ROOT), values.arguments(null, tree.call()),
				Optional.empty(), span(tree)));
	}

	@Override
	public Part visitCondition(GCodeParser.ConditionContext tree) {
		Expression condition = values.visit(tree.expression(0));
		if (condition instanceof Expression.Missing) {
			return new Part.Keyword(tree.getText(), span(tree));
		}
		if (tree.GOTO() != null) {
			return whole(new Element.Jump(Optional.of(condition), statements.target(tree.expression(1), tree.GOTO()), span(tree)));
		}
		if (tree.blockOfJump() != null) {
			return whole(new Element.Jump(Optional.of(condition), StatementReader.block(tree.blockOfJump()), span(tree)));
		}
		if (tree.THEN() == null && !(condition instanceof Expression.Group
				&& tree.expression(0).getStart().getType() == GCodeLexer.LBRACK)) {
			return statements.condition(Element.ControlKeyword.IF, condition, tree);
		}
		return whole(new Element.Conditional(condition, span(tree)));
	}

	@Override
	public Part visitLoop(GCodeParser.LoopContext tree) {
		if (tree.DO() == null) {
			return statements.condition(Element.ControlKeyword.WHILE, values.visit(tree.expression(0)), tree);
		}
		Expression condition = values.part(tree.expression(0), tree.WHILE().getSymbol());
		return whole(new Element.LoopStart(Optional.of(condition), values.part(tree.expression(1), tree.DO().getSymbol()), span(tree)));
	}

	@Override
	public Part visitLoopAlone(GCodeParser.LoopAloneContext tree) {
		return tree.operand() == null ? new Part.Keyword(tree.getText(), span(tree))
				: whole(new Element.LoopStart(Optional.empty(), values.visit(tree.operand()), span(tree)));
	}

	@Override
	public Part visitLoopEnd(GCodeParser.LoopEndContext tree) {
		return tree.operand() == null ? new Part.Keyword(tree.getText(), span(tree))
				: whole(new Element.LoopEnd(values.visit(tree.operand()), span(tree)));
	}

	@Override
	public Part visitJump(GCodeParser.JumpContext tree) {
		return whole(new Element.Jump(Optional.empty(), statements.target(tree.expression(), tree.GOTO()), span(tree)));
	}

	@Override
	public Part visitConditionalControl(GCodeParser.ConditionalControlContext tree) {
		return statements.condition(Element.ControlKeyword.valueOf(tree.control.getText().toUpperCase(Locale.ROOT)),
				values.visit(tree.expression()), tree);
	}

	@Override
	public Part visitCountedLoop(GCodeParser.CountedLoopContext tree) {
		return statements.countedLoop(tree);
	}

	@Override
	public Part visitRepetition(GCodeParser.RepetitionContext tree) {
		return statements.repetition(tree);
	}

	@Override
	public Part visitChoices(GCodeParser.ChoicesContext tree) {
		return statements.choices(tree);
	}

	@Override
	public Part visitDefinition(GCodeParser.DefinitionContext tree) {
		return statements.definition(tree);
	}

	@Override
	public Part visitProcedure(GCodeParser.ProcedureContext tree) {
		return statements.procedure(tree);
	}

	@Override
	public Part visitCalling(GCodeParser.CallingContext tree) {
		return statements.calling(tree);
	}

	@Override
	public Part visitWord(GCodeParser.WordContext tree) {
		return words.word(tree);
	}

	@Override
	public Part visitPolarWord(GCodeParser.PolarWordContext tree) {
		return words.polar(tree);
	}

	/** The R plane of a cycle, whatever it is called. */
	@Override
	public Part visitPlaneWord(GCodeParser.PlaneWordContext tree) {
		return words.word(tree, 'R', tree.operand());
	}

	@Override
	public Part visitCorner(GCodeParser.CornerContext tree) {
		return words.corner(tree);
	}

	private static boolean programNumber(String text) {
		return text.length() > 3 && text.length() < 10 && text.charAt(0) == '0' && text.indexOf('.') < 0;
	}

	@Override
	public Part visitStrayGroup(GCodeParser.StrayGroupContext tree) {
		// a statement that begins with an open bracket, by which a program tells a simulation of its stock and tools
		if (tree.group().RBRACK() == null && tree.group().expression() instanceof GCodeParser.NameContext name
				&& tree.getStart().getTokenIndex() == 0) {
			return new Part.Keyword(name.NAME().getText(), span(tree));
		}
		values.visit(tree.group());
		return new Part.Misfit("this value has no address letter; type the letter before it, or take it away", span(tree));
	}

	@Override
	public Part visitKeyword(GCodeParser.KeywordContext tree) {
		return statements.keyword(tree);
	}

	@Override
	public Part visitStray(GCodeParser.StrayContext tree) {
		boolean alone = tree.getStart().getTokenIndex() == 0 && tree.getParent().getChildCount() == 2;
		if (alone && tree.NUMBER() != null && programNumber(tree.getText())) {
			return new Part.Misfit("a program number begins with the letter O; type O" + tree.getText().substring(1)
					+ ", or take the number away", span(tree));
		}
		return new Part.Misfit(Strays.message(tree.getStart()), span(tree));
	}
}
