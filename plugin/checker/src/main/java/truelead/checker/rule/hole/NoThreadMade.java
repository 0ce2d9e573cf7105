package truelead.checker.rule.hole;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.program.InOrder;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * A tap comes, moves and goes without tapping, or a thread mill feeds and goes round no helix: the thread that it was called for is not
 * made, or not known to be.
 */
public final class NoThreadMade implements Rule {

	@Override
	public String name() {
		return "no-thread-made";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_PLANE, Slip.OTHER_AXIS, Slip.UNIT_WORD, Slip.DISTANCE_MODE, Slip.NO_CENTRE,
				Slip.PART_UNKNOWN);
	}

	@Override
	public boolean isOfAStay() {
		return true;
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		if (!work.course().toItsEnd() || !work.shop().profile().blockDelete().isEmpty()) {
			return;
		}
		Making making = null;
		for (int stay : work.ofTools(Called.class, Called::of).stays()) {
			ToolUse tool = work.tools().get(stay);
			if (work.judges(stay) && !threads(tool, work) && (tool.summary().moved() || turns(tool, work))) {
				making = making == null ? new Making(work) : making;
				if (!making.has(tool) && IdleDrill.followed(tool, work) && !stops(tool, work) && making.othersCut(tool)) {
					found.accept(draft(tool));
				}
			}
		}
	}

	/** Whether an operation is of this stay, as of almost all that are called taps. */
	private static boolean threads(ToolUse tool, Work work) {
		List<ThreadingOperation> operations = work.operationsOfProgram();
		int place = InOrder.before(operations, operation -> operation.tool().index(), tool.index());
		return place < operations.size() && operations.get(place).tool().index() == tool.index();
	}

	/** The stays of tools that are called taps or thread mills and run no cycles, by their numbers. */
	private record Called(int[] stays) {

		static Called of(List<ToolUse> tools) {
			return new Called(tools.stream().filter(NoThreadMade::wasToThread).mapToInt(ToolUse::index).toArray());
		}
	}

	/** The stays that make threads and the numbers of their tools, and how many stays cut. */
	private static final class Making {

		private final BitSet stays = new BitSet();
		private final Set<Integer> numbers = new HashSet<>();
		private final long cutting;

		Making(Work work) {
			work.operationsOfProgram().forEach(operation -> add(operation.tool()));
			work.course().singlePoints().forEach(turned -> add(turned.tool()));
			cutting = work.tools().stream().filter(Making::cuts).count();
		}

		private void add(ToolUse tool) {
			stays.set(tool.index());
			if (tool.number() >= 0) {
				numbers.add(tool.number());
			}
		}

		boolean has(ToolUse tool) {
			return stays.get(tool.index()) || numbers.contains(tool.number());
		}

		/** Whether another tool cuts: a program that only shows its tools, to measure them, makes no threads. */
		boolean othersCut(ToolUse tool) {
			return cutting > (cuts(tool) ? 1 : 0);
		}

		private static boolean cuts(ToolUse tool) {
			return tool.summary().moved() && !tool.summary().idle();
		}
	}

	/** A tap or a thread mill. What runs other cycles is told by other rules. */
	private static boolean wasToThread(ToolUse tool) {
		boolean cycles = tool.summary().drilling() || tool.summary().tapping();
		return !cycles && tool.facts().kind().filter(Fact::stated).isPresent() && (tool.facts().isTap() || tool.facts().isThreadMill());
	}

	/** Whether the spindle is started with the tool: it was to work, and the places or the passes of a loop were lost. */
	private static boolean turns(ToolUse tool, Work work) {
		return work.course().eventsAfter(tool.firstOrder()).stream().takeWhile(event -> event.order() <= tool.lastOrder())
				.anyMatch(event -> event.event().kind() == Step.EventKind.SPINDLE
						&& event.event().modal().spindle() != SpindleTurn.STOPPED);
	}

	/** Whether the program stops while the tool is in: a person may thread by hand, or look at the tool. */
	private static boolean stops(ToolUse tool, Work work) {
		return work.course().eventsAfter(tool.firstOrder()).stream().takeWhile(event -> event.order() <= tool.lastOrder())
				.anyMatch(event -> event.event().kind() == Step.EventKind.STOP);
	}

	private Draft called(ToolUse tool, String what) {
		return Draft.of(this, Severity.WARNING, tool.tool(), tool.change().orElseThrow(), tool.name() + " is called a "
				+ ToolName.of(tool.facts()) + tool.facts().thread().map(thread -> " " + thread.value().designation()).orElse("")
				+ " and " + what);
	}

	private Finding draft(ToolUse tool) {
		Draft draft = !tool.summary().moved() ? called(tool, "threads nothing: its spindle turns and it goes to no place; its "
				+ (tool.facts().isTap() ? "cycle" : "helix") + " and the passes of its loop, or leave the tool out") : tool.summary().idle()
				? called(tool, "threads nothing: it moves and cuts nothing; its " + (tool.facts().isTap() ? "cycle" : "helix")
						+ ", or leave the tool out") : tool.facts().isTap()
				? called(tool, "its feeds go nowhere straight in and out, so no thread of it is checked; see which tool is meant")
				: called(tool, "no helix is found in its feeds, so no thread of it is checked; see that Z goes on with each turn");
		tool.facts().kind().ifPresent(fact -> draft.known("tool", ToolName.of(tool.facts()), fact));
		return draft.finding();
	}
}
