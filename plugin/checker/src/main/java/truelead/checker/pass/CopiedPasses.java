package truelead.checker.pass;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import truelead.checker.hole.Place;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRun;

/** The passes of helices that come again at place after place; each is made when it is asked for. */
public final class CopiedPasses implements PassRow {

	private final ArcCopies copies;
	/** Which of the runs of a copy are passes. */
	private final int[] which;
	private final Function<ArcRun, Pass> maker;
	private final List<Pass> first;
	/** The passes of one copy of each number of decimals. */
	private final Map<Integer, List<Pass>> typical = new HashMap<>();

	/**
	 * @param which the runs of a copy that are passes, from 0
	 * @param maker makes the pass of such a run
	 */
	public CopiedPasses(ArcCopies copies, int[] which, Function<ArcRun, Pass> maker) {
		this.copies = copies;
		this.which = which.clone();
		this.maker = maker;
		this.first = passes(0);
	}

	@Override
	public int count() {
		return copies.count() * which.length;
	}

	@Override
	public Pass pass(int index) {
		return maker.apply(copies.runs(copy(index)).get(which[index % which.length]));
	}

	@Override
	public Place place(int index) {
		Place place = first.get(index % which.length).place();
		int copy = copy(index);
		return place.at(place.u() + copies.x(copy), place.v() + copies.y(copy));
	}

	@Override
	public double resolution(int index) {
		return typical(index).resolution();
	}

	@Override
	public int order(int index) {
		return first.get(index % which.length).order() + copy(index) * copies.stepsEach();
	}

	@Override
	public int shape(int index, PassShapes shapes) {
		return shapes.ofTypical(typical(index));
	}

	private int copy(int index) {
		return index / which.length;
	}

	/** The pass of the first copy that is written with as many decimals. */
	private Pass typical(int index) {
		int copy = copy(index);
		synchronized (typical) {
			return typical.computeIfAbsent(copies.decimals(copy), fresh -> passes(copy)).get(index % which.length);
		}
	}

	private List<Pass> passes(int copy) {
		List<ArcRun> runs = copies.runs(copy);
		List<Pass> passes = new ArrayList<>(which.length);
		for (int run : which) {
			passes.add(maker.apply(runs.get(run)));
		}
		return passes;
	}
}
