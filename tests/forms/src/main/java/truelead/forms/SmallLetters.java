package truelead.forms;

import java.util.Locale;
import java.util.Optional;
import truelead.grammar.Block;

/** Letters of words mean the same small and large. */
final class SmallLetters extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Optional.empty();
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (!Words.plain(block)) {
			return block.text();
		}
		return Words.head(block) ? block.text() : Words.each(block, word -> Words.written(block, word).toLowerCase(Locale.ROOT));
	}
}
