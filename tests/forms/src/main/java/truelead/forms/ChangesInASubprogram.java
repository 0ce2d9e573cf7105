package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** The tool change may stand in a subprogram that all changes call. */
final class ChangesInASubprogram implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.numbersTwice());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		Subprograms change = new Subprograms(program, 7000, "M99");
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (Words.toolChange(block) && Words.only(block, "TM") && Words.has(block, "T")) {
				int number = change.of("M6");
				lines.set(i, Words.without(block, word -> Words.toolChange(block) && word.address() == 'M') + "\nM98 P" + number);
			}
		}
		return change.behind(lines);
	}
}
