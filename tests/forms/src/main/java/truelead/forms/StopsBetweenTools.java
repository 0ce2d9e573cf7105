package truelead.forms;

import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;

/** An optional stop before a tool change changes nothing that is cut. */
final class StopsBetweenTools extends BlockByBlock {

	/** It asks for such a stop itself. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("no-check-stop");
	}

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.toolChange(block) && before.motion() >= 0 ? "M1\n" + block.text() : block.text();
	}
}
