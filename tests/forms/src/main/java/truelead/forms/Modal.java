package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** A motion in force may be said again. */
final class Modal extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.framed());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		boolean axes = Words.has(block, "XYZ") && !Words.has(block, "TPLO") && !Words.says(block, 'G', 76) && !Words.call(block)
				&& !Words.says(block, 'G', 52, 92);
		boolean said = Words.cycle(block) > 0 || Words.says(block, 'G', 0, 1, 2, 3, 80);
		return axes && !said && before.cycle() == 0 && before.motion() >= 0 && before.motion() <= 3
				? Words.first(block.text(), "G" + before.motion()) : block.text();
	}
}
