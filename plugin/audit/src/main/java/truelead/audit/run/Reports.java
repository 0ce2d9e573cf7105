package truelead.audit.run;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import truelead.audit.report.Report;
import truelead.audit.report.ReportRequest;
import truelead.audit.report.Spared;
import truelead.audit.report.WholeFile;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.audit.source.Paths;

/** All reports of a run, filled side by side. A report that cannot be written ends the command with a complaint that names its file. */
public final class Reports implements AutoCloseable {

	private record Open(String name, Report report, Writer writer, WholeFile file) {
	}

	private final List<Open> open = new ArrayList<>();

	private final ReportPlan plan;
	private final Spared spared;

	private Reports(ReportPlan plan, Spared spared) {
		this.plan = plan;
		this.spared = spared;
	}

	/** Opens what was asked for, but over nothing that is spared; {@code output} takes the one report that goes to no file. */
	public static Reports open(List<ReportRequest> requests, PrintStream output, ReportPlan plan, Spared spared) {
		Reports reports = new Reports(plan, spared);
		try {
			for (ReportRequest request : requests) {
				reports.open(request, output);
			}
			return reports;
		} catch (RuntimeException failed) {
			reports.close();
			throw failed;
		}
	}

	private void open(ReportRequest request, PrintStream output) {
		String name = request.file().orElse("standard output");
		try {
			if (request.file().isEmpty()) {
				Writer writer = new BufferedWriter(new OutputStreamWriter(output, StandardCharsets.UTF_8), 1 << 16);
				open.add(new Open(name, plan.report(request.format(), writer), writer, null));
			} else if (request.folder()) {
				open.add(new Open(name, plan.folder(request.format(), Paths.of(name)), Writer.nullWriter(), null));
			} else {
				WholeFile file = WholeFile.at(spared.target(name));
				open.add(new Open(name, plan.report(request.format(), file.writer()), file.writer(), file));
			}
		} catch (IOException failed) {
			throw WholeFile.complaint(name, failed);
		}
	}

	/** The next program, to all reports. */
	public void add(Audited audited) {
		for (Open one : open) {
			try {
				one.report.add(audited);
			} catch (IOException failed) {
				throw WholeFile.complaint(one.name, failed);
			}
		}
	}

	/** Completes all reports. */
	public void finish(Tally tally) {
		for (Open one : open) {
			try {
				one.report.finish(tally);
				one.writer.flush();
				if (one.file != null) {
					one.file.finish();
				}
			} catch (IOException failed) {
				throw WholeFile.complaint(one.name, failed);
			}
		}
	}

	/** Gives up what was not completed. */
	@Override
	public void close() {
		for (Open one : open) {
			try {
				one.report.close();
			} catch (IOException kept) {
				// a temporary file that cannot be removed spoils no report
			}
			if (one.file != null) {
				one.file.close();
			}
		}
	}
}
