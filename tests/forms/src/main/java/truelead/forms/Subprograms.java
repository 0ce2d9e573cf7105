package truelead.forms;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Blocks that a form puts into subprograms: a number of its own for each text, and the program with them behind its end. */
final class Subprograms {

	private final Map<String, Integer> numbers = new LinkedHashMap<>();
	private final int first;
	private final String last;

	/** Subprograms of a program, numbered from here on where it has no such numbers itself, each ended by a block. */
	Subprograms(Program program, int first, String last) {
		this.first = program.blocks().stream().anyMatch(block -> Words.number(block, 'O', 0) >= first && Words.number(block, 'O', 0) < first
				+ 500) ? first - 500 : first;
		this.last = last;
	}

	/** The number of the subprogram of these blocks. */
	int of(String blocks) {
		return numbers.computeIfAbsent(blocks, text -> first + numbers.size());
	}

	/** The program's lines and behind them, before the percent sign of its end, the subprograms. */
	List<String> behind(List<String> lines) {
		if (numbers.isEmpty()) {
			return lines;
		}
		List<String> all = new ArrayList<>(lines);
		boolean percent = false;
		while (!all.isEmpty() && (all.get(all.size() - 1).isBlank() || all.get(all.size() - 1).strip().equals("%"))) {
			percent |= !all.remove(all.size() - 1).isBlank();
		}
		numbers.forEach((text, number) -> all.add("O" + number + "\n" + text + "\n" + last));
		if (percent) {
			all.add("%");
		}
		all.add("");
		return all;
	}
}
