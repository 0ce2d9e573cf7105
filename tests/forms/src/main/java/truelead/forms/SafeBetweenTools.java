package truelead.forms;

import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;

/** Coolant off, spindle off and the tool home before it is changed is what the change does anyway. */
final class SafeBetweenTools extends BlockByBlock {

	/** Some never turn the coolant off between tools. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("coolant-off");
	}

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.increments());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		boolean another = Words.toolChange(block) && before.motion() >= 0;
		return another && !Words.says(block, 'M', 3, 4, 5, 8, 9) ? "M9\nM5\nG91 G28 Z0.\nG90\n" + block.text() : block.text();
	}
}
