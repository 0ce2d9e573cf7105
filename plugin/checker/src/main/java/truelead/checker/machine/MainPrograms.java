package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Which programs of a file are run for themselves: all but those that another one calls. */
final class MainPrograms {

	/**
	 * A program of a file.
	 *
	 * @param from  first line
	 * @param to    line behind its last one
	 * @param alone whether it is a subprogram that nothing here calls, so that the state at its start is not known
	 */
	record Part(int from, int to, boolean alone) {
	}

	private MainPrograms() {
	}

	static List<Part> of(Source source) {
		Outline outline = source.outline();
		List<Part> parts = new ArrayList<>();
		TreeSet<Integer> starts = new TreeSet<>(outline.programLines());
		starts.addAll(outline.unnumberedLines());
		if (!starts.isEmpty() && !outline.hasEnd(0, starts.first())) {
			starts.pollFirst();
		}
		starts.add(0);
		for (int start : starts) {
			Integer next = starts.higher(start);
			int to = next == null ? source.lines() : next;
			if (!called(source, start, to, outline)) {
				parts.add(part(outline, start, to));
			}
		}
		if (parts.isEmpty()) {
			parts.add(part(outline, 0, outline.programEnd(0)));
		}
		outline.uncalledSubs().forEach(sub -> parts.add(new Part(sub.line() + 1, outline.programEnd(sub.line()), true)));
		return parts;
	}

	private static Part part(Outline outline, int from, int to) {
		return new Part(from, to, outline.hasReturn(from, to) && !outline.hasEnd(from, to));
	}

	private static boolean called(Source source, int from, int to, Outline outline) {
		return outline.programLines().stream().filter(line -> line >= from && line < to).findFirst()
				.map(line -> source.file().text().block(line).elements().stream().anyMatch(element -> element instanceof Element.Word word
						&& word.address() == 'O' && word.value() instanceof Expression.Number number && outline.isCalled((int) number.value())))
				.orElse(false);
	}
}
