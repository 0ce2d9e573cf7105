package truelead.audit.data;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import truelead.audit.report.Report;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;
import truelead.checker.drawing.Markup;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.sheet.Sheets;
import truelead.checker.sheet.ThreadSheet;

/**
 * XML as build servers read it from JUnit: a suite a program, a case for each thread, in holes or turned, and one for the program itself. A
 * case fails for open findings at or above the limit, and is in error where something could not be followed or read.
 */
public final class JunitReport implements Report {

	private static final int PROGRAM = -1;

	private final Writer out;
	private final Severity limit;

	/** Starts the report on {@code out}; findings from {@code limit} on are failures. */
	public JunitReport(Writer out, Severity limit) throws IOException {
		this.out = out;
		this.limit = limit;
		out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites name=\"truelead\">\n");
	}

	@Override
	public void add(Audited audited) throws IOException {
		String name = Markup.escape(audited.source().shown());
		if (audited instanceof Audited.Refused refused) {
			out.write("<testsuite name=\"" + name
					+ "\" tests=\"1\" failures=\"0\" errors=\"1\" skipped=\"0\" time=\"0\">\n<testcase classname=\"" + name
					+ "\" name=\"program\" time=\"0\"><error message=\"" + Markup.escape(refused.reason())
					+ "\"/></testcase>\n</testsuite>\n");
			return;
		}
		Audited.Checked checked = (Audited.Checked) audited;
		ProgramThreads threads = new ProgramThreads(checked.result().work());
		Map<Integer, List<Judged>> about = new HashMap<>();
		checked.findings().forEach(judged -> about.computeIfAbsent(threads.number(judged.finding()), any -> new ArrayList<>()).add(judged));
		List<Case> cases = new ArrayList<>();
		cases.add(new Case("program", about.getOrDefault(PROGRAM, List.of())));
		for (ThreadSheet sheet : Sheets.all(checked.result().work())) {
			cases.add(new Case("operation " + (sheet.index() + 1) + ": " + sheet.name() + ", " + sheet.tool().name() + ", line "
					+ (sheet.block().outermost().line() + 1), about.getOrDefault(sheet.index(), List.of())));
		}
		out.write("<testsuite name=\"" + name + "\" tests=\"" + cases.size() + "\" failures=\"" + cases.stream().filter(Case::fails).count()
				+ "\" errors=\"" + cases.stream().filter(Case::inError).count() + "\" skipped=\"0\" time=\"0\">\n");
		for (Case one : cases) {
			write(name, checked, one);
		}
		out.write("</testsuite>\n");
	}

	private void write(String suite, Audited.Checked checked, Case one) throws IOException {
		out.write("<testcase classname=\"" + suite + "\" name=\"" + Markup.escape(one.name) + "\" time=\"0\">");
		if (one.fails()) {
			String lines = one.findings.stream().filter(judged -> judged.openAtLeast(limit)).map(judged -> line(checked, judged))
					.collect(Collectors.joining("\n"));
			Judged first = one.findings.stream().filter(judged -> judged.openAtLeast(limit)).findFirst().orElseThrow();
			out.write("<failure type=\"" + Markup.escape(first.finding().rule()) + "\" message=\""
					+ Markup.escape(first.finding().message()) + "\">" + Markup.escape(lines) + "</failure>");
		} else if (one.inError()) {
			Judged first = one.findings.stream().filter(Judged::openNotFollowed).findFirst().orElseThrow();
			out.write("<error type=\"" + Judged.NOT_FOLLOWED + "\" message=\"" + Markup.escape(first.finding().message()) + "\"/>");
		}
		String rest = one.findings.stream().filter(judged -> !judged.openAtLeast(limit)).map(judged -> line(checked, judged))
				.collect(Collectors.joining("\n"));
		out.write(rest.isEmpty() ? "</testcase>\n" : "<system-out>" + Markup.escape(rest) + "</system-out></testcase>\n");
	}

	private static String line(Audited.Checked checked, Judged judged) {
		String standing = judged.acceptance().map(why -> " (accepted: " + why.reason() + ")").orElse(judged.known() ? " (known)" : "");
		return checked.shown(judged.finding().at()) + ":" + (judged.finding().at().line() + 1) + ":"
				+ (judged.finding().at().span().start() + 1) + " " + judged.finding().severity().name().toLowerCase(Locale.ROOT) + " "
				+ judged.finding().rule() + " " + judged.finding().message() + standing;
	}

	@Override
	public void finish(Tally tally) throws IOException {
		out.write("</testsuites>\n");
	}

	private final class Case {

		private final String name;
		private final List<Judged> findings;

		Case(String name, List<Judged> findings) {
			this.name = name;
			this.findings = findings;
		}

		boolean fails() {
			return findings.stream().anyMatch(judged -> judged.openAtLeast(limit));
		}

		boolean inError() {
			return !fails() && findings.stream().anyMatch(Judged::openNotFollowed);
		}
	}
}
