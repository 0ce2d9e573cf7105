package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** A frame turned by a quarter one way and all places turned the other way are the same places. */
final class TurnedBack implements Form {

	private final QuarterTurned turned = new QuarterTurned();

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(turned.declines(program), program.increments(), program.says('G', 92, 52), program.calls(),
				program.says('G', 41, 42));
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = turned.rewrite(program);
		boolean on = false;
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (on && (Words.toolChange(block) || Words.end(block))) {
				lines.set(i, "G69\n" + lines.get(i));
				on = false;
			} else if (!on && Words.has(block, "XY")) {
				lines.set(i, "G68 X0. Y0. R-90.\n" + lines.get(i));
				on = true;
			}
		}
		return lines;
	}
}
