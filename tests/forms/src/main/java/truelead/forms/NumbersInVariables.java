package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** A variable is the number it was given. */
final class NumbersInVariables extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.withoutPoint());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (Words.cycle(block) == 0) {
			return block.text();
		}
		StringBuilder given = new StringBuilder();
		int[] next = {101};
		String now = Words.each(block, word -> {
			if ("ZRFQ".indexOf(word.address()) < 0) {
				return null;
			}
			given.append('#').append(next[0]).append('=').append(Words.written(block, word).substring(1).strip()).append('\n');
			return word.address() + "#" + next[0]++;
		});
		return given + now;
	}
}
