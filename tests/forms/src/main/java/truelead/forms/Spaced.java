package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** Space between words, as many as they are, says nothing. */
final class Spaced extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Optional.empty();
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (!Words.plain(block)) {
			return block.text();
		}
		if (Words.head(block)) {
			return block.text();
		}
		return "  " + String.join("   ", block.elements().stream().map(element -> Words.written(block, element)).toList()) + " ";
	}
}
