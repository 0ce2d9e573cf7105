package truelead.checker;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.rulebook.Rules;
import truelead.checker.work.Work;
import truelead.checker.work.WorkReader;

/**
 * The checker as a function: same program, job, profile and settings, same findings in the same order. Uses no clock, file, screen or
 * thread of its own.
 */
public final class Checker {

	private Checker() {
	}

	/** Checks a program. Never fails: a rule that breaks is a finding of its own. */
	public static CheckResult check(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, RuleSettings settings) {
		return check(program, folder, job, profile, settings, Budget.of(profile));
	}

	/** Checks a program as far as a budget goes, such as the smaller one of an editor that can be cancelled. */
	public static CheckResult check(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, RuleSettings settings,
			Budget budget) {
		MachineChoice machine = MachineChoice.of(program, folder, profile);
		Job known = job.withRemarks(machine.remarks());
		Work first = WorkReader.read(program, folder, known, machine.profile(), budget);
		Work work = better(first, folder, budget);
		return result(work, first, Acceptance.apply(Rules.check(work, settings), work), machine);
	}

	/**
	 * The work that is judged, the program being followed once: where it states no unit and its taps fit another one, it is followed again.
	 */
	static Work better(Work first, ProgramFolder folder, Budget budget) {
		return AssumedUnit.better(first).map(other -> WorkReader.read(first.shop().program(), folder, first.shop().job(), other, budget))
				.orElse(first);
	}

	/** What a check gives. */
	static CheckResult result(Work work, Work first, List<Finding> findings, MachineChoice machine) {
		int notFollowed = (int) findings.stream()
				.filter(f -> f.rule().equals("not-followed") && f.severity() != Severity.INFORMATION && f.accepted().isEmpty()).count();
		List<String> assumptions = new ArrayList<>(work.assumptions());
		machine.assumed().ifPresent(assumptions::add);
		if (work != first) {
			assumptions.add("the unit was taken from the taps: their feeds and speeds fit the threads called out in no other");
		}
		return new CheckResult(findings, work, work.blocks(), work.operations().size() + work.course().singlePoints().size(),
				notFollowed, assumptions);
	}
}
