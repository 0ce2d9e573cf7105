package truelead.grammar;

/**
 * Goes through the blocks of a chunk without making objects of the plain ones: words with plain numbers, closed comments, block
 * delete, percent signs. What it says of a block holds until it goes on to the next one.
 */
public final class BlockCursor {

	private final Chunk chunk;
	private final QuickReader reader;
	private int line = -1;
	private boolean plain;

	BlockCursor(Chunk chunk) {
		this.chunk = chunk;
		this.reader = QuickReader.of(chunk.text());
	}

	/** Goes on to the next line; false behind the last one. */
	public boolean next() {
		if (line == chunk.lineEnds()) {
			return false;
		}
		goTo(line + 1);
		return true;
	}

	/** Goes to a line, from 0 in each chunk. */
	public void goTo(int place) {
		line = place;
		plain = reader.read(chunk.lineStart(line), chunk.behind(line));
	}

	/** The line it is at, from 0 in each chunk. */
	public int line() {
		return line;
	}

	/** Whether the block has nothing but plain parts; of any other one only {@link #block()} tells something. */
	public boolean plain() {
		return plain;
	}

	/** Number of parts of a plain block. */
	public int parts() {
		return reader.count();
	}

	/** What a part of a plain block is: the address of a word in upper case; ( or ; for a comment, / for block delete, % for a percent line. */
	public char mark(int part) {
		return reader.mark(part);
	}

	/** The number of a word of a plain block, with the decimal point as written. */
	public double number(int part) {
		return reader.value(part);
	}

	/** How many decimals the number of a word of a plain block is written with. */
	public int decimals(int part) {
		return reader.decimals(part);
	}

	/** The block itself. */
	public Block block() {
		String text = chunk.line(line);
		return plain ? new Block(text, reader.elements(text)) : RecentBlocks.of(text);
	}
}
