package truelead.forms;

import java.util.List;

/** Lines with nothing in them say nothing. */
final class BlankLines implements Form {

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		for (int i = 2; i < lines.size(); i++) {
			if (Words.any(program.blocks().get(i)) && i % 2 == 0) {
				lines.set(i, lines.get(i) + "\n");
			}
		}
		return lines;
	}
}
