package truelead.audit.compare;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import truelead.audit.html.ComparePage;
import truelead.audit.report.Spared;
import truelead.audit.report.TextRequest;
import truelead.audit.result.Audited;
import truelead.audit.result.Examination;
import truelead.audit.result.Tally;
import truelead.audit.run.JobOptions;
import truelead.audit.source.Paths;
import truelead.audit.source.Source;
import truelead.audit.terminal.Complaint;
import truelead.audit.terminal.Terminal;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;

/** {@code compare}: what a revision changed in the threads of a program. */
@Command(name = "compare", sortOptions = false,
		description = "Compares two states of a program: threading operations that changed and in what, findings that came or went.",
		footer = {"", "Exit status: as that of check on the findings that came; 3 only where something new could not be followed."})
public final class CompareCommand implements Callable<Integer> {

	@Parameters(index = "0", paramLabel = "OLD", description = "The program as it was.")
	private String old = "";

	@Parameters(index = "1", paramLabel = "NEW", description = "The program as it is.")
	private String now = "";

	@Option(names = "--report", paramLabel = "FORMAT[:FILE]",
			description = "text or html. Without a file it goes to standard output. Default: text.")
	private List<String> reports = List.of("text");

	@Mixin
	private JobOptions job = new JobOptions();

	private final Terminal terminal;

	/** A command that writes to that terminal. */
	public CompareCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		List<TextRequest> asked = reports.stream().map(report -> TextRequest.of(report, "text", "html")).toList();
		Spared spared = new Spared(job.files());
		List.of(old, now).forEach(read -> spared.add(Paths.of(read)));
		Examination examination = new Examination(job.job(), job.profile(), RuleSettings.DEFAULT);
		Comparison comparison = Comparison.of(checked(examination, old), checked(examination, now));
		asked.forEach(one -> one.write(one.format().equals("text") ? text(comparison) : page(comparison), terminal, spared));
		Audited.Checked after = comparison.after();
		Tally tally = new Tally(Severity.WARNING);
		tally.add(after.with(comparison.came(), List.of()));
		return tally.status();
	}

	private static String text(Comparison comparison) {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		new CompareText(new PrintStream(bytes, false, StandardCharsets.UTF_8)).write(comparison);
		return bytes.toString(StandardCharsets.UTF_8);
	}

	private static String page(Comparison comparison) {
		ComparePage page = new ComparePage(comparison.before().source().shown(), comparison.after().source().shown());
		page.summary(comparison.operations().size(), comparison.same(), comparison.came(), comparison.went().size());
		for (OperationChange change : comparison.operations()) {
			page.operation(change.kind(), change.name(), change.place(), change.changes(), change.before(), change.after());
		}
		page.findings("Findings that came", comparison.after(), comparison.came());
		page.findings("Findings that went", comparison.before(), comparison.went());
		return page.finish();
	}

	private static Audited.Checked checked(Examination examination, String typed) {
		Audited audited = examination.apply(new Source(Paths.of(typed), typed, 0));
		if (audited instanceof Audited.Refused refused) {
			throw new Complaint(typed + ": " + refused.reason());
		}
		return (Audited.Checked) audited;
	}
}
