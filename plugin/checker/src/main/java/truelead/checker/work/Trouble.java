package truelead.checker.work;

import java.util.List;
import truelead.checker.comment.BlockProblem;
import truelead.checker.job.Allowance;
import truelead.checker.job.Remark;
import truelead.checker.machine.Step;

/**
 * What went wrong on the way here.
 *
 * @param problems    blocks the grammar could not read, in the order they stand
 * @param notFollowed in the order of execution, each block once
 * @param notes       notes that were not understood, each as one sentence
 * @param allowances  every ALLOW note of the program; one without a reason, or for a rule that is none, is no acceptance
 * @param programAllowances those of them that stand before the first tool change and belong to no operation: in force everywhere
 * @param jobRemarks  rows of the tool list file and settings that were not understood
 * @param openArcs    arcs whose start and end radius differ by more than the control takes, in other planes than XY by more than 0.001 mm;
 *                    tapered thread passes left out; at most 1,000
 */
public record Trouble(List<BlockProblem> problems, List<NotFollowed> notFollowed, List<Remark> notes, List<Allowance> allowances,
		List<Allowance> programAllowances, List<Remark> jobRemarks, List<Step.Arc> openArcs) {

	static final Trouble NONE = new Trouble(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

	public Trouble {
		problems = List.copyOf(problems);
		notFollowed = List.copyOf(notFollowed);
		notes = List.copyOf(notes);
		allowances = List.copyOf(allowances);
		programAllowances = List.copyOf(programAllowances);
		jobRemarks = List.copyOf(jobRemarks);
		openArcs = List.copyOf(openArcs);
	}

	/** The same with other open arcs. */
	Trouble with(List<Step.Arc> open) {
		return new Trouble(problems, notFollowed, notes, allowances, programAllowances, jobRemarks, open);
	}
}
