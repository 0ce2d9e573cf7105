package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** The next tool may be called while one works: it is changed at M6. */
final class NextToolCalled implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls(), program.says('G', 65));
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		List<Integer> changes = new ArrayList<>();
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (Words.has(block, "T") != Words.toolChange(block)) {
				return lines;
			}
			if (Words.toolChange(block)) {
				changes.add(i);
			}
		}
		for (int k = 0; k + 1 < changes.size(); k++) {
			int i = changes.get(k) + 1;
			while (i < changes.get(k + 1) && !Words.says(program.blocks().get(i), 'G', 43)) {
				i++;
			}
			if (i < changes.get(k + 1)) {
				lines.set(i, lines.get(i) + "\nT" + Figures.code(Words.number(program.blocks().get(changes.get(k + 1)), 'T', 0)));
			}
		}
		return lines;
	}
}
