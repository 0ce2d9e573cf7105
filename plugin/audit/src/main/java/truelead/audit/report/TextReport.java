package truelead.audit.report;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import truelead.audit.result.Audited;
import truelead.audit.result.Gone;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;
import truelead.audit.terminal.Printable;
import truelead.checker.program.Location;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** One finding a line, {@code file:line:column severity rule message}, then a summary. Accepted and known findings are only counted. */
public final class TextReport implements Report {

	private final Writer out;

	/** Writes to {@code out}. */
	public TextReport(Writer out) {
		this.out = out;
	}

	@Override
	public void add(Audited audited) throws IOException {
		if (!(audited instanceof Audited.Checked checked)) {
			return;
		}
		for (Judged judged : checked.findings()) {
			if (judged.open()) {
				line(checked, judged.finding());
			}
		}
		for (Gone gone : checked.gone()) {
			line(checked.source().shown() + ": gone since the baseline: line " + gone.line() + " " + severity(gone.severity()) + " "
					+ gone.rule() + " " + gone.message());
		}
	}

	private void line(Audited.Checked program, Finding finding) throws IOException {
		Location at = finding.at();
		line(program.shown(at) + ":" + (at.line() + 1) + ":" + (at.span().start() + 1) + " " + severity(finding.severity()) + " "
				+ finding.rule() + " " + finding.message());
	}

	@Override
	public void finish(Tally tally) throws IOException {
		for (String remark : tally.remarks()) {
			line(remark);
		}
		line("");
		line(many(tally.programs(), "program") + ", " + many(tally.blocks(), "block") + ", "
				+ many(tally.operations(), "threading operation"));
		line(many(tally.count(Severity.ERROR), "error") + ", " + many(tally.count(Severity.WARNING), "warning") + ", "
				+ tally.count(Severity.INFORMATION) + " information; " + tally.notFollowed() + " not followed" + rest(tally));
		if (tally.refused() > 0) {
			line(many(tally.refused(), "file") + " could not be checked");
		}
	}

	private static String rest(Tally tally) {
		return (tally.accepted() > 0 ? ", " + tally.accepted() + " accepted" : "")
				+ (tally.known() > 0 ? ", " + tally.known() + " known from the baseline" : "")
				+ (tally.gone() > 0 ? ", " + tally.gone() + " gone since" : "");
	}

	private void line(String text) throws IOException {
		out.write(Printable.line(text));
		out.write('\n');
	}

	/** The severity in lower case, as in options and reports. */
	static String severity(Severity severity) {
		return severity.name().toLowerCase(Locale.ROOT);
	}

	/** {@code 1 program}, {@code 2 programs}. */
	static String many(long count, String what) {
		return count + " " + what + (count == 1 ? "" : "s");
	}
}
