package truelead.audit.html;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.drawing.Ink;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.ThreadSheet;

/** A page that tells what a revision changed. */
public final class ComparePage {

	private final Html html = new Html();

	/** Starts the page with the names of the two programs. */
	public ComparePage(String before, String after) {
		html.raw(Page.head("Comparison: " + after)).element("h1", "", before + " \u2192 " + after);
	}

	/** The verdict: how much is different, as grave as the findings that came. */
	public void summary(int different, int same, List<Judged> came, int went) {
		String words = different == 0 ? "The threads are the same" : Verdict.many(different, "threading operation") + " different";
		String alike = different == 0 ? Verdict.many(same, "threading operation") : same + " the same";
		String why = alike + (came.isEmpty() && went == 0 ? ", no finding came or went." : ". " + Verdict.many(came.size(), "finding")
				+ " came" + (came.isEmpty() ? "" : ": " + Verdict.counted(came)) + "; " + Verdict.many(went, "finding") + " went.");
		boolean bad = came.stream().anyMatch(judged -> judged.finding().severity() == Severity.ERROR);
		boolean look = different > 0 || !came.isEmpty();
		new Verdict(bad ? "bad" : look ? "look" : "good", bad ? Verdict.sign(Severity.ERROR) : look ? Verdict.sign(Severity.WARNING) : "=",
				words, why).write(html);
	}

	/** One operation; {@code changes} are clauses. */
	public void operation(String kind, String name, String place, List<String> changes, Optional<ThreadSheet> before,
			Optional<ThreadSheet> after) {
		html.raw("<article class=\"operation\"><h3><span class=\"level\">").text(kind).raw("</span> ").text(name + ", " + place)
				.raw("</h3>\n").list(changes);
		html.raw("<div class=\"beside\">");
		figure("then", before);
		figure("now", after);
		html.raw("</div></article>\n");
	}

	private void figure(String when, Optional<ThreadSheet> sheet) {
		sheet.flatMap(shown -> Drawings.of(shown, Ink.OF_PAGE)).ifPresent(one -> html.raw("<figure>" + one.svg() + "<figcaption>")
				.text(when + ": " + one.text()).raw("</figcaption></figure>\n"));
	}

	/** A list of findings; nothing for none. */
	public void findings(String title, Audited.Checked program, List<Judged> findings) {
		if (findings.isEmpty()) {
			return;
		}
		html.element("h2", "", title);
		for (Judged judged : findings) {
			String severity = judged.finding().severity().name().toLowerCase(Locale.ROOT);
			html.raw("<article class=\"finding " + severity + "\"><h3><span class=\"level\">" + Verdict.sign(judged.finding().severity())
					+ " " + severity + "</span> ").element("code", "", judged.finding().rule()).raw("</h3>")
					.element("p", "class=\"message\"", judged.finding().message())
					.element("p", "class=\"place\"", program.shown(judged.finding().at()) + ", line " + (judged.finding().at().line() + 1));
			Excerpt.write(html, judged.finding().at());
			html.raw("</article>\n");
		}
	}

	/** The whole page. */
	public String finish() {
		return html + Page.foot();
	}
}
