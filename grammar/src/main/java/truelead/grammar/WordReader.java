package truelead.grammar;

import java.util.List;
import java.util.Locale;
import org.antlr.v4.runtime.ParserRuleContext;

/** Reads words: an address and its value, in all the ways that controls have of writing them. */
final class WordReader {

	private final ExpressionReader values;

	WordReader(ExpressionReader values) {
		this.values = values;
	}

	/** {@code X5.}, {@code X[#1+2]}, {@code X=5}. */
	Part word(GCodeParser.WordContext tree) {
		char address = letter(tree.LETTER().getText());
		return tree.EQUALS() == null ? word(tree, address, tree.operand()) : assigned(tree, address);
	}

	/** {@code X=5}, {@code S1=500}, {@code R1=5}, {@code R[R1+1]=5}, {@code G[8]=2}. */
	private Part assigned(GCodeParser.WordContext tree, char address) {
		Expression value = values.part(tree.expression(), tree.EQUALS().getSymbol());
		if (tree.operand() == null) {
			return whole(new Element.Word(address, -1, value, ExpressionReader.span(tree)));
		}
		Span name = ExpressionReader.span(tree.LETTER().getSymbol()).to(ExpressionReader.span(tree.operand()));
		Expression index = values.visit(tree.operand());
		boolean variable = "RQVEL".indexOf(address) >= 0;
		if (variable && index instanceof Expression.Group group) {
			return whole(new Element.Assignment(new Expression.Function(String.valueOf(address), List.of(group.inner()), name), value,
					ExpressionReader.span(tree)));
		}
		boolean group = address == 'G' && index instanceof Expression.Group of && of.inner() instanceof Expression.Number;
		String number = group ? ExpressionReader.plainName(tree.operand().getText().replace("[", "").replace("]", ""))
				: tree.operand().getText();
		boolean digits = number.chars().allMatch(c -> c >= '0' && c <= '9');
		if (variable && digits) {
			return whole(new Element.Assignment(new Expression.NamedVariable(ExpressionReader.plainName(address + number), true, name),
					value, ExpressionReader.span(tree)));
		}
		if (!digits || number.length() > 4) {
			return new Part.Misfit("between " + address + " and = a whole number of up to four digits may stand; correct " + number,
					ExpressionReader.span(tree));
		}
		return whole(new Element.Word(address, Integer.parseInt(number), value, ExpressionReader.span(tree)));
	}

	/** A word with its value; one without a value is bare. */
	Part word(ParserRuleContext tree, char address, GCodeParser.OperandContext operand) {
		if (operand == null) {
			Span span = ExpressionReader.span(tree);
			return new Part.Bare(new Element.Word(address, -1, new Expression.Missing(new Span(span.end(), span.end())), span));
		}
		return whole(new Element.Word(address, -1, values.visit(operand), ExpressionReader.span(tree)));
	}

	/** A radius or an angle from the pole, {@code @5} and {@code ^30}. */
	Part polar(GCodeParser.PolarWordContext tree) {
		char address = tree.POLAR().getText().charAt(0);
		return tree.operand() == null ? new Part.Misfit(Strays.message(tree.getStart()), ExpressionReader.span(tree))
				: word(tree, address, tree.operand());
	}

	/** A corner broken or rounded, {@code ,C2.} and {@code ,R2.}. */
	Part corner(GCodeParser.CornerContext tree) {
		if (tree.operand() == null) {
			return new Part.Misfit("a comma cannot stand here; type a point if that is meant; only a corner's ,C2. or ,R2. begins "
					+ "with a comma", ExpressionReader.span(tree));
		}
		return whole(new Element.Corner(letter(tree.LETTER().getText()), values.visit(tree.operand()), ExpressionReader.span(tree)));
	}

	private static char letter(String text) {
		return text.toUpperCase(Locale.ROOT).charAt(0);
	}

	private static Part whole(Element element) {
		return new Part.Whole(element);
	}
}
