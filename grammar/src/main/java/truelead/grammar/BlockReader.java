package truelead.grammar;

import java.util.List;

/** Reads the text of one line into a block. Never fails: what cannot be read is kept, with a problem that says what was expected. */
public final class BlockReader {

	private BlockReader() {
	}

	/** Reads one line, without its line end. */
	public static Block read(String line) {
		return new Block(line, List.of(new Element.Unread(new Span(0, line.length()))), List.of());
	}
}
