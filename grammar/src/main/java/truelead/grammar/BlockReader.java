package truelead.grammar;

import java.util.List;

/** Reads the text of one line into a block. Never fails: what cannot be read is kept, with a problem that says what was expected. */
public final class BlockReader {

	private BlockReader() {
	}

	/** Longest text of a block that is read, in characters; what stands behind is kept as opaque text, with a problem. */
	public static final int MAX_LENGTH = 10_000;
	/** Deepest nesting of brackets, and of call parentheses, that is read. */
	public static final int MAX_DEPTH = 50;
	/** Most signs and operators in one block that are read. */
	public static final int MAX_OPERATORS = 500;

	/** Most states that the grammar's caches keep before they are thrown away. */
	public static final int MAX_CACHED_STATES = 20_000;

	/** Reads one line, without its line end. */
	public static Block read(String line) {
		List<Element> plain = QuickReader.read(line);
		return plain != null ? new Block(line, plain) : RecentBlocks.of(line);
	}

	/** Reads one line by the grammar alone. */
	static Block readByGrammar(String line) {
		int size = Limits.readable(line);
		Parse parse = Parse.of(line, size);
		if (size == line.length() && !parse.whole() && !parse.speaksToOperator()) {
			String repaired = Damage.repaired(line, parse.tokens());
			if (!repaired.equals(line)) {
				Parse better = Parse.of(repaired, size);
				if (better.faults() < parse.faults() && better.explains(parse.tokens(), line, repaired)) {
					return new BlockBuilder(line, better).repaired(repaired);
				}
			}
		}
		return new BlockBuilder(line, parse).block(size);
	}
}
