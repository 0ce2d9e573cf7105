package truelead.audit.html;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.audit.result.Audited;
import truelead.audit.result.Gone;
import truelead.audit.result.Judged;
import truelead.checker.drawing.Drawing;
import truelead.checker.drawing.Ink;
import truelead.checker.lesson.Lessons;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Related;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.sheet.ThreadSheet;

/** The findings of a program, worst first, each with its block, its numbers and what to type. */
final class FindingsPart {

	private static final int MOST = 300;
	private static final int BRIEF = 8;

	private final Audited.Checked program;
	private final ProgramThreads threads;
	private final String anchor;

	FindingsPart(Audited.Checked program, ProgramThreads threads, String anchor) {
		this.program = program;
		this.threads = threads;
		this.anchor = anchor;
	}

	void write(Html html) {
		List<Judged> open = program.findings().stream().filter(Judged::open)
				.sorted(Comparator.comparing((Judged judged) -> judged.finding().severity())).toList();
		html.raw("<h2>Findings</h2>\n");
		if (open.isEmpty()) {
			html.raw("<p>None.</p>\n");
		}
		open.stream().limit(MOST).forEach(judged -> card(html, judged));
		if (open.size() > MOST) {
			html.element("p", "class=\"cut\"", "Only the first " + MOST + " of " + open.size()
					+ " findings are shown here; the text and SARIF reports have all.");
		}
		accepted(html);
		gone(html);
	}

	/** The worst in a line each, for those who read no further. */
	void brief(Html html) {
		List<Judged> worst = program.findings().stream()
				.filter(judged -> judged.open() && judged.finding().severity() != Severity.INFORMATION)
				.sorted(Comparator.comparing((Judged judged) -> judged.finding().severity())).toList();
		if (worst.isEmpty()) {
			return;
		}
		html.raw("<ol class=\"brief\">");
		for (Judged judged : worst.subList(0, Math.min(BRIEF, worst.size()))) {
			html.raw("<li>" + Verdict.sign(judged.finding().severity()) + " <a href=\"#" + anchor + "-f"
					+ (program.findings().indexOf(judged) + 1) + "\">line ")
					.text((judged.finding().at().line() + 1) + made(judged.finding())).raw("</a> ").text(judged.finding().message())
					.raw("</li>\n");
		}
		html.raw("</ol>\n").raw(worst.size() > BRIEF ? "<p>and " + (worst.size() - BRIEF) + " more</p>" : "");
	}

	/** Which tool makes which thread there: what a person at the machine looks for first. */
	private String made(Finding finding) {
		return threads.about(finding).map(sheet -> ", " + sheet.tool().name() + " " + sheet.name()).orElse("");
	}

	private void card(Html html, Judged judged) {
		Finding finding = judged.finding();
		String severity = finding.severity().name().toLowerCase(Locale.ROOT);
		html.raw("<article class=\"finding " + severity + "\" id=\"" + anchor + "-f" + (program.findings().indexOf(judged) + 1)
				+ "\"><h3><span class=\"level\">" + Verdict.sign(finding.severity()) + " " + severity + "</span> ")
				.element("code", "", finding.rule()).raw("</h3>\n").element("p", "class=\"message\"", finding.message());
		html.element("p", "class=\"place\"", program.shown(finding.at()) + ", line " + (finding.at().line() + 1) + made(finding));
		Excerpt.write(html, finding.at());
		for (Fix fix : finding.fixes()) {
			html.raw("<p class=\"fix\"><strong>").text(fix.title() + elsewhere(fix, finding)).raw("</strong>")
					.text(fix.safe() ? " \u2013 safe to take: " : " \u2013 look first: ").text(fix.why()).raw("</p>\n");
		}
		html.raw("<div class=\"beside\">");
		evidence(html, finding);
		drawing(html, finding);
		html.raw("</div>");
		lesson(html, finding);
		html.element("p", "class=\"mark\"", "to accept it: " + judged.fingerprint() + "," + finding.rule() + "," + program.file().name()
				+ ",reason,person,date").raw("</article>\n");
	}

	/** Where to type it, if that is not the line of the finding. */
	private String elsewhere(Fix fix, Finding finding) {
		List<String> lines = fix.edits().stream().map(Edit::at).filter(at -> at.line() != finding.at().line()
				|| at.file() != finding.at().file()).map(at -> "line " + (at.line() + 1) + (at.file() == finding.at().file() ? ""
						: " of " + program.shown(at))).distinct().toList();
		return lines.isEmpty() ? "" : " in " + String.join(", ", lines);
	}

	/** What to type to see why, with the finding's own numbers. */
	private void lesson(Html html, Finding finding) {
		boolean here = finding.at().file().name().equals(program.file().name());
		Lessons.of(finding.rule(), threads.about(finding)).filter(lesson -> here)
				.ifPresent(lesson -> html.element("p", "class=\"mark\"", "to see why, with these numbers to move: lesson " + lesson.name()
						+ " --from \"" + program.shown(finding.at()) + ":" + (finding.at().line() + 1) + "\" --out why.html"));
	}

	private void evidence(Html html, Finding finding) {
		if (finding.evidence().isEmpty() && finding.related().isEmpty()) {
			return;
		}
		html.raw("<table class=\"numbers\"><caption>Numbers and where they come from</caption>");
		for (Evidence evidence : finding.evidence()) {
			String where = evidence.at().map(at -> ", line " + (at.line() + 1)).orElse("");
			html.raw("<tr>").element("th", "scope=\"row\"", evidence.name()).element("td", "", evidence.value())
					.element("td", "", evidence.origin() + where).raw("</tr>");
		}
		List<String> said = finding.evidence().stream().filter(evidence -> evidence.at().isPresent()).map(Evidence::name).toList();
		for (Related related : finding.related()) {
			if (said.contains(related.what())) {
				continue;
			}
			String line = related.at().line() < related.at().file().text().lineCount()
					? related.at().file().text().line(related.at().line()).strip() : "";
			html.raw("<tr>").element("th", "scope=\"row\"", related.what()).raw("<td colspan=\"2\">")
					.text("line " + (related.at().line() + 1) + " ").element("code", "", line.length() > 80 ? line.substring(0, 80)
							+ "\u2026" : line).raw("</td></tr>");
		}
		html.raw("</table>\n");
	}

	private void drawing(Html html, Finding finding) {
		Optional<ThreadSheet> about = threads.about(finding).filter(sheet -> finding.severity() != Severity.INFORMATION);
		if (about.isPresent()) {
			ThreadSheet sheet = about.get();
			Optional<Drawing> drawing = Drawings.of(finding, sheet, Ink.OF_PAGE);
			drawing.ifPresent(one -> html.raw("<figure>" + one.svg() + "<figcaption>").text(one.text()).raw("</figcaption></figure>\n"));
			html.raw("</div><div><p class=\"more\">numbers of <a href=\"#" + anchor + "-op" + (sheet.index() + 1) + "\">")
					.text("operation " + (sheet.index() + 1) + ": " + sheet.name()).raw("</a></p>\n");
		}
	}

	private void accepted(Html html) {
		List<Judged> accepted = program.findings().stream().filter(judged -> judged.acceptance().isPresent()).toList();
		if (accepted.isEmpty()) {
			return;
		}
		html.raw("<h3>Accepted</h3><table class=\"list\">").heads(List.of("line", "rule", "finding", "reason", "by, when"));
		for (Judged judged : accepted) {
			var why = judged.acceptance().orElseThrow();
			html.cells(List.of("" + (judged.finding().at().line() + 1), judged.finding().rule(), judged.finding().message(), why.reason(),
					why.inProgram() ? "note in the program" : (why.person() + " " + why.date()).strip()));
		}
		html.raw("</table>\n");
	}

	private void gone(Html html) {
		if (!program.gone().isEmpty()) {
			html.raw("<h3>Gone since the baseline</h3><table class=\"list\">").heads(List.of("line then", "severity", "rule", "finding"));
			for (Gone gone : program.gone()) {
				html.cells(List.of("" + gone.line(), gone.severity().name().toLowerCase(Locale.ROOT), gone.rule(), gone.message()));
			}
			html.raw("</table>\n");
		}
	}
}
