package truelead.grammar;

/**
 * Some of the blocks that were read on one way through a program, by their text: people and systems write the same lines again and again,
 * {@code G80}, {@code T3 M6}, {@code G0 Z25.}. A block that is met later in the same slot takes the place of the one before. Not for
 * several threads.
 */
public final class KnownBlocks {

	/** A power of two. */
	private static final int SLOTS = 1024;
	/** Longer lines are seldom the same. */
	private static final int LONGEST = 80;

	private final Block[] blocks = new Block[SLOTS];

	/** The block at which a cursor is; the same one as before where its text is known. */
	public Block at(BlockCursor cursor) {
		if (cursor.length() > LONGEST) {
			return cursor.block();
		}
		int slot = cursor.scatter() & SLOTS - 1;
		Block known = blocks[slot];
		if (known == null || !cursor.says(known.text())) {
			known = cursor.block();
			blocks[slot] = known;
		}
		return known;
	}
}
