package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.ToIntFunction;
import truelead.checker.comment.ChangedLines;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.InOrder;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRun;
import truelead.checker.run.AxisRun;
import truelead.checker.tool.CompensationLog;
import truelead.checker.tool.ToolLog;

/** What was recorded of some stays of tools in the order of execution; lists of a recorder, or stretches of them. */
record Recorded(List<ToolLog> tools, List<TimedStroke> strokes, List<AxisRun> axisRuns, List<ArcRun> arcRuns, List<ArcCopies> arcCopies,
		List<LoggedEvent> events, List<CompensationLog.Entry> compensation, List<Step.Arc> openArcs) {

	/** More lines than follow the last change of a tool. */
	private static final int LAST = 1 << 20;

	/** All that a recorder has. */
	static Recorded of(Recorder recorder) {
		return new Recorded(recorder.tools, recorder.kept.strokes, recorder.kept.axisRuns, recorder.kept.arcRuns, recorder.kept.arcCopies,
				recorder.events, recorder.compensation.entries(), recorder.openArcs);
	}

	/** The stretches of these lists that are of the stays from one up to another, that one left out. */
	Recorded stays(int from, int to) {
		int firstLine = line(from);
		int lineBehind = line(to);
		return new Recorded(tools.subList(from, to), stays(strokes, one -> one.tool().index(), from, to),
				stays(axisRuns, one -> one.tool().index(), from, to), stays(arcRuns, one -> one.tool().index(), from, to),
				stays(arcCopies, one -> one.tool().index(), from, to), stays(events, one -> one.tool().index(), from, to),
				stays(compensation, one -> one.tool().index(), from, to), stays(openArcs, one -> one.block().line(),
						firstLine, lineBehind));
	}

	/**
	 * The stretches that are from one step up to another, that one left out, and from one line up to another, with the stays that they are
	 * of.
	 */
	Recorded part(int from, int to, int fromLine, int lineBehind, List<ToolLog> of) {
		return new Recorded(of, stays(strokes, TimedStroke::order, from, to), stays(axisRuns, AxisRun::order, from, to),
				stays(arcRuns, ArcRun::order, from, to), stays(arcCopies, ArcCopies::order, from, to),
				stays(events, LoggedEvent::order, from, to), stays(compensation, CompensationLog.Entry::order, from, to),
				stays(openArcs, one -> one.block().line(), fromLine, lineBehind));
	}

	/** What was recorded of some stays, and behind each of them the event that begins the next one. */
	Recorded of(BitSet stays) {
		Recorded some = new Recorded(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(),
				new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
		for (int from = stays.nextSetBit(0); from >= 0; from = stays.nextSetBit(stays.nextClearBit(from))) {
			int to = stays.nextClearBit(from);
			Recorded here = stays(from, to);
			some.tools.addAll(here.tools);
			some.strokes.addAll(here.strokes);
			some.axisRuns.addAll(here.axisRuns);
			some.arcRuns.addAll(here.arcRuns);
			some.arcCopies.addAll(here.arcCopies);
			some.events.addAll(here.events);
			some.compensation.addAll(here.compensation);
			some.openArcs.addAll(here.openArcs);
			stays(events, one -> one.tool().index(), to, to + 1).stream().limit(1).forEach(some.events::add);
		}
		return some;
	}

	/** The lines from the change that begins some stays to the one behind them. */
	BitSet lines(BitSet stays) {
		BitSet lines = new BitSet();
		for (int from = stays.nextSetBit(0); from >= 0; from = stays.nextSetBit(stays.nextClearBit(from))) {
			int to = stays.nextClearBit(from);
			lines.set(line(from), to < tools.size() ? line(to) : line(from) + LAST);
		}
		return lines;
	}

	/** How many holes and turns of helices were recorded. */
	int size() {
		return strokes.stream().mapToInt(one -> one.row().map(Step.Row::count).orElse(1)).sum() + axisRuns.size() + arcRuns.size()
				+ arcCopies.stream().mapToInt(copies -> copies.count() * copies.first().size()).sum();
	}

	/** The line of the change that begins a stay. */
	private int line(int stay) {
		return stay < tools.size() ? tools.get(stay).change().map(BlockRef::line).orElse(0) : Integer.MAX_VALUE;
	}

	/** The same with others in the place of the stays from one up to another, that one left out. */
	Recorded with(Recorded others, int from, int to) {
		return with(stays(0, from), others, stays(to, tools.size()));
	}

	/** The same with others in the place of a {@link #part}; the stays are as they were. */
	Recorded with(Recorded others, int from, int to, int fromLine, int lineBehind) {
		return with(part(0, from, 0, fromLine, tools), others.part(0, Integer.MAX_VALUE, 0, Integer.MAX_VALUE, List.of()),
				part(to, Integer.MAX_VALUE, lineBehind, Integer.MAX_VALUE, List.of()));
	}

	/** The same with others between what begins and what ends each list. */
	private Recorded with(Recorded before, Recorded others, Recorded behind) {
		return new Recorded(with(tools, before.tools, others.tools, behind.tools), with(strokes, before.strokes, others.strokes,
				behind.strokes),
				with(axisRuns, before.axisRuns, others.axisRuns, behind.axisRuns), with(arcRuns, before.arcRuns, others.arcRuns,
						behind.arcRuns),
				with(arcCopies, before.arcCopies, others.arcCopies, behind.arcCopies), with(events, before.events, others.events,
						behind.events),
				with(compensation, before.compensation, others.compensation, behind.compensation),
				with(openArcs, before.openArcs, others.openArcs, behind.openArcs));
	}

	/** A list with others in it; the list itself where it has nothing between and gets nothing. */
	private static <T> List<T> with(List<T> all, List<T> before, List<T> others, List<T> behind) {
		int end = all.size() - behind.size();
		if (others.isEmpty() && end == before.size()) {
			return all;
		}
		List<T> now = new ArrayList<>(all);
		List<T> place = now.subList(before.size(), end);
		place.clear();
		place.addAll(others);
		return now;
	}

	/** Whether the same was recorded, step by step. */
	boolean same(Recorded other) {
		return same(tools, other.tools, ToolLog::same)
				&& same(strokes, other.strokes, (a, b) -> a.order() == b.order() && a.stroke().equals(b.stroke())
						&& a.row().equals(b.row()))
				&& same(axisRuns, other.axisRuns, AxisRun::same) && same(arcRuns, other.arcRuns, ArcRun::same)
				&& same(arcCopies, other.arcCopies, ArcCopies::same)
				&& same(events, other.events, (a, b) -> a.order() == b.order() && a.event().equals(b.event()))
				&& compensatedAs(other) && openArcs.equals(other.openArcs);
	}

	/**
	 * Whether the same was recorded but for strokes and runs of arcs, and what goes with them: compensation, and arcs that do not close.
	 */
	boolean sameButHoles(Recorded other) {
		return same(tools, other.tools, ToolLog::same) && same(axisRuns, other.axisRuns, AxisRun::same)
				&& same(events, other.events, (a, b) -> a.order() == b.order() && a.event().equals(b.event()));
	}

	/** Whether changes of compensation are the same. */
	boolean compensatedAs(Recorded other) {
		return same(compensation, other.compensation, CompensationLog.Entry::same);
	}

	/** Whether anything that was recorded names a block among some lines, so that rules may read its text. */
	boolean names(ChangedLines lines) {
		return tools.stream().anyMatch(tool -> names(lines, tool.change()) || names(lines, tool.lastMotion())
						|| tool.summary().feeds().stream().anyMatch(feed -> lines.has(feed.first().line())))
				|| strokes.stream().anyMatch(one -> lines.has(one.stroke().cycle().start().line())
						|| lines.touch(one.stroke().block().line(), one.row().map(Step::block).orElse(one.stroke().block()).line()))
				|| axisRuns.stream().anyMatch(run -> names(lines, run.steps()))
				|| arcRuns.stream().anyMatch(run -> names(lines, run.before()) || names(lines, run.arcs()) || names(lines, run.after()))
				|| arcCopies.stream().anyMatch(copies -> copies.stand(lines))
				|| events.stream().anyMatch(one -> lines.has(one.event().block().line()))
				|| compensation.stream().anyMatch(one -> lines.has(one.step().block().line())) || names(lines, openArcs);
	}

	private static boolean names(ChangedLines lines, Optional<BlockRef> block) {
		return block.filter(one -> lines.has(one.line())).isPresent();
	}

	private static boolean names(ChangedLines lines, List<? extends Step> steps) {
		return steps.stream().anyMatch(step -> lines.has(step.block().line()));
	}

	private static <T> boolean same(List<T> list, List<T> other, BiPredicate<T, T> same) {
		boolean all = list.size() == other.size();
		for (int i = 0; all && i < list.size(); i++) {
			all = same.test(list.get(i), other.get(i));
		}
		return all;
	}

	private static <T> List<T> stays(List<T> list, ToIntFunction<T> place, int from, int to) {
		return list.subList(InOrder.before(list, place, from), InOrder.before(list, place, to));
	}
}
