package truelead.grammar;

/**
 * Goes through the blocks of a chunk without making objects of the plain ones: words with plain numbers, closed comments, block
 * delete, percent signs. What it says of a block holds until it goes on to the next one.
 */
public final class BlockCursor {

	/** Characters that are looked at in one piece, so that the processor has them at hand. */
	private static final int ROOM = 4096;

	private final Chunk chunk;
	private final String text;
	/** The characters of the text from one place up to another, with a line end behind them. */
	private final char[] piece;
	private int first;
	private int behind = -1;
	private final QuickReader reader;
	private final MotionWords words;
	private int line = -1;
	private boolean read;
	private boolean plain;

	BlockCursor(Chunk chunk) {
		this.chunk = chunk;
		this.text = chunk.text();
		this.piece = new char[Math.min(text.length(), ROOM) + 1];
		this.reader = new QuickReader(piece);
		this.words = new MotionWords(piece);
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
		read = false;
	}

	/** The line it is at, from 0 in each chunk. */
	public int line() {
		return line;
	}

	/** Whether the block is nothing but a motion, of which {@link #words()} tells. */
	public boolean moves() {
		return holds() && words.read(chunk.lineStart(line) - first);
	}

	/** Whether the line, which may be too long, is in the piece that is looked at. */
	private boolean holds() {
		int from = chunk.lineStart(line);
		int end = chunk.behind(line);
		if (end - from > QuickReader.LENGTH) {
			return false;
		}
		if (from < first || end > behind) {
			first = from;
			behind = Math.min(from + ROOM, text.length());
			text.getChars(from, behind, piece, 0);
			piece[behind - from] = '\n';
		}
		return true;
	}

	/** The words of a block that {@link #moves()}. */
	public MotionWords words() {
		return words;
	}

	/**
	 * Whether the block has nothing but plain parts, of which the others tell once this has said so; of any other one only {@link #block()}
	 * tells something.
	 */
	public boolean plain() {
		if (!read) {
			plain = holds() && reader.read(chunk.lineStart(line) - first);
			read = true;
		}
		return plain;
	}

	/** Number of parts of a plain block. */
	public int parts() {
		return reader.count();
	}

	/**
	 * What a part of a plain block is: the address of a word in upper case; r for {@code CR=}, t for {@code TURN=}, v for
	 * {@code A3=}; ( or ; for a comment, / for block delete, % for a percent line.
	 */
	public char mark(int part) {
		return reader.mark(part);
	}

	/**
	 * The number of a word of a plain block, in the program's own unit, with the decimal point as written; of a part that is no word it
	 * means nothing.
	 */
	public double number(int part) {
		return reader.value(part);
	}

	/** How many decimals the number of a word of a plain block is written with. */
	public int decimals(int part) {
		return reader.decimals(part);
	}

	/** Number of characters of the line, its line end left out. */
	int length() {
		return chunk.lineEnd(line) - chunk.lineStart(line);
	}

	/** A number that is the same for lines of the same text, and seldom for others. */
	int scatter() {
		int end = chunk.lineEnd(line);
		int mixed = 0;
		for (int i = chunk.lineStart(line); i < end; i++) {
			mixed = mixed * 31 + text.charAt(i);
		}
		return mixed ^ mixed >>> 15;
	}

	/** Whether the line is a text. */
	boolean says(String line) {
		return line.length() == length() && text.startsWith(line, chunk.lineStart(this.line));
	}

	/** The block itself. */
	public Block block() {
		String text = chunk.line(line);
		return plain() ? new Block(text, reader.elements(text)) : RecentBlocks.of(text);
	}
}
