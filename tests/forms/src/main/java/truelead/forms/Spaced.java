package truelead.forms;

import truelead.grammar.Block;

/** Space between words, as many as they are, says nothing. */
final class Spaced extends PlainBlocks {

	@Override
	String plain(Program program, Block block, Course.State before) {
		if (Words.head(block)) {
			return block.text();
		}
		return "  " + String.join("   ", block.elements().stream().map(element -> Words.written(block, element)).toList()) + " ";
	}
}
