package truelead.audit.data;

import java.io.IOException;
import java.io.Writer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import truelead.audit.report.Report;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;
import truelead.audit.standing.AcceptFile;

/** Open findings as lines of an accept file; reason, person and date are left for whoever answers for it. */
public final class AcceptListReport implements Report {

	private final CSVPrinter csv;

	/** Starts the list on {@code out}. */
	public AcceptListReport(Writer out) throws IOException {
		csv = new CSVPrinter(out, CSVFormat.RFC4180);
		csv.printRecord(AcceptFile.COLUMNS);
	}

	@Override
	public void add(Audited audited) throws IOException {
		if (audited instanceof Audited.Checked checked) {
			for (Judged judged : checked.findings()) {
				if (judged.open()) {
					csv.printRecord(judged.fingerprint(), judged.finding().rule(), AcceptFile.written(checked.file().name()), "", "", "");
				}
			}
		}
	}

	@Override
	public void finish(Tally tally) throws IOException {
		csv.flush();
	}
}
