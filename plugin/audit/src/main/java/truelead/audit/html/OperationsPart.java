package truelead.audit.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.drawing.Ink;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.SheetFigures;

/** Every threading operation, passed ones too: thread, tool, speed, feed, depths, and what is left between what is and what must be. */
final class OperationsPart {

	private static final int MOST = 200;
	private static final int MOST_HOLES = 60;

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
		Figures figures = new Figures(sheet.unit());
		html.raw("<article class=\"operation\" id=\"" + anchor + "-op" + (sheet.index() + 1) + "\"><h3>")
				.text((sheet.index() + 1) + ". " + sheet.name() + ", " + sheet.tool().name() + ", " + Verdict.many(sheet.holes().size(), "hole")).raw(" <span class=\"state\">")
				.text(state(sheet)).raw("</span></h3>\n<div class=\"beside\"><table class=\"numbers\">");
		SheetFigures.of(sheet).forEach(figure -> html.row(figure.name(), figure.value()));
		html.raw("</table>");
		Drawings.of(sheet, Ink.OF_PAGE).ifPresent(one -> html.raw("<figure>" + one.svg() + "<figcaption>").text(one.text()).raw("</figcaption></figure>\n"));
		html.raw("</div>\n");
		html.list(sheet.notKnown().stream().map(why -> "Not known: " + why).toList());
		holes(html, sheet, figures);
		html.raw("</article>\n");
	}

	private void holes(Html html, OperationSheet sheet, Figures figures) {
		html.raw("<div class=\"wide\"><table class=\"list\">").heads(
				List.of("hole", "made by", "diameter", "full to", "end of tool", "clear below", "full thread", "over the depth called out", "R above"));
		for (HoleSheet hole : sheet.holes().subList(0, Math.min(MOST_HOLES, sheet.holes().size()))) {
			html.cells(List.of(hole.label(), hole.made() ? hole.maker() : "nothing in this program", length(figures, hole.drill()), length(figures, hole.drillFull()),
					length(figures, hole.tip()), sheet.through().orElse(false) ? "through" : margin(figures, hole.clearance()), length(figures, hole.fullThread()),
					margin(figures, hole.fullThread() - sheet.called()), length(figures, hole.start())));
		}
		html.raw("</table></div>\n");
		if (sheet.holes().size() > MOST_HOLES) {
			html.element("p", "class=\"cut\"", "Only the first " + MOST_HOLES + " of " + sheet.holes().size() + " holes are shown here; the JSON report has all.");
		}
	}

	private String state(OperationSheet sheet) {
		List<Judged> about = program.findings().stream().filter(judged -> judged.open() && judged.finding().operation() == sheet.index()).toList();
		List<String> parts = new ArrayList<>();
		for (Severity severity : Severity.values()) {
			long count = about.stream().filter(judged -> judged.finding().severity() == severity).count();
			if (count > 0 && severity != Severity.INFORMATION) {
				parts.add(Verdict.many(count, severity.name().toLowerCase(Locale.ROOT)));
			}
		}
		if (!sheet.notKnown().isEmpty()) {
			parts.add("not all of it checked");
		}
		return parts.isEmpty() ? "\u2714 nothing found" : (about.stream().anyMatch(judged -> judged.finding().severity() == Severity.ERROR) ? "\u2716 " : "\u25b2 ")
				+ String.join(", ", parts);
	}

	private static String length(Figures figures, double mm) {
		return Double.isNaN(mm) ? "?" : figures.length(mm);
	}

	private static String margin(Figures figures, double mm) {
		return Double.isNaN(mm) ? "?" : (mm < -1e-9 ? "\u2716 " : "") + signed(figures.length(mm), mm);
	}

	private static String signed(String shown, double value) {
		return value > 0 && !shown.startsWith("0 ") ? "+" + shown : shown;
	}
}
