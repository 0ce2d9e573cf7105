package truelead.audit.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.source.ContentHash;
import truelead.audit.source.Source;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Related;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** A bracket's program with findings laid on by hand, to test reports apart from the rules. */
public final class Sample {

	/** M6 tapped at F500 where S520 needs F520. */
	public static final String BRACKET = """
			%
			O0600 (BRACKET)
			N10 T5 M6 (TAP M6)
			N20 G90 G54 G0 X10. Y10. S520 M3
			N30 G84 Z-15. R3. F500
			N40 X30.
			N50 G80
			N60 M30
			%
			""";

	private final ProgramFile file;

	private Sample(ProgramFile file) {
		this.file = file;
	}

	public static Sample of(String name, String text) {
		return new Sample(new ProgramFile(name, ProgramText.of(text)));
	}

	/** The place of some text in the program; its first occurrence. */
	public Location at(String words) {
		int offset = file.text().toString().indexOf(words);
		int line = file.text().lineOf(offset);
		int column = offset - file.text().lineStart(line);
		return new Location(file, line, new Span(column, column + words.length()));
	}

	public Finding finding(String rule, Severity severity, String message, String words) {
		return new Finding(rule, severity, message, at(words), List.of(), List.of(), List.of(), -1);
	}

	/** A finding with all that a finding can have. */
	public Finding feedOffPitch() {
		Location feed = at("F500");
		return new Finding("feed-off-pitch", Severity.ERROR,
				"F500 at S520 advances 0.962 mm a turn, M6x1 needs 1.000: 0.46 mm behind after 12 turns; F520",
				feed, List.of(new Related(at("N30 G84 Z-15. R3. F500"), "the cycle"),
						new Related(at("N10 T5 M6 (TAP M6)"), "the tool change")),
				List.of(new Fix("Change F500 to F520", true, "the pitch is called out and S stands", List.of(new Edit(feed, "F520")))),
				List.of(new Evidence("feed", "500 mm/min", "programmed, N30", Optional.of(feed)),
						new Evidence("pitch", "1 mm", "called out, TAP M6", Optional.of(at("TAP M6")))),
				0);
	}

	/** As if the checker had found these. */
	public Audited.Checked with(Finding... findings) {
		return checked(MachineProfile.generic(), findings);
	}

	/** As if the checker had found these on a lathe. */
	public Audited.Checked onALathe(Finding... findings) {
		return checked(MachineProfile.named("turning"), findings);
	}

	private Audited.Checked checked(MachineProfile profile, Finding... findings) {
		CheckResult empty = Checker.check(file, ProgramFolder.EMPTY, Job.EMPTY, profile, RuleSettings.DEFAULT);
		CheckResult result = new CheckResult(List.of(findings), empty.work(), 9, 1, 0, List.of());
		return new Audited.Checked(new Source(Path.of(file.name()), file.name(), file.text().length()), file, ContentHash.known("00ff"),
				result, Judged.all(result.findings()), List.of());
	}
}
