package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Copies;
import truelead.checker.machine.Step;

/** Runs of arcs that come again at place after place; those of one place are made when they are asked for. */
final class ArcCopies {

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

	/** The runs in motions that come again; empty where these have none, or make anything else than arcs, or where one goes on in the next copy. */
	static Optional<ArcCopies> of(Copies copies, ToolLog tool, int order) {
		List<ArcRun> runs = new ArrayList<>();
		List<AxisRun> plunges = new ArrayList<>();
		AxisRuns axis = new AxisRuns(plunges::add);
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
				axis.motion(step, tool, number++);
				arcs.move(step);
			}
		}
		return arcs.idle();
	}

	/** Number of the first step of the first copy. */
	int order() {
		return order;
	}

	ToolLog tool() {
		return tool;
	}

	/** Number of copies. */
	int count() {
		return copies.count();
	}

	/** How many steps each copy makes. */
	int stepsEach() {
		return copies.stepsEach();
	}

	/** The runs of the first copy. */
	List<ArcRun> first() {
		return first;
	}

	/** The runs of a copy, from 0, as many as those of the first. */
	List<ArcRun> runs(int copy) {
		List<ArcRun> runs = new ArrayList<>();
		find(copies.steps(copy), tool, order + copy * stepsEach(), new AxisRuns(run -> { }), runs);
		return runs;
	}

	/** How far a copy lies from the first along X, mm. */
	double x(int copy) {
		return copies.x(copy) - copies.x(0);
	}

	/** How far a copy lies from the first along Y, mm. */
	double y(int copy) {
		return copies.y(copy) - copies.y(0);
	}

	/** A number that copies have in common whose blocks are written with as many decimals. */
	int decimals(int copy) {
		return copies.decimals(copy);
	}
}
