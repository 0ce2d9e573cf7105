package truelead.audit.html;

import java.util.Locale;
import java.util.Optional;
import truelead.checker.program.Location;
import truelead.grammar.ProgramText;

/** Some lines of a program around a place, numbered, the place marked. */
final class Excerpt {

	private static final int AROUND = 2;
	private static final int LONGEST = 160;

	private Excerpt() {
	}

	static void write(Html html, Location at) {
		ProgramText text = at.file().text();
		html.raw("<pre class=\"blocks\">");
		for (int line = Math.max(0, at.line() - AROUND); line <= Math.min(text.lineCount() - 1, at.line() + AROUND); line++) {
			boolean here = line == at.line();
			html.raw(here ? "<b class=\"here\">" : "<span>")
					.element("i", "", String.format(Locale.ROOT, "%5d%s ", line + 1, here ? "\u25b6" : " "));
			line(html, text.line(line), here ? Optional.of(at) : Optional.empty());
			html.raw(here ? "</b>\n" : "</span>\n");
		}
		html.raw("</pre>\n");
	}

	private static void line(Html html, String line, Optional<Location> mark) {
		String shown = line.length() > LONGEST ? line.substring(0, LONGEST) + "\u2026" : line;
		int start = Math.min(mark.map(at -> at.span().start()).orElse(0), shown.length());
		int end = Math.min(mark.map(at -> at.span().end()).orElse(0), shown.length());
		if (end <= start) {
			html.text(shown);
			return;
		}
		html.text(shown.substring(0, start)).element("mark", "", shown.substring(start, end)).text(shown.substring(end));
	}
}
