package truelead.audit.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.job.Fact;
import truelead.checker.program.LengthUnit;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.work.Work;

/** One program's audit as a part of a page: verdict first, then what was assumed, findings, operations, plan, tools, sheets. */
final class ProgramPart {

	private final int every;
	private final SheetChoice choice;

	/** A gauge check every so many holes, 0 for the usual number. */
	ProgramPart(SheetChoice choice, int every) {
		this.choice = choice;
		this.every = every;
	}

	/** {@code anchor} is unique on the page and of our making. */
	String write(Audited audited, String anchor) {
		Html html = new Html();
		Verdict verdict = Verdict.of(audited);
		html.raw("<section class=\"program\" id=\"" + anchor + "\">").element("h1", "", audited.source().shown());
		if (audited instanceof Audited.Checked checked) {
			ProgramThreads threads = new ProgramThreads(checked.result().work());
			switch (choice) {
				case FIRST_RUN -> new FirstRunPart(checked, threads).write(html);
				case GAUGE -> new GaugePart(checked, every).write(html);
				case AUDIT -> audit(html, checked, threads, verdict, anchor);
			}
		} else {
			verdict.write(html);
		}
		return html.raw("</section>\n").toString();
	}

	private void audit(Html html, Audited.Checked checked, ProgramThreads threads, Verdict verdict, String anchor) {
		FindingsPart findings = new FindingsPart(checked, threads, anchor);
		verdict.write(html);
		findings.brief(html);
		basis(html, checked);
		lost(html, checked);
		findings.write(html);
		new OperationsPart(checked, threads, anchor).write(html);
		new PlansPart(checked).write(html);
		new ToolsPart(checked).write(html);
		if (!threads.isEmpty()) {
			new FirstRunPart(checked, threads).write(html);
			new GaugePart(checked, every).write(html);
		}
	}

	private static void basis(Html html, Audited.Checked checked) {
		Work work = checked.result().work();
		Fact<LengthUnit> unit = work.shop().unit();
		html.raw("<table class=\"numbers basis\">");
		html.row("checked", Verdict.many(work.blocks(), "block") + ", " + Verdict.many(checked.result().operations(), "threading operation")
				+ made(work));
		html.row("unit", (unit.value() == LengthUnit.INCH ? "inch" : "mm") + ", " + unit.origin());
		html.row("machine profile", work.shop().profile().name());
		html.row("stock", work.operations().stream().map(operation -> operation.wanted().stock()).flatMap(Optional::stream).findFirst()
				.map(fact -> fact.value().words() + ", " + fact.origin()).orElse("not stated"));
		html.row("content", "SHA-256 " + checked.sha256().substring(0, Math.min(16, checked.sha256().length())));
		html.raw("</table>\n");
		List<String> assumed = new ArrayList<>(checked.result().assumptions());
		if (!assumed.isEmpty()) {
			html.raw("<h2>Assumed</h2>").list(assumed.stream().distinct().toList());
		}
	}

	/** How many holes are threaded and how many threads turned; of a program that only turns nothing of holes. */
	private static String made(Work work) {
		int turned = work.course().singlePoints().size();
		String holes = ", " + Verdict.many(work.operations().stream().mapToInt(operation -> operation.holes().size()).sum(),
				"threaded hole");
		return (turned > 0 && work.operations().isEmpty() ? "" : holes) + (turned > 0 ? ", " + Verdict.many(turned, "turned thread") : "");
	}

	private static void lost(Html html, Audited.Checked checked) {
		List<Judged> lost = checked.findings().stream().filter(Judged::openNotFollowed).toList();
		if (!lost.isEmpty()) {
			html.raw("<h2>Could not be followed</h2>")
					.list(lost.stream().limit(50).map(judged -> checked.shown(judged.finding().at()) + ", line "
							+ (judged.finding().at().line() + 1) + ": " + judged.finding().message()).toList());
		}
	}
}
