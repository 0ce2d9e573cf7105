package truelead.audit.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import truelead.audit.Terminal;
import truelead.audit.report.ReportRequest;
import truelead.audit.report.Reports;
import truelead.audit.source.NamePatterns;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramSearch;
import truelead.audit.source.Source;
import truelead.checker.rule.Severity;

/** One run over files and folders: finds the programs, has them checked, and passes what comes of them to the reports in order. */
final class CheckRun {

	private final Terminal terminal;
	private final Function<Source, Audited> examination;
	private final NamePatterns patterns;
	private final Tally tally;

	CheckRun(Terminal terminal, Function<Source, Audited> examination, Severity limit, NamePatterns patterns) {
		this.terminal = terminal;
		this.examination = examination;
		this.patterns = patterns;
		this.tally = new Tally(limit);
	}

	/** Gives the exit status. */
	int run(List<String> paths, List<ReportRequest> requests) {
		try (Reports reports = Reports.open(requests, terminal.out())) {
			List<Source> sources = sources(paths);
			try (Progress progress = new Progress(terminal, sources.size())) {
				Order.forEach(sources, Runtime.getRuntime().availableProcessors(), examination, audited -> {
					progress.step();
					take(audited, reports);
				});
			}
			reports.finish(tally);
			return tally.status();
		}
	}

	private void take(Audited audited, Reports reports) {
		if (audited instanceof Audited.Refused refused) {
			terminal.complain(refused.source().shown() + ": " + refused.reason());
		}
		tally.add(audited);
		reports.add(audited);
	}

	private List<Source> sources(List<String> paths) {
		List<Source> sources = new ArrayList<>();
		for (String typed : paths) {
			Path path = Paths.of(typed);
			if (!Files.isDirectory(path)) {
				sources.add(new Source(path, typed, size(path)));
				continue;
			}
			List<Source> found = new ProgramSearch(patterns, this::trouble).search(path, typed);
			if (found.isEmpty()) {
				trouble(typed, "no programs in this folder");
			}
			sources.addAll(found);
		}
		return sources;
	}

	private void trouble(String shown, String why) {
		terminal.complain(shown + ": " + why);
		tally.trouble();
	}

	private static long size(Path path) {
		try {
			return Files.size(path);
		} catch (IOException | SecurityException unknown) {
			return 0;
		}
	}
}
