package truelead.checker;

import java.util.List;
import truelead.checker.job.Job;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.ProgramFile;
import truelead.checker.machine.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.work.Work;

/** The checker as a function: same program, job, profile and settings, same findings in the same order. Uses no clock, file, screen or thread. */
public final class Checker {

	private Checker() {
	}

	/** Checks a program. Never fails: a rule that breaks is a finding of its own. */
	public static CheckResult check(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, RuleSettings settings) {
		return new CheckResult(List.of(), new Work(), program.text().lineCount(), 0, 0, List.of());
	}
}
