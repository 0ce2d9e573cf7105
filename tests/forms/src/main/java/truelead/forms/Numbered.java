package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** Block numbers with gaps say nothing where nothing jumps to one. */
final class Numbered implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.says('M', 97, 99), program.turnedContours());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		int number = 100;
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (Words.any(block) && !Words.head(block) && block.elements().get(0) instanceof Element.Word) {
				number += number % 3 == 0 ? 15 : 5;
				lines.set(i, "N" + number + " " + Words.without(block, word -> word.address() == 'N').strip());
			}
		}
		return lines;
	}
}
