package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** A motion in force need not be said again. */
final class UnsaidMotion extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.framed());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		boolean plain = Words.has(block, "XYZ") && !Words.call(block) && before.cycle() == 0
				&& Words.says(block, 'G', Math.max(0, before.motion())) && before.motion() >= 0;
		long codes = block.words().stream().filter(word -> word.address() == 'G').count();
		return plain && codes == 1 ? Words.without(block, word -> word.address() == 'G') : block.text();
	}
}
