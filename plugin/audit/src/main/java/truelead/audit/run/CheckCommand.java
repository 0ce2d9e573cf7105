package truelead.audit.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import truelead.audit.report.ReportRequest;
import truelead.audit.report.Spared;
import truelead.audit.result.Examination;
import truelead.audit.source.NamePatterns;
import truelead.audit.source.Paths;
import truelead.audit.terminal.Complaint;
import truelead.audit.terminal.Terminal;
import truelead.checker.rule.Severity;

/** {@code check}: looks for faults in the threads of programs and reports them. */
@Command(name = "check", sortOptions = false,
		description = "Checks programs, or all programs of folders, and reports what is wrong with their threads.",
		footer = {"", "A folder is searched for files with an extension that programs have (.nc .ngc .cnc .tap .eia .mpf and others) "
				+ "and for files without extension and texts (.txt) that begin like a program. A file named here is checked "
				+ "whatever its name.", "",
				"Exit status: 0 nothing at or above the limit; 1 findings; 2 wrong use, or a file could not be read or written; "
				+ "3 something that makes a thread could not be followed, and nothing worse."})
public final class CheckCommand implements Callable<Integer> {

	/** The severity from which findings count where {@code --fail-on} says nothing. */
	static final String USUAL_LIMIT = "warning";

	@Parameters(paramLabel = "PATH", arity = "1..*", description = "Programs and folders; - is a program from standard input.")
	private List<String> paths = new ArrayList<>();

	@Option(names = "--report", paramLabel = "FORMAT[:FILE]", description = {"What to write, and where; may be given several times.",
			"text         lines for people and editors; on standard output where nothing else goes there",
			"html         the whole audit on one page; with a folder (FILE ends in /) an index and a page a program",
			"first-run    the sheet to sign before the first part, HTML", "gauge        the gauge sheet, HTML",
			"gauge-csv    the gauge sheet, CSV",
			"sarif        SARIF 2.1.0, all findings", "json         operations, holes and findings",
			"junit        JUnit-style XML for build servers",
			"accept-list  open findings as lines for --accept, reasons to be filled in"})
	private List<String> reports = new ArrayList<>();

	@Option(names = "--fail-on", paramLabel = "SEVERITY",
			description = "Exit status 1 from this severity on: error, warning or information. Default: warning.")
	private String failOn = USUAL_LIMIT;

	@Mixin
	private JobOptions job = new JobOptions();

	@Option(names = "--rule", paramLabel = "NAME=SEVERITY", description = "Report a rule as error, warning or information, or turn it off.")
	private List<String> rules = new ArrayList<>();

	@Option(names = "--baseline", paramLabel = "FILE",
			description = "An earlier SARIF report: show and count only what is new since, and say what is gone.")
	private Optional<String> baseline = Optional.empty();

	@Option(names = "--accept", paramLabel = "FILE", description = {"Findings accepted outside the programs: CSV with the columns",
			"fingerprint,rule,program,reason,person,date."})
	private Optional<String> accept = Optional.empty();

	@Option(names = "--gauge-every", paramLabel = "N",
			description = "Gauge sheets ask for a check every so many holes, or parts with turned threads. Default by the way "
			+ "of threading.")
	private Optional<Integer> gaugeEvery = Optional.empty();

	@Option(names = "--include", paramLabel = "PATTERN",
			description = "In folders, take only files like this (* ? **), whatever their extension.")
	private List<String> include = new ArrayList<>();

	@Option(names = "--exclude", paramLabel = "PATTERN", description = "In folders, leave out files and folders like this.")
	private List<String> exclude = new ArrayList<>();

	private final Terminal terminal;

	/** A command that writes to that terminal. */
	public CheckCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	/** The same with its plainest options as they were typed. */
	CheckCommand(Terminal terminal, List<String> paths, List<String> reports, String failOn) {
		this(terminal);
		this.paths = List.copyOf(paths);
		this.reports = List.copyOf(reports);
		this.failOn = failOn;
	}

	@Override
	public Integer call() {
		Ahead.start();
		if (gaugeEvery.orElse(1) < 1) {
			throw new Complaint("--gauge-every takes a number of holes from 1, not " + gaugeEvery.get());
		}
		Severity limit = RuleOptions.severity("--fail-on", failOn);
		List<ReportRequest> requests = ReportRequest.all(reports);
		Examination examination = new Examination(job.job(), job.profile(), RuleOptions.settings(rules));
		Spared spared = new Spared(job.files());
		accept.map(Paths::of).ifPresent(spared::add);
		return new CheckRun(terminal, examination, limit, new NamePatterns(include, exclude), gaugeEvery.orElse(0), spared)
				.run(paths, requests, accept, baseline);
	}
}
