package truelead.checker.work;

import java.util.Optional;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.ProgramFile;
import truelead.checker.machine.ProgramFolder;

/** The work of a program that is being edited: after an edit only those stays of tools are followed again that it can change. Not for several threads at once. */
public final class EditedWork {

	private final Trace trace;
	private Work work;

	private EditedWork(Trace trace, Work work) {
		this.trace = trace;
		this.work = work;
	}

	/** The work of a program, followed from its first block to its last. */
	public static EditedWork of(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, Budget budget) {
		Trace trace = Trace.of(program, folder, profile, budget);
		return new EditedWork(trace, WorkReader.read(program, job, profile, trace.recorder()));
	}

	/** The work. */
	public Work work() {
		return work;
	}

	/**
	 * Takes another text of the program, where it makes the same holes and threads by the same words, so that all findings stay; false, and nothing is
	 * changed, where it may not.
	 */
	public boolean same(ProgramFile program, ProgramFolder folder, Budget budget) {
		Optional<ChangedLines> changed = ChangedLines.between(work.shop().program().text(), program.text());
		if (changed.isEmpty()) {
			return false;
		}
		if (changed.get().last() >= 0) {
			Optional<Trace> again = trace.again(program, folder, work.shop().profile(), changed.get(), budget).filter(stays -> same(stays, changed.get()));
			if (again.isEmpty()) {
				return false;
			}
			trace.takeBeginnings(again.get());
		}
		work = work.by(program);
		return true;
	}

	private boolean same(Trace again, ChangedLines changed) {
		boolean sound = again.recorder().trouble().isEmpty()
				&& trace.recorder().trouble().stream().noneMatch(lost -> lost.tool().index() >= again.firstStay() && lost.tool().index() < again.behind());
		Recorded now = Recorded.of(again.recorder());
		return sound && !now.names(changed) && Recorded.of(trace.recorder()).stays(again.firstStay(), again.behind()).same(now);
	}
}
