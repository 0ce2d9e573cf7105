package truelead.audit.run;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import truelead.audit.data.AcceptListReport;
import truelead.audit.data.JsonReport;
import truelead.audit.data.JunitReport;
import truelead.audit.gauge.GaugeCsvReport;
import truelead.audit.html.HtmlFolder;
import truelead.audit.html.HtmlReport;
import truelead.audit.html.SheetChoice;
import truelead.audit.report.Report;
import truelead.audit.report.ReportFormat;
import truelead.audit.report.TextReport;
import truelead.audit.sarif.SarifReport;
import truelead.audit.terminal.Complaint;
import truelead.checker.rule.Severity;

/**
 * What reports must know of the run, and the making of each.
 *
 * @param baseline   whether there is a baseline
 * @param limit      severity from which findings make the run fail
 * @param gaugeEvery holes between two checks on gauge sheets, 0 for the usual number
 */
public record ReportPlan(boolean baseline, Severity limit, int gaugeEvery) {

	/** Starts a report on a writer. */
	Report report(ReportFormat format, Writer writer) throws IOException {
		return switch (format) {
			case TEXT -> new TextReport(writer);
			case HTML -> new HtmlReport(writer, SheetChoice.AUDIT, gaugeEvery);
			case FIRST_RUN -> new HtmlReport(writer, SheetChoice.FIRST_RUN, gaugeEvery);
			case GAUGE -> new HtmlReport(writer, SheetChoice.GAUGE, gaugeEvery);
			case GAUGE_CSV -> new GaugeCsvReport(writer, gaugeEvery);
			case SARIF -> new SarifReport(writer, baseline);
			case JSON -> new JsonReport(writer);
			case JUNIT -> new JunitReport(writer, limit);
			case ACCEPT_LIST -> new AcceptListReport(writer);
		};
	}

	/** Starts a report in a folder; only pages can be. */
	Report folder(ReportFormat format, Path folder) {
		SheetChoice choice = switch (format) {
			case HTML -> SheetChoice.AUDIT;
			case FIRST_RUN -> SheetChoice.FIRST_RUN;
			case GAUGE -> SheetChoice.GAUGE;
			default -> throw new Complaint("--report " + format.label() + " goes to a file, not to a folder");
		};
		return new HtmlFolder(folder, choice, gaugeEvery);
	}
}
