package truelead.checker.rule;

import java.util.List;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.grammar.ProgramText;

/** Checks a sample as a program of its own, with the job facts it carries in its own notes. */
final class SampleCheck {

	private SampleCheck() {
	}

	/** What is found in a program on a metric mill. */
	static List<Finding> of(String program) {
		return Checker.check(new ProgramFile("SAMPLE.NC", ProgramText.of(program)), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.named("milling-metric"), RuleSettings.DEFAULT).findings();
	}

	static List<Finding> findings(PageSample sample, String program) {
		MachineProfile profile = MachineProfile.named(sample.options().getOrDefault("profile", "milling-metric"));
		for (String key : sample.profile().stringPropertyNames()) {
			profile = profile.with(key, sample.profile().getProperty(key));
		}
		return Checker.check(new ProgramFile("SAMPLE.NC", ProgramText.of(program)), ProgramFolder.EMPTY, Job.EMPTY, profile,
				RuleSettings.DEFAULT).findings();
	}

	/** The findings above information of a program. */
	static List<Finding> loud(String program) {
		return of(program).stream().filter(finding -> finding.severity() != Severity.INFORMATION).toList();
	}
}
