package truelead.checker.program;

import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/**
 * A word as written, to point at it, to repeat it in a message and to replace it in a fix.
 *
 * @param address  the letter, in upper case
 * @param span     where it stands in the block's text, letter included
 * @param decimals decimals written, of a variable those of the number it was given; 0 where the number has none, -1 where the value was
 *                 worked out
 * @param literal  whether the value is a plain number, so that it can be replaced by another one
 * @param written  the word's text
 */
public record WordRef(BlockRef block, char address, Span span, int decimals, boolean literal, String written) {

	/** A word of a block whose text is given. */
	public static WordRef of(BlockRef block, Element.Word word, String text) {
		return of(block, word, word.value() instanceof Expression.Number number ? number.decimals() : -1, text);
	}

	/** A word of a block whose text is given, and the decimals of its value. */
	public static WordRef of(BlockRef block, Element.Word word, int decimals, String text) {
		return new WordRef(block, word.address(), word.span(), decimals, word.literal(),
				text.substring(word.span().start(), word.span().end()));
	}

	/** Whether its value stands in the program as a number, here or where a variable was given it, so that it may be rounded. */
	public boolean asWritten() {
		return decimals >= 0;
	}
}
