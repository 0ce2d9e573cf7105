package truelead.forms;

import java.util.Locale;
import truelead.grammar.Block;

/** Letters of words mean the same small and large. */
final class SmallLetters extends PlainBlocks {

	@Override
	String plain(Program program, Block block, Course.State before) {
		return Words.head(block) ? block.text() : Words.each(block, word -> Words.written(block, word).toLowerCase(Locale.ROOT));
	}
}
