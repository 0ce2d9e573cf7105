package truelead.checker.program;

import truelead.grammar.Span;

/** A range of characters in one line of a program file; the line counts from 0. */
public record Location(ProgramFile file, int line, Span span) {

	/** Where a word stands. */
	public static Location of(WordRef word) {
		return new Location(word.block().file(), word.block().line(), word.span());
	}

	/** The whole text of a block without the white space around it. */
	public static Location of(BlockRef block) {
		return new Location(block.file(), block.line(), block.file().text().written(block.line()));
	}

	/** The same place in another text of the file; itself where it is in another file. */
	public Location in(ProgramFile text) {
		return file.equals(text) ? new Location(text, line, span) : this;
	}

	/** Offset of the first character in the file's text. */
	public int offset() {
		return file.text().lineStart(line) + span.start();
	}
}
