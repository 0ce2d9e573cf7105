package truelead.checker;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.ProgramFile;
import truelead.checker.machine.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.work.EditedWork;

/**
 * Checks a program again and again while it is edited. The answer is always that of {@link Checker#check}; an edit that changes no hole, no thread and no word
 * of theirs costs what following its tool's stay costs.
 */
public final class EditedProgram {

	/** Edits after which everything is followed again, so that what is kept of earlier texts is let go. */
	private static final int MOST_EDITS = 500;

	/** What a check depends on besides the text. */
	private record Setup(String name, Job job, MachineChoice machine, RuleSettings settings) {
	}

	/** A check of a text, and what is kept for the next one. */
	private record Checked(Setup setup, EditedWork work, CheckResult result) {
	}

	private Optional<Checked> last = Optional.empty();
	private int edits;

	/** Checks the program as it stands now; see {@link Checker#check}. */
	public synchronized CheckResult check(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, RuleSettings settings, Budget budget) {
		MachineChoice machine = MachineChoice.of(program, folder, profile);
		Setup setup = new Setup(program.name(), job.withRemarks(machine.remarks()), machine, settings);
		Optional<Checked> before = last.filter(known -> known.setup().equals(setup) && edits < MOST_EDITS);
		last = Optional.empty();
		if (before.isPresent() && before.get().work().same(program, folder, budget)) {
			edits++;
			last = before.map(known -> again(known, program));
		} else {
			edits = 0;
			EditedWork work = EditedWork.of(program, folder, setup.job(), machine.profile(), budget);
			CheckResult result = Checker.result(work.work(), program, folder, machine, settings, budget);
			boolean itself = result.work() == work.work() && !budget.cancelled().getAsBoolean();
			last = Optional.of(new Checked(setup, work, result)).filter(known -> itself);
			return result;
		}
		return last.get().result();
	}

	private static Checked again(Checked known, ProgramFile program) {
		CheckResult before = known.result();
		boolean moved = before.work().shop().program().text().length() != program.text().length();
		List<Finding> findings = moved ? before.findings().stream().map(finding -> finding.in(program)).toList() : before.findings();
		return new Checked(known.setup(), known.work(), new CheckResult(findings, known.work().work(), before.blocks(), before.operations(), before.notFollowed(),
				before.assumptions()));
	}
}
