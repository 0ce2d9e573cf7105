package truelead.checker.edit;

import truelead.grammar.Span;

/**
 * Something in a block that stands for a thing which may stand elsewhere too.
 *
 * @param kind    what kind of thing
 * @param key     equal for equal things of a kind: a number without leading zeros, a name in small letters, an address with its number
 * @param span    where it stands in the block
 * @param value   where its number or name stands, without the address letter
 * @param defines whether the thing is made here: a block number, a program's start, a label, a variable that is set
 */
public record Name(Kind kind, String key, Span span, Span value, boolean defines) {

	/** Kinds of things. */
	public enum Kind {
		/** A block's number, to be jumped to within its program. */
		BLOCK,
		/** A program by number. */
		PROGRAM,
		/** A subprogram that begins with an O word and a statement. */
		SUB,
		/** A label by name. */
		LABEL,
		/** A variable by number or by name. */
		VARIABLE,
		/** Any other word: the same address with the same number. */
		WORD
	}

	/** Whether both stand for the same thing, block numbers in the same program provided. */
	public boolean same(Name other) {
		return kind == other.kind && key.equals(other.key);
	}
}
