package truelead.audit.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.drawing.Ink;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.SheetFigures;

/** Every threading operation, passed ones too: thread, tool, speed, feed, depths, and what is left between what is and what must be. */
final class OperationsPart {

	private static final int MOST = 200;

	private final Audited.Checked program;
	private final List<OperationSheet> sheets;
	private final String anchor;

	OperationsPart(Audited.Checked program, List<OperationSheet> sheets, String anchor) {
		this.program = program;
		this.sheets = sheets;
		this.anchor = anchor;
	}

	void write(Html html) {
		html.raw("<h2>Threading operations</h2>\n");
		if (sheets.isEmpty()) {
			html.raw("<p>None.</p>\n");
		}
		sheets.stream().limit(MOST).forEach(sheet -> card(html, sheet));
		if (sheets.size() > MOST) {
			html.element("p", "class=\"cut\"", "Only the first " + MOST + " of " + sheets.size() + " operations are shown here; the JSON report has all.");
		}
	}

	private void card(Html html, OperationSheet sheet) {
		html.raw("<article class=\"operation\" id=\"" + anchor + "-op" + (sheet.index() + 1) + "\"><h3>")
				.text((sheet.index() + 1) + ". " + sheet.name() + ", " + sheet.tool().name() + ", " + Verdict.many(sheet.holes().size(), "hole")).raw(" <span class=\"state\">")
				.text(state(sheet)).raw("</span></h3>\n<div class=\"beside\"><table class=\"numbers\">");
		SheetFigures.of(sheet).forEach(figure -> html.row(figure.name(), figure.value()));
		html.raw("</table>");
		Drawings.of(sheet, Ink.OF_PAGE).ifPresent(one -> html.raw("<figure>" + one.svg() + "<figcaption>").text(one.text()).raw("</figcaption></figure>\n"));
		html.raw("</div>\n");
		html.list(sheet.notKnown().stream().map(why -> "Not known: " + why).toList());
		new HolesTable(sheet).write(html);
		html.raw("</article>\n");
	}

	private String state(OperationSheet sheet) {
		List<Judged> about = program.findings().stream().filter(judged -> judged.open() && judged.finding().operation() == sheet.index()).toList();
		List<String> parts = new ArrayList<>(about.isEmpty() ? List.of() : List.of(Verdict.counted(about)));
		if (!sheet.notKnown().isEmpty()) {
			parts.add("not all of it checked");
		}
		return sign(about, sheet) + (parts.isEmpty() ? "nothing found" : String.join(", ", parts));
	}

	private static String sign(List<Judged> about, OperationSheet sheet) {
		Severity worst = about.stream().map(judged -> judged.finding().severity()).min(Comparator.naturalOrder()).orElse(Severity.INFORMATION);
		return switch (worst) {
			case ERROR, WARNING -> Verdict.sign(worst) + " ";
			case INFORMATION -> sheet.notKnown().isEmpty() ? "\u2714 " : Verdict.sign(Severity.WARNING) + " ";
		};
	}
}
