package truelead.checker.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.comment.ChangedLines;
import truelead.checker.machine.Copies;
import truelead.checker.machine.Step;
import truelead.checker.tool.ToolLog;

/** Runs of arcs that come again at place after place; those of one place are made when they are asked for. */
public final class ArcCopies {

	private final int order;
	private final ToolLog tool;
	private final Copies copies;
	private final List<ArcRun> first;

	private ArcCopies(int order, ToolLog tool, Copies copies, List<ArcRun> first) {
		this.order = order;
		this.tool = tool;
		this.copies = copies;
		this.first = List.copyOf(first);
	}

	/**
	 * The runs in motions that come again; empty where these have none, or make anything else than arcs, or where one goes on in the next
	 * copy.
	 */
	public static Optional<ArcCopies> of(Copies copies, ToolLog tool, int order) {
		List<ArcRun> runs = new ArrayList<>();
		List<AxisRun> plunges = new ArrayList<>();
		AxisRuns axis = new AxisRuns(plunges::add, false);
		boolean over = find(copies.steps(0), tool, order, axis, runs) && axis.idle() && plunges.isEmpty();
		return over && !runs.isEmpty() ? Optional.of(new ArcCopies(order, tool, copies, runs)) : Optional.empty();
	}

	/** Finds the runs among some steps; true where all are over at the end. */
	private static boolean find(List<Step> steps, ToolLog tool, int order, AxisRuns axis, List<ArcRun> found) {
		ArcRuns arcs = new ArcRuns(found::add);
		int number = order;
		for (Step step : steps) {
			if (step instanceof Step.Arc arc) {
				axis.interrupt();
				arcs.arc(arc, tool, number++);
			} else {
				axis.motion(step, tool, number);
				arcs.move(step, tool, number++);
			}
		}
		arcs.settle(steps.get(0));
		return arcs.idle();
	}

	/** Number of the first step of the first copy. */
	public int order() {
		return order;
	}

	/** The stay of the tool that cuts them. */
	public ToolLog tool() {
		return tool;
	}

	/** Number of copies. */
	public int count() {
		return copies.count();
	}

	/** How many steps each copy makes. */
	public int stepsEach() {
		return copies.stepsEach();
	}

	/** The runs of the first copy. */
	public List<ArcRun> first() {
		return first;
	}

	/** The runs of a copy, from 0, as many as those of the first. */
	public List<ArcRun> runs(int copy) {
		List<ArcRun> runs = new ArrayList<>();
		find(copies.steps(copy), tool, order + copy * stepsEach(), new AxisRuns(run -> { }, false), runs);
		return runs;
	}

	/** How far a copy lies from the first along X, mm. */
	public double x(int copy) {
		return copies.x(copy) - copies.x(0);
	}

	/** How far a copy lies from the first along Y, mm. */
	public double y(int copy) {
		return copies.y(copy) - copies.y(0);
	}

	/** Whether other copies are the same, but for the tool. */
	public boolean same(ArcCopies other) {
		boolean same = order == other.order && count() == other.count() && stepsEach() == other.stepsEach()
				&& first.size() == other.first.size() && copies.x(0) == other.copies.x(0) && copies.y(0) == other.copies.y(0)
				&& copies.line(0) == other.copies.line(0);
		for (int run = 0; same && run < first.size(); run++) {
			same = first.get(run).same(other.first.get(run));
		}
		for (int copy = 1; same && copy < count(); copy++) {
			same = x(copy) == other.x(copy) && y(copy) == other.y(copy) && decimals(copy) == other.decimals(copy);
		}
		return same;
	}

	/** Whether one of the blocks of the copies stands among some lines. */
	public boolean stand(ChangedLines lines) {
		return lines.touch(copies.line(0), copies.last().line());
	}

	/** A number that copies have in common whose blocks are written with as many decimals. */
	public int decimals(int copy) {
		return copies.decimals(copy);
	}
}
