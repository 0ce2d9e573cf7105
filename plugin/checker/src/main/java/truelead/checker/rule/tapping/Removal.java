package truelead.checker.rule.tapping;

import java.util.List;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.grammar.Span;

/** Takes a word out of its block, with the white space before it. */
final class Removal {

	private Removal() {
	}

	static Fix of(WordRef word, boolean safe, String why) {
		String line = word.block().file().text().line(word.block().line());
		int start = word.span().start();
		while (start > 0 && line.charAt(start - 1) <= ' ') {
			start--;
		}
		Location at = new Location(word.block().file(), word.block().line(), new Span(start, word.span().end()));
		return new Fix("Take out " + Figures.written(word), safe, why, List.of(new Edit(at, "")));
	}
}
