package truelead.audit.gauge;

import java.io.IOException;
import java.io.Writer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import truelead.audit.report.Report;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.audit.terminal.Printable;

/** The gauge sheet as a table (RFC 4180, UTF-8), a row a thread, with empty columns for what was measured. */
public final class GaugeCsvReport implements Report {

	private final CSVPrinter csv;
	private final int every;

	/** Starts the table on {@code out}; a check every so many holes or parts, 0 for the usual number. */
	public GaugeCsvReport(Writer out, int every) throws IOException {
		this.every = every;
		csv = new CSVPrinter(out, CSVFormat.RFC4180);
		csv.printRecord("program", "thread", "tool", "number", "measured", "go", "no-go", "thread gauge", "depth", "countersink or chamfer",
				"check", "source", "result", "checked by", "date");
	}

	@Override
	public void add(Audited audited) throws IOException {
		if (audited instanceof Audited.Checked checked) {
			for (GaugeRow row : GaugeRow.of(checked.result().work(), every)) {
				csv.printRecord(Printable.field(checked.source().shown()), Printable.field(row.thread()), Printable.field(row.tool()),
						row.number(), row.gauges().measured(), row.gauges().go(), row.gauges().noGo(),
						Printable.field(row.gauges().thread()), row.depth(), row.gauges().edge(), row.interval(),
						row.gauges().source(), "", "", "");
			}
		}
	}

	@Override
	public void finish(Tally tally) throws IOException {
		csv.flush();
	}
}
