package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The work of each tool may stand in a subprogram that is called at its change. */
final class ToolsInSubprograms implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.calls());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		List<Integer> changes = new ArrayList<>();
		int end = -1;
		for (int i = 0; i < lines.size(); i++) {
			if (Words.has(program.blocks().get(i), "T") != Words.toolChange(program.blocks().get(i))) {
				return lines;
			}
			if (Words.toolChange(program.blocks().get(i))) {
				changes.add(i);
			}
			end = Words.end(program.blocks().get(i)) ? i : end;
		}
		if (changes.isEmpty() || end < changes.get(changes.size() - 1)) {
			return lines;
		}
		changes.add(end);
		Subprograms works = new Subprograms(program, 9001, "M99");
		for (int k = 0; k + 1 < changes.size(); k++) {
			int first = changes.get(k) + 1;
			int behind = changes.get(k + 1);
			if (titledBefore(program, behind)) {
				return program.lines();
			}
			while (behind > first && !Words.works(program.blocks().get(behind - 1))) {
				behind--; // what stands above the next change speaks of it
			}
			lines.set(first - 1, lines.get(first - 1) + "\nM98 P" + works.of(String.join("\n", lines.subList(first, behind))
					+ "\n(" + k + ")"));
			for (int i = first; i < behind; i++) {
				lines.set(i, null);
			}
		}
		lines.removeIf(line -> line == null);
		return works.behind(lines);
	}

	/** Whether a comment above the way up speaks of the next tool. */
	private static boolean titledBefore(Program program, int change) {
		int line = change - 1;
		while (line > 0 && !Words.works(program.blocks().get(line))) {
			line--;
		}
		for (; line > 0 && !Words.has(program.blocks().get(line), "XYF") && Words.cycle(program.blocks().get(line)) == 0; line--) {
			if (!program.blocks().get(line).comments().isEmpty()) {
				return true;
			}
		}
		return false;
	}
}
