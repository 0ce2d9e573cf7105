package truelead.audit.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import truelead.audit.report.ReportRequest;
import truelead.audit.report.Spared;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.audit.source.NamePatterns;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramBytes;
import truelead.audit.source.ProgramSearch;
import truelead.audit.source.Source;
import truelead.audit.standing.AcceptFile;
import truelead.audit.standing.Baseline;
import truelead.audit.standing.Standing;
import truelead.audit.terminal.Terminal;
import truelead.checker.rule.Severity;

/** One run over files and folders: finds the programs, has them checked, and passes what comes of them to the reports in order. */
final class CheckRun {

	/** What messages call the program that comes from standard input. */
	private static final String STANDARD_INPUT = "stdin";

	private final Terminal terminal;
	private final Function<Source, Audited> examination;
	private final NamePatterns patterns;
	private final Tally tally;
	private final int gaugeEvery;
	private final Spared spared;

	CheckRun(Terminal terminal, Function<Source, Audited> examination, Severity limit, NamePatterns patterns, int gaugeEvery,
			Spared spared) {
		this.spared = spared;
		this.gaugeEvery = gaugeEvery;
		this.terminal = terminal;
		this.examination = examination;
		this.patterns = patterns;
		this.tally = new Tally(limit);
	}

	/** Gives the exit status. */
	int run(List<String> paths, List<ReportRequest> requests, Optional<String> acceptFile, Optional<String> baseline) {
		List<Source> sources = sources(paths);
		List<Standing> standings = new ArrayList<>();
		acceptFile.ifPresent(file -> standings.add(AcceptFile.read(file)));
		baseline.ifPresent(file -> standings.add(Baseline.read(file, sources)));
		sources.forEach(source -> spared.add(source.path()));
		try (Reports reports = Reports.open(requests, terminal.out(), new ReportPlan(baseline.isPresent(), tally.limit(),
				gaugeEvery), spared)) {
			try (Progress progress = new Progress(terminal, sources.size())) {
				new Audit(examination, standings, tally).run(sources, audited -> watch(audited, progress), reports);
			}
			return tally.status();
		}
	}

	private void watch(Audited audited, Progress progress) {
		progress.step();
		if (audited instanceof Audited.Refused refused) {
			terminal.complain(refused.source().shown() + ": " + refused.reason());
		}
	}

	private List<Source> sources(List<String> paths) {
		Map<Path, Source> sources = new LinkedHashMap<>();
		for (String typed : paths) {
			Path path = Paths.of(typed);
			if (!Files.isDirectory(path)) {
				take(ProgramBytes.isStandardInput(path) ? new Source(path, STANDARD_INPUT, 0)
						: new Source(path, typed, size(path)), sources);
				continue;
			}
			List<Source> found = new ProgramSearch(patterns, this::trouble).search(path, typed);
			if (found.isEmpty()) {
				trouble(typed, "no programs in this folder" + (patterns.equals(NamePatterns.NONE) ? ""
						: " that --include and --exclude leave"));
			}
			found.forEach(source -> take(source, sources));
		}
		return new ArrayList<>(sources.values());
	}

	/** A program that is named twice, or by its folder too, is checked once. */
	private static void take(Source source, Map<Path, Source> sources) {
		sources.putIfAbsent(source.path().toAbsolutePath().normalize(), source);
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
