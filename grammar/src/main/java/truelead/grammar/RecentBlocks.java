package truelead.grammar;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Blocks that the grammar has read of late: a check looks at each several times, and an editor after every key. Two generations of
 * {@link #MOST} blocks are kept at most, long ones not at all.
 */
final class RecentBlocks {

	private static final int MOST = 2000;
	private static final int LONGEST = 200;

	private static volatile Map<String, Block> young = new ConcurrentHashMap<>();
	private static volatile Map<String, Block> old = Map.of();

	private RecentBlocks() {
	}

	/** The block of a line; read by the grammar where it is not known. */
	static Block of(String line) {
		if (line.length() > LONGEST) {
			return BlockReader.readByGrammar(line);
		}
		Block known = young.get(line);
		if (known != null) {
			return known;
		}
		known = old.get(line);
		Block block = known != null ? known : BlockReader.readByGrammar(line);
		if (young.size() >= MOST) {
			old = young;
			young = new ConcurrentHashMap<>();
		}
		young.put(line, block);
		return block;
	}
}
