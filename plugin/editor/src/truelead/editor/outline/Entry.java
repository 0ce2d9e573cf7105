package truelead.editor.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreePath;
import org.eclipse.jface.viewers.TreeSelection;
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

	/** The way to the entry of the block in a line; nothing where the line is before all of them. */
	static IStructuredSelection at(int line, List<Entry> entries) {
		List<Object> path = new ArrayList<>();
		List<Entry> level = entries;
		while (!level.isEmpty()) {
			Entry last = null;
			for (Entry entry : level) {
				last = entry.line <= line && (last == null || entry.line > last.line) ? entry : last;
			}
			if (last == null) {
				break;
			}
			path.add(last);
			level = last.line == line && level != entries ? List.of() : last.below;
		}
		return path.isEmpty() ? StructuredSelection.EMPTY : new TreeSelection(new TreePath(path.toArray()));
	}
}
