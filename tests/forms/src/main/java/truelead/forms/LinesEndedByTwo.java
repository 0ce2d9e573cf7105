package truelead.forms;

import java.util.List;

/** A line ends by a line feed, with a carriage return before it or without. */
final class LinesEndedByTwo implements Form {

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		for (int i = 0; i + 1 < lines.size(); i++) {
			lines.set(i, lines.get(i) + "\r");
		}
		return lines;
	}
}
