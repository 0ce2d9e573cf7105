package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.machine.Step;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRun;
import truelead.checker.run.AxisRun;
import truelead.checker.tool.ToolLog;

/** What holes and threads are made of, in the order of execution; of a program that makes more of it than any part needs, the first. */
final class Kept {

	private static final int MOST_STROKES = 300_000;
	private static final int MOST_IN_ROWS = 1_500_000;
	private static final int MOST_RUNS = 200_000;
	private static final int MOST_ARCS = 1_000_000;

	final List<TimedStroke> strokes = new ArrayList<>();
	final List<AxisRun> axisRuns = new ArrayList<>();
	final List<ArcRun> arcRuns = new ArrayList<>();
	final List<ArcCopies> arcCopies = new ArrayList<>();
	private final Consumer<Step> tooMany;
	private int arcs;
	/** Strokes in rows and runs of arcs that come again, which cost a few bytes each. */
	private int inRows;

	/** @param tooMany takes each step that is not kept */
	Kept(Consumer<Step> tooMany) {
		this.tooMany = tooMany;
	}

	void stroke(int order, ToolLog tool, Step.Stroke stroke) {
		keep(MOST_STROKES, strokes, new TimedStroke(order, tool, stroke, Optional.empty()), stroke);
	}

	void row(int order, ToolLog tool, Step.Row row) {
		int room = strokes.size() < MOST_STROKES ? Math.min(row.count(), MOST_IN_ROWS - inRows) : 0;
		if (room > 0) {
			strokes.add(new TimedStroke(order, tool, row.first(), Optional.of(room < row.count() ? row.head(room) : row)));
			inRows += room;
		}
		if (room < row.count()) {
			tooMany.accept(row.stroke(room));
		}
	}

	void run(AxisRun run) {
		keep(MOST_RUNS, axisRuns, run, run.in());
	}

	void run(ArcRun run) {
		arcs += run.arcs().size();
		keep(arcs > MOST_ARCS ? 0 : MOST_RUNS, arcRuns, run, run.arcs().get(0));
	}

	/** Whether there is room for so many runs more that come again. */
	boolean hasRoom(int runs) {
		return runs <= MOST_IN_ROWS - inRows;
	}

	/** Runs that come again, for which there {@link #hasRoom}. */
	void copies(ArcCopies copies, int runs) {
		arcCopies.add(copies);
		inRows += runs;
	}

	private <T> void keep(int most, List<T> list, T item, Step step) {
		if (list.size() < most) {
			list.add(item);
		} else {
			tooMany.accept(step);
		}
	}
}
