package truelead.editor.outline;

import java.util.List;
import java.util.Optional;
import truelead.checker.rule.Severity;

/**
 * A line of the outline.
 *
 * @param line  line in the program that it stands for, from 0
 * @param worst the worst finding in it or below it; empty where all is well
 */
public record Entry(String text, int line, Optional<Severity> worst, List<Entry> below) {

	public Entry {
		below = List.copyOf(below);
	}
}
