package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import truelead.grammar.Block;

/** A form that writes each block with words in it anew by itself, given what is in force before it. */
abstract class BlockByBlock implements Form {

	/** The block in this form; its own text where it stays. */
	abstract String rewrite(Program program, Block block, Course.State before);

	@Override
	public List<String> rewrite(Program program) {
		List<Course.State> states = Course.of(program);
		List<String> lines = new ArrayList<>();
		for (int i = 0; i < states.size(); i++) {
			Block block = program.blocks().get(i);
			lines.add(Words.any(block) ? rewrite(program, block, states.get(i)) : block.text());
		}
		return lines;
	}
}
