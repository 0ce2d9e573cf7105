package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
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
		List<Integer> starts = outline.programLines();
		if (starts.isEmpty()) {
			return List.of(part(outline, 0, source.lines()));
		}
		List<Part> parts = new ArrayList<>();
		for (int i = 0; i < starts.size(); i++) {
			int from = i == 0 ? 0 : starts.get(i);
			int to = i + 1 < starts.size() ? starts.get(i + 1) : source.lines();
			if (!called(source, starts.get(i), outline)) {
				parts.add(part(outline, from, to));
			}
		}
		return parts.isEmpty() ? List.of(part(outline, 0, outline.programEnd(0))) : parts;
	}

	private static Part part(Outline outline, int from, int to) {
		return new Part(from, to, outline.hasReturn(from, to) && !outline.hasEnd(from, to));
	}

	private static boolean called(Source source, int line, Outline outline) {
		for (Element element : source.file().text().block(line).elements()) {
			if (element instanceof Element.Word word && word.address() == 'O' && word.value() instanceof Expression.Number number) {
				return outline.isCalled((int) number.value());
			}
		}
		return false;
	}
}
