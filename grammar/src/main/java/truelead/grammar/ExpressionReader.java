package truelead.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/** Builds values from parse trees and notes what is missing in them. */
final class ExpressionReader extends GCodeBaseVisitor<Expression> {

	private static final Map<String, String> COMPARISONS = Map.of("==", "EQ", "=", "EQ", "<>", "NE", "!=", "NE", ">", "GT", ">=", "GE", "<",
			"LT", "<=", "LE");

	private final List<Problem> problems;

	/** Problems found are added to the list. */
	ExpressionReader(List<Problem> problems) {
		this.problems = problems;
	}

	/** The span of a token. */
	static Span span(Token token) {
		return new Span(token.getStartIndex(), token.getStopIndex() + 1);
	}

	/** The span of a tree; empty, behind {@code before}, where nothing was written. */
	static Span span(ParserRuleContext tree) {
		int start = tree.getStart().getStartIndex();
		int end = tree.getStop() == null ? start : tree.getStop().getStopIndex() + 1;
		return new Span(start, Math.max(start, end));
	}

	@Override
	public Expression visitOperand(GCodeParser.OperandContext tree) {
		if (tree.atom() == null) {
			GCodeParser.SignContext last = tree.sign(tree.sign().size() - 1);
			problems.add(new Problem(span(last), last.getText() + " has no number behind it; type the number, or take the sign away"));
			return new Expression.Missing(span(tree));
		}
		if (tree.sign().size() > 1) {
			Span signs = span(tree.sign(0)).to(span(tree.sign(tree.sign().size() - 1)));
			problems.add(new Problem(signs, "more than one sign stands before a number; leave only one"));
			return new Expression.Missing(span(tree));
		}
		Expression value = visit(tree.atom());
		for (int i = tree.sign().size() - 1; i >= 0; i--) {
			value = signed(tree.sign(i).getStart(), value);
		}
		return value;
	}

	private static Expression signed(Token sign, Expression value) {
		Span span = span(sign).to(value.span());
		if (value instanceof Expression.Number number) {
			return new Expression.Number(sign.getType() == GCodeLexer.MINUS ? 0.0 - number.value() : number.value(), number.decimals(),
					number.point(), span);
		}
		return new Expression.Unary(sign.getText().toUpperCase(Locale.ROOT), value, span);
	}

	@Override
	public Expression visitSigned(GCodeParser.SignedContext tree) {
		return signed(tree.getStart(), part(tree.expression(), tree.getStart()));
	}

	@Override
	public Expression visitBinary(GCodeParser.BinaryContext tree) {
		Token sign = ((TerminalNode) tree.getChild(1)).getSymbol();
		Expression left = visit(tree.expression(0));
		if (left instanceof Expression.Missing) {
			problems.add(new Problem(span(sign), sign.getText() + " has no value before it; type the value that is missing"));
		}
		Expression right = part(tree.expression(1), sign);
		String operator = sign.getText().toUpperCase(Locale.ROOT);
		return new Expression.Binary(COMPARISONS.getOrDefault(operator, operator), left, right, left.span().to(right.span()));
	}

	@Override
	public Expression visitNumber(GCodeParser.NumberContext tree) {
		return Numbers.read(tree.NUMBER().getSymbol());
	}

	@Override
	public Expression visitManyPoints(GCodeParser.ManyPointsContext tree) {
		problems.add(new Problem(span(tree), tree.getText() + " has more than one decimal point; leave only one"));
		return new Expression.Missing(span(tree));
	}

	@Override
	public Expression visitExponent(GCodeParser.ExponentContext tree) {
		problems.add(new Problem(span(tree),
				tree.getText() + " is written with an exponent, which controls read as an E word; type it as a plain decimal number"));
		return new Expression.Missing(span(tree));
	}

	@Override
	public Expression visitBareFunction(GCodeParser.BareFunctionContext tree) {
		String name = tree.getStart().getText();
		if (tree.getChildCount() == 1) {
			problems.add(new Problem(span(tree), name + " needs its value in brackets; type it as " + name + "[...]"));
			return new Expression.Function(name.toUpperCase(Locale.ROOT), List.of(), span(tree));
		}
		Expression value = tree.NUMBER() != null ? Numbers.read(tree.NUMBER().getSymbol()) : visit(tree.variable());
		String argument = tree.getChild(1).getText();
		problems.add(new Problem(span(tree), name + " needs its value in brackets; type " + name + "[" + argument + "]"));
		return new Expression.Function(name.toUpperCase(Locale.ROOT), List.of(value), span(tree));
	}

	@Override
	public Expression visitVariable(GCodeParser.VariableContext tree) {
		Expression index = index(tree);
		for (int i = tree.HASH().size() - 1; i >= 0; i--) {
			index = new Expression.NumberedVariable(index, new Span(tree.HASH(i).getSymbol().getStartIndex(), index.span().end()));
		}
		return index;
	}

	private Expression index(GCodeParser.VariableContext tree) {
		if (tree.VARIABLE_NAME() != null) {
			String text = tree.VARIABLE_NAME().getText();
			return new Expression.NamedVariable(plainName(text.substring(text.indexOf('<') + 1, text.length() - 1)), false,
					span(tree.VARIABLE_NAME().getSymbol()));
		}
		if (tree.NUMBER() != null) {
			return Numbers.read(tree.NUMBER().getSymbol());
		}
		if (tree.group() != null) {
			return visit(tree.group());
		}
		int end = span(tree).end();
		problems.add(new Problem(span(tree), "# has no number behind it; type the number of the variable, as in #100"));
		return new Expression.Missing(new Span(end, end));
	}

	/** A name without its blanks, in lower case, as RS-274 compares names. */
	static String plainName(String written) {
		StringBuilder name = new StringBuilder();
		written.chars().filter(c -> c > ' ').forEach(c -> name.append((char) c));
		return name.toString().toLowerCase(Locale.ROOT);
	}

	@Override
	public Expression visitGroup(GCodeParser.GroupContext tree) {
		Expression inner = visit(tree.expression());
		if (inner instanceof Expression.Missing && tree.RBRACK() != null) {
			problems.add(new Problem(span(tree), "these brackets are empty; type the value between [ and ]"));
		} else if (tree.RBRACK() == null) {
			problems.add(new Problem(span(tree.LBRACK().getSymbol()), "this [ is never closed; type ] behind the value"));
		}
		return new Expression.Group(inner, span(tree));
	}

	@Override
	public Expression visitParenthesized(GCodeParser.ParenthesizedContext tree) {
		Expression inner = visit(tree.expression());
		if (tree.RPAREN() == null) {
			problems.add(new Problem(span(tree.LPAREN().getSymbol()), "this ( is never closed; type ) behind the value"));
		}
		return new Expression.Group(inner, span(tree));
	}

	@Override
	public Expression visitArcTangent(GCodeParser.ArcTangentContext tree) {
		List<Expression> arguments = new ArrayList<>();
		tree.group().forEach(group -> arguments.add(inner(visit(group))));
		return new Expression.Function("ATAN", arguments, span(tree));
	}

	static Expression inner(Expression value) {
		return value instanceof Expression.Group group ? group.inner() : value;
	}

	@Override
	public Expression visitFunction(GCodeParser.FunctionContext tree) {
		return new Expression.Function(tree.getStart().getText().toUpperCase(Locale.ROOT), arguments(tree.list(), tree.call()), span(tree));
	}

	@Override
	public Expression visitString(GCodeParser.StringContext tree) {
		return text(tree.getStart());
	}

	private Expression text(Token string) {
		String text = string.getText();
		boolean closed = text.length() > 1 && text.endsWith(text.startsWith("<") ? ">" : "\"");
		if (!closed) {
			problems.add(new Problem(span(string), "this text is never closed; type \" behind it"));
		}
		return new Expression.Text(text.substring(1, closed ? text.length() - 1 : text.length()), span(string));
	}

	@Override
	public Expression visitName(GCodeParser.NameContext tree) {
		if (tree.list() != null || tree.call() != null) {
			return new Expression.Function(tree.NAME().getText().toUpperCase(Locale.ROOT), arguments(tree.list(), tree.call()), span(tree));
		}
		return new Expression.NamedVariable(plainName(tree.NAME().getText()), true, span(tree));
	}

	@Override
	public Expression visitLetterName(GCodeParser.LetterNameContext tree) {
		if (tree.group() != null) {
			return new Expression.Function(tree.LETTER().getText().toUpperCase(Locale.ROOT),
					List.of(inner(visit(tree.group()))), span(tree));
		}
		String number = tree.NUMBER() == null ? "" : tree.NUMBER().getText();
		return new Expression.NamedVariable(plainName(tree.LETTER().getText() + number), true, span(tree));
	}

	@Override
	public Expression visitMissing(GCodeParser.MissingContext tree) {
		int at = tree.getStart().getStartIndex();
		return new Expression.Missing(new Span(at, at));
	}

	@Override
	public Expression visitVariableValue(GCodeParser.VariableValueContext tree) {
		return visit(tree.variable());
	}

	@Override
	public Expression visitGroupValue(GCodeParser.GroupValueContext tree) {
		return visit(tree.group());
	}

	@Override
	public Expression visitValue(GCodeParser.ValueContext tree) {
		return visit(tree.atom());
	}

	@Override
	protected Expression aggregateResult(Expression before, Expression next) {
		return next == null ? before : next;
	}

	/** A value that must stand behind a sign, with a problem at the sign where none does. */
	Expression part(ParseTree value, Token sign) {
		Expression read = visit(value);
		if (read instanceof Expression.Missing) {
			problems.add(new Problem(span(sign), sign.getText() + " has no value behind it; type the value that is missing"));
			return new Expression.Missing(new Span(sign.getStopIndex() + 1, sign.getStopIndex() + 1));
		}
		return read;
	}

	/** The values between brackets or parentheses; an empty pair has none. */
	List<Expression> arguments(GCodeParser.ListContext list, GCodeParser.CallContext call) {
		List<GCodeParser.ExpressionContext> values = list == null ? call.expression() : list.expression();
		Token open = list == null ? call.getStart() : list.getStart();
		boolean closed = list == null ? call.RPAREN() != null : list.RBRACK() != null;
		if (!closed) {
			problems.add(new Problem(span(open), "this " + open.getText() + " is never closed; type " + (list == null ? ")" : "]")
					+ " behind the value"));
		}
		List<Expression> arguments = new ArrayList<>();
		values.forEach(value -> arguments.add(visit(value)));
		return arguments.size() == 1 && arguments.get(0) instanceof Expression.Missing ? List.of() : arguments;
	}
}
