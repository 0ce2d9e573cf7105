package truelead.audit.html;

import java.util.ArrayList;
import java.util.List;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;
import truelead.checker.rule.Severity;

/** The list of programs with a verdict each; only a line a program is kept. */
final class IndexPart {

	private record Row(String link, String shown, Verdict verdict, int operations, long errors, long warnings, long information) {
	}

	private static final List<String> HEADS = List.of("program", "verdict", "threading operations", "errors", "warnings", "information");

	private final List<Row> rows = new ArrayList<>();

	/** {@code link} is of our making. */
	void add(Audited audited, String link) {
		List<Judged> open = audited instanceof Audited.Checked checked ? checked.findings().stream().filter(Judged::open).toList()
				: List.of();
		rows.add(new Row(link, audited.source().shown(), Verdict.of(audited), audited instanceof Audited.Checked checked
				? checked.result().operations() : 0, count(open, Severity.ERROR), count(open, Severity.WARNING),
				count(open, Severity.INFORMATION)));
	}

	private static long count(List<Judged> open, Severity severity) {
		return open.stream().filter(judged -> judged.finding().severity() == severity).count();
	}

	int size() {
		return rows.size();
	}

	String write(Tally tally) {
		Html html = new Html();
		html.raw("<section class=\"index\">").element("h1", "", Verdict.many(rows.size(), "program"));
		html.element("p", "", Verdict.many(tally.count(Severity.ERROR), "error") + ", " + Verdict.many(tally.count(Severity.WARNING),
				"warning") + ", " + tally.notFollowed() + " not followed, in " + Verdict.many(tally.operations(),
						"threading operation") + ".");
		html.raw("<div class=\"wide\"><table class=\"list\">").heads(HEADS);
		for (Row row : rows) {
			html.raw("<tr><td><a href=\"" + row.link + "\">").text(row.shown).raw("</a></td><td class=\"" + row.verdict.kind() + "\">")
					.text(row.verdict.sign() + " " + row.verdict.words()).raw("</td>");
			long[] counts = {row.operations, row.errors, row.warnings, row.information};
			for (int i = 0; i < counts.length; i++) {
				// on a telephone the heads stand beside the numbers
				html.element("td", "data-is=\"" + HEADS.get(i + 2) + "\"", "" + counts[i]);
			}
			html.raw("</tr>\n");
		}
		return html.raw("</table></div></section>\n").toString();
	}
}
