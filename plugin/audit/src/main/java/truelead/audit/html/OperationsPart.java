package truelead.audit.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.drawing.Ink;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.sheet.SheetFigures;
import truelead.checker.sheet.ThreadSheet;

/** Every threading operation, passed ones too: thread, tool, speed, feed, depths, and what is left between what is and what must be. */
final class OperationsPart {

	private static final int MOST = 200;

	private final ProgramThreads threads;
	private final String anchor;
	/** The open findings by the number of the thread that they are about. */
	private final Map<Integer, List<Judged>> open = new HashMap<>();

	OperationsPart(Audited.Checked program, ProgramThreads threads, String anchor) {
		this.threads = threads;
		program.findings().stream().filter(Judged::open)
				.forEach(judged -> open.computeIfAbsent(threads.number(judged.finding()), any -> new ArrayList<>()).add(judged));
		this.anchor = anchor;
	}

	void write(Html html) {
		html.raw("<h2>Threading operations</h2>\n");
		List<List<ThreadSheet>> shown = alike();
		if (shown.isEmpty()) {
			html.raw("<p>None.</p>\n");
		}
		shown.stream().limit(MOST).forEach(same -> card(html, same.get(0), same.size()));
		if (shown.size() > MOST) {
			html.element("p", "class=\"cut\"", "Only the first " + MOST + " of " + shown.size()
					+ " operations are shown here; the JSON report has all.");
		}
	}

	/** Each operation, and turned threads with the same numbers by the same blocks, such as those of a loop over parts, together. */
	private List<List<ThreadSheet>> alike() {
		List<List<ThreadSheet>> all = new ArrayList<>();
		threads.operations().forEach(sheet -> all.add(List.of(sheet)));
		Map<List<SheetFigures.Figure>, List<ThreadSheet>> turned = new LinkedHashMap<>();
		threads.turned().forEach(sheet -> turned.computeIfAbsent(SheetFigures.of(sheet), any -> new ArrayList<>()).add(sheet));
		all.addAll(turned.values());
		return all;
	}

	private void card(Html html, ThreadSheet sheet, int times) {
		html.raw("<article class=\"operation\" id=\"" + anchor + "-op" + (sheet.index() + 1) + "\"><h3>")
				.text((sheet.index() + 1) + ". " + sheet.name() + ", " + sheet.tool().name() + ", " + where(sheet)
						+ (times > 1 ? ", " + times + " times" : "")).raw(" <span class=\"state\">").text(state(sheet))
				.raw("</span></h3>\n<div class=\"beside\"><table class=\"numbers\">");
		SheetFigures.of(sheet).forEach(figure -> html.row(figure.name(), figure.value()));
		html.raw("</table>");
		Drawings.of(sheet, Ink.OF_PAGE).ifPresent(one -> html.raw("<figure>" + one.svg() + "<figcaption>").text(one.text())
				.raw("</figcaption></figure>\n"));
		html.raw("</div>\n");
		if (sheet instanceof OperationSheet operation) {
			html.list(operation.notKnown().stream().map(why -> "Not known: " + why).toList());
			new HolesTable(operation).write(html);
		}
		html.raw("</article>\n");
	}

	private static String where(ThreadSheet sheet) {
		return sheet instanceof OperationSheet operation ? Verdict.many(operation.holes().size(), "hole") : sheet.method();
	}

	private String state(ThreadSheet sheet) {
		List<Judged> about = open.getOrDefault(sheet.index(), List.of());
		List<String> parts = new ArrayList<>(about.isEmpty() ? List.of() : List.of(Verdict.counted(about)));
		if (notKnown(sheet)) {
			parts.add("not all of it checked");
		}
		return sign(about, sheet) + (parts.isEmpty() ? "nothing found" : String.join(", ", parts));
	}

	private static boolean notKnown(ThreadSheet sheet) {
		return sheet instanceof OperationSheet operation && !operation.notKnown().isEmpty();
	}

	private static String sign(List<Judged> about, ThreadSheet sheet) {
		Severity worst = about.stream().map(judged -> judged.finding().severity()).min(Comparator.naturalOrder())
				.orElse(Severity.INFORMATION);
		return switch (worst) {
			case ERROR, WARNING -> Verdict.sign(worst) + " ";
			case INFORMATION -> notKnown(sheet) ? Verdict.sign(Severity.WARNING) + " " : "\u2714 ";
		};
	}
}
