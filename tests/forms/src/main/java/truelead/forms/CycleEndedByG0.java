package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** G0 ends a canned cycle as G80 does. */
final class CycleEndedByG0 implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		for (int i = 0; i + 1 < lines.size(); i++) {
			Block next = program.blocks().get(i + 1);
			if (Words.says(program.blocks().get(i), 'G', 80) && Words.only(program.blocks().get(i), "G")
					&& program.blocks().get(i).words().stream().filter(w -> w.address() == 'G').count() == 1
					&& program.blocks().get(i).comments().isEmpty() && Words.says(next, 'G', 0) && !Words.call(next)) {
				lines.set(i, null);
			}
		}
		lines.removeIf(line -> line == null);
		return lines;
	}
}
