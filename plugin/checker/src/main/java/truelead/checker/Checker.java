package truelead.checker;

import java.util.List;
import truelead.checker.job.Job;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.ProgramFile;
import truelead.checker.machine.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Rules;
import truelead.checker.rule.Severity;
import truelead.checker.work.Work;
import truelead.checker.work.WorkReader;

/** The checker as a function: same program, job, profile and settings, same findings in the same order. Uses no clock, file, screen or thread. */
public final class Checker {

	private Checker() {
	}

	/** Checks a program. Never fails: a rule that breaks is a finding of its own. */
	public static CheckResult check(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, RuleSettings settings) {
		Work work = WorkReader.read(program, folder, job, profile);
		List<Finding> findings = Acceptance.apply(Rules.check(work, settings), work);
		int notFollowed = (int) findings.stream()
				.filter(f -> f.rule().equals("not-followed") && f.severity() != Severity.INFORMATION && f.accepted().isEmpty()).count();
		return new CheckResult(findings, work, work.blocks(), work.operations().size(), notFollowed, work.assumptions());
	}
}
