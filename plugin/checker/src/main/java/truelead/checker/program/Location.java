package truelead.checker.program;

import java.util.Optional;
import truelead.grammar.Span;

/**
 * A range of characters in one line of a program file; the line counts from 0.
 *
 * @param executed the block as it was executed, with the calls that led to it, where that is known; places are equal without it
 */
public record Location(ProgramFile file, int line, Span span, Optional<BlockRef> executed) {

	/** A place of which no more is known than where it is. */
	public Location(ProgramFile file, int line, Span span) {
		this(file, line, span, Optional.empty());
	}

	/** A place in a block as it was executed. */
	public static Location in(BlockRef block, Span span) {
		return new Location(block.file(), block.line(), span, Optional.of(block));
	}

	/** Where a word stands. */
	public static Location of(WordRef word) {
		return in(word.block(), word.span());
	}

	/** The whole text of a block without the white space around it. */
	public static Location of(BlockRef block) {
		return in(block, block.file().text().written(block.line()));
	}

	/** The same place in another text of the file; itself where it is in another file. */
	public Location in(ProgramFile text) {
		return file.equals(text) ? new Location(text, line, span, executed) : this;
	}

	/** Offset of the first character in the file's text. */
	public int offset() {
		return file.text().lineStart(line) + span.start();
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Location place && line == place.line && file.equals(place.file) && span.equals(place.span);
	}

	@Override
	public int hashCode() {
		return 31 * (31 * file.hashCode() + line) + span.hashCode();
	}
}
