package truelead.forms;

import truelead.grammar.Block;

/** A form that writes each block anew that has nothing but plain words, comments and marks; the others stay. */
abstract class PlainBlocks extends BlockByBlock {

	/** Such a block in this form; its own text where it stays. */
	abstract String plain(Program program, Block block, Course.State before);

	@Override
	final String rewrite(Program program, Block block, Course.State before) {
		return Words.plain(block) ? plain(program, block, before) : block.text();
	}
}
