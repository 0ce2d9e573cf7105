package truelead.checker.program;

import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/**
 * A word as written, to point at it, to repeat it in a message and to replace it in a fix.
 *
 * @param address  the letter, in upper case
 * @param span     where it stands in the block's text, letter included
 * @param decimals decimals written, 0 where the number has none or the value is an expression
 * @param literal  whether the value is a plain number, so that it can be replaced by another one
 * @param written  the word's text
 */
public record WordRef(BlockRef block, char address, Span span, int decimals, boolean literal, String written) {

	/** A word of a block whose text is given. */
	public static WordRef of(BlockRef block, Element.Word word, String text) {
		boolean literal = word.value() instanceof Expression.Number;
		int decimals = word.value() instanceof Expression.Number number ? number.decimals() : 0;
		return new WordRef(block, word.address(), word.span(), decimals, literal, text.substring(word.span().start(), word.span().end()));
	}
}
