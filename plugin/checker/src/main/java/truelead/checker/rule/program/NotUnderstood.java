package truelead.checker.rule.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.comment.BlockProblem;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.Work;

/** A block that the grammar cannot read: error where the program makes threads, else information, once. */
public final class NotUnderstood implements Rule {

	@Override
	public String name() {
		return "not-understood";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.UNREAD_BLOCK);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		List<BlockProblem> minor = new ArrayList<>();
		for (BlockProblem problem : work.trouble().problems()) {
			if (problem.matters()) {
				found.accept(Draft.of(this, Severity.ERROR, problem.at(), problem.message()).finding());
			} else {
				minor.add(problem);
			}
		}
		if (!minor.isEmpty()) {
			BlockProblem first = minor.get(0);
			Draft draft = Draft.of(this, Severity.INFORMATION, first.at(), first.message() + (minor.size() > 1 ? " (" + (minor.size() - 1)
					+ " more such places; the program makes no threads)" : " (the program makes no threads)"));
			minor.stream().skip(1).limit(10).forEach(p -> draft.related(p.at(), "also not understood"));
			found.accept(draft.finding());
		}
	}
}
