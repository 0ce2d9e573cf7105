package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** G54.1 with P names a work offset as G54 does. */
final class FurtherOffset extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.says('G', 52, 53, 55, 56, 57, 58, 59, 54.1, 10),
				program.calls(), offsetInACycle(program));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.cycle(block) > 0 || Words.says(block, 'G', 4) || Words.has(block, "P") ? block.text()
				: Words.each(block, word -> word.address() == 'G' && Words.value(word) == 54 ? "G54.1 P7" : null);
	}

	/** P beside a cycle is its dwell. */
	private static Optional<String> offsetInACycle(Program program) {
		return Program.why("names its offset beside a P", program.blocks().stream().anyMatch(block -> Words.says(block, 'G', 54)
				&& (Words.cycle(block) > 0 || Words.has(block, "P"))));
	}
}
