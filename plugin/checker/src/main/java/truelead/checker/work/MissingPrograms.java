package truelead.checker.work;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import truelead.checker.callout.ProbeWords;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.program.Reason;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolBook;
import truelead.checker.tool.ToolUse;

/**
 * Which programs that are called and not here may make threads or holes for them: none under a tool that makes neither or under a probe,
 * and none to which nothing is said and that is called by a tool for threads that makes some itself, or by such as by others, as a look
 * for a broken tool is.
 */
final class MissingPrograms {

	/** As many of a tool's own comments as are read for what it is. */
	private static final int OWN_COMMENTS = 20;

	private final Set<Reason> shared = new HashSet<>();
	private final Set<ToolUse> probes = Collections.newSetFromMap(new IdentityHashMap<>());
	private final Set<ToolUse> idle;

	/** @param idle the stays of tools for threads that are not known to make any */
	MissingPrograms(List<UnfollowedBlocks.Logged> trouble, List<ToolUse> tools, ToolBook book, Set<ToolUse> idle) {
		this.idle = idle;
		Map<Reason, Set<Boolean>> callers = new HashMap<>();
		for (UnfollowedBlocks.Logged logged : trouble) {
			ToolUse tool = tools.get(logged.tool().index());
			if (called(logged.step()) && probe(tool, book.listed(logged.tool()))) {
				probes.add(tool);
			}
			if (logged.step().weight() == Step.NotFollowed.Weight.PLAIN_CALL) {
				tool.facts().kind().map(Fact::value).map(ToolKind::threading)
						.ifPresent(threading -> callers.computeIfAbsent(logged.step().why(), why -> new HashSet<>()).add(threading));
			}
		}
		callers.forEach((why, kinds) -> {
			if (kinds.size() > 1) {
				shared.add(why);
			}
		});
	}

	/** Whether a program was called that is not here, other than a maker's. */
	static boolean called(Step.NotFollowed step) {
		return step.weight() == Step.NotFollowed.Weight.CALL || step.weight() == Step.NotFollowed.Weight.PLAIN_CALL;
	}

	/** Whether the program that is called may make threads, or holes for them, with the tool that is in the spindle. */
	boolean mayThread(Step.NotFollowed step, ToolUse tool) {
		boolean threads = tool.facts().kind().filter(kind -> kind.value().threading()).isPresent();
		if (step.weight() == Step.NotFollowed.Weight.PLAIN_CALL && (threads || shared.contains(step.why()))) {
			return idle.contains(tool);
		}
		return !probes.contains(tool) && tool.facts().kind().map(Fact::value).filter(kind -> !kind.threading() && !kind.bores()).isEmpty();
	}

	private static boolean probe(ToolUse tool, List<LineComment> listed) {
		boolean threads = tool.facts().kind().filter(kind -> kind.value().threading()).isPresent();
		return !threads && tool.comments().stream().limit(OWN_COMMENTS).anyMatch(comment -> ProbeWords.in(comment.text()))
				|| listed.stream().limit(OWN_COMMENTS).anyMatch(comment -> ProbeWords.in(comment.text()));
	}
}
