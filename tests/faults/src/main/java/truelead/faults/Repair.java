package truelead.faults;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A change of the program that a finding offers: all its replacements together. */
record Repair(String title, List<Replacement> replacements) {

	Repair {
		replacements = List.copyOf(replacements);
	}

	/** Text in place of a range; lines and columns from 1, the last column not included. */
	record Replacement(int line, int column, int endLine, int endColumn, String text) {
	}

	/** The text with the change made. */
	String of(String text) {
		List<Integer> starts = new ArrayList<>(List.of(0));
		for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
			starts.add(at + 1);
		}
		StringBuilder changed = new StringBuilder(text);
		replacements.stream().sorted(Comparator.comparingInt((Replacement r) -> starts.get(r.line() - 1) + r.column()).reversed())
				.forEach(r -> changed.replace(starts.get(r.line() - 1) + r.column() - 1, starts.get(r.endLine() - 1)
						+ r.endColumn() - 1, r.text()));
		return changed.toString();
	}
}
