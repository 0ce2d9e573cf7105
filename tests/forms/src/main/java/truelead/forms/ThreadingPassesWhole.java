package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** The words of a threading pass that are in force may be written again with each pass. */
final class ThreadingPassesWhole implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForTurning(), program.calls(), program.increments(), program.says('G', 98));
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		String pass = "";
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (Words.says(block, 'G', 92) && Words.has(block, "X")) {
				StringBuilder again = new StringBuilder("G92");
				block.words().stream().filter(word -> "ZRF".indexOf(word.address()) >= 0)
						.forEach(word -> again.append(' ').append(Words.written(block, word)));
				pass = Words.has(block, "Z") && Words.has(block, "F") ? again.toString() : "";
			} else if (!pass.isEmpty() && Words.only(block, "X")) {
				lines.set(i, Words.first(lines.get(i), pass));
			} else if (Words.any(block)) {
				pass = "";
			}
		}
		return lines;
	}
}
