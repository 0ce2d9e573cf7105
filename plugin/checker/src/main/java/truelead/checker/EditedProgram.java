package truelead.checker;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.checker.work.EditedWork;
import truelead.checker.work.Work;

/**
 * Checks a program again and again while it is edited. The answer is always that of {@link Checker#check}; an edit costs what following its
 * tool's stay costs, and judging the holes and threads there if it changes one of them.
 */
public final class EditedProgram {

	/** What a check depends on besides the text. */
	private record Setup(String name, Job job, MachineChoice machine, RuleSettings settings) {
	}

	/**
	 * A check of a text, and what is kept for the next one.
	 *
	 * @param moved whether places in the text lie elsewhere than in the one that was followed from its beginning
	 */
	private record Checked(Setup setup, EditedWork work, EditedFindings found, boolean moved, CheckResult result) {
	}

	private Optional<Checked> last = Optional.empty();

	/** Checks the program as it stands now; see {@link Checker#check}. */
	public synchronized CheckResult check(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, RuleSettings settings,
			Budget budget) {
		MachineChoice machine = MachineChoice.of(program, folder, profile);
		Setup setup = new Setup(program.name(), job.withRemarks(machine.remarks()), machine, settings);
		Optional<Checked> before = last.filter(known -> known.setup().equals(setup));
		last = Optional.empty();
		last = before.flatMap(known -> known.work().follow(program, folder, budget).flatMap(changed -> again(known, program, changed)));
		while (last.filter(known -> known.work().aged()).isPresent()) {
			last = last.flatMap(known -> known.work().refresh(folder, budget).flatMap(changed -> again(known, program, changed)));
		}
		if (last.isPresent()) {
			return last.get().result();
		}
		EditedWork work = EditedWork.of(program, folder, setup.job(), machine.profile(), budget);
		Work better = Checker.better(work.work(), folder, budget);
		EditedFindings found = EditedFindings.of(better, settings);
		CheckResult result = Checker.result(better, work.work(), found.told(), machine);
		boolean itself = better == work.work() && !budget.cancelled().getAsBoolean();
		last = Optional.of(new Checked(setup, work, found, false, result)).filter(known -> itself);
		return result;
	}

	private static Optional<Checked> again(Checked known, ProgramFile program, EditedWork.Changed changed) {
		boolean moved = !changed.lines().movesNothing(known.result().work().shop().program().text(), program.text());
		Work work = known.work().work();
		if (changed.part().isEmpty()) {
			List<Finding> findings = moved ? new MovedFindings(program, known.found().told()) : known.result().findings();
			return Optional.of(new Checked(known.setup(), known.work(), known.found(), known.moved() || moved,
					known.result().with(findings, work)));
		}
		if (AssumedUnit.better(changed.part().get().work()).isPresent()) {
			return Optional.empty();
		}
		return known.found().with(changed.part().get(), changed.lines(), work).map(found -> {
			CheckResult there = Checker.result(work, work, found.told(), known.setup().machine());
			boolean elsewhere = known.moved() || moved;
			CheckResult result = elsewhere ? there.with(new MovedFindings(program, found.told()), work) : there;
			return new Checked(known.setup(), known.work(), found, elsewhere, result);
		});
	}
}
