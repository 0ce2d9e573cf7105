package truelead.checker.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.machine.BlockRef;

/** Thread milling by one tool under one callout; a helix counts as threading only where a callout or the tool says so. */
public final class ThreadMilling implements ThreadingOperation {

	private final int index;
	private final int group;
	private final ToolUse tool;
	private final List<MillPass> passes;
	private final Wanted wanted;
	private final int lastOrder;
	private final List<NotEvaluated> notEvaluated;
	private final Map<Place, List<MillPass>> byPlace = new LinkedHashMap<>();
	private final List<Hole> holes;
	private final List<List<MillPass>> finishing;

	ThreadMilling(int index, int group, ToolUse tool, List<MillPass> passes, Wanted wanted, int lastOrder, List<NotEvaluated> notEvaluated) {
		this.index = index;
		this.group = group;
		this.tool = tool;
		this.passes = List.copyOf(passes);
		this.wanted = wanted;
		this.lastOrder = lastOrder;
		this.notEvaluated = List.copyOf(notEvaluated);
		passes.forEach(pass -> byPlace.computeIfAbsent(pass.hole().place(), place -> new ArrayList<>(1)).add(pass));
		this.holes = byPlace.values().stream().map(here -> here.get(0).hole()).toList();
		this.finishing = byPlace.values().stream().map(ThreadMilling::finishing).toList();
	}

	@Override
	public int index() {
		return index;
	}

	@Override
	public int group() {
		return group;
	}

	@Override
	public ToolUse tool() {
		return tool;
	}

	/** Every pass in the order of execution: roughing and finishing, several starts, one after another; never empty. */
	public List<MillPass> passes() {
		return passes;
	}

	@Override
	public Wanted wanted() {
		return wanted;
	}

	@Override
	public BlockRef block() {
		return passes.get(0).block();
	}

	@Override
	public int firstOrder() {
		return passes.get(0).order();
	}

	@Override
	public int lastOrder() {
		return lastOrder;
	}

	@Override
	public List<NotEvaluated> notEvaluated() {
		return notEvaluated;
	}

	@Override
	public List<Hole> holes() {
		return holes;
	}

	/** The first pass at each of the {@link #holes()}, in their order. */
	public List<MillPass> firstPasses() {
		return byPlace.values().stream().map(here -> here.get(0)).toList();
	}

	/** The passes at one hole, in order; the middle of a pass may lie a rounding beside that of the hole. */
	public List<MillPass> passesAt(Hole hole) {
		return List.copyOf(byPlace.getOrDefault(hole.place(), List.of()));
	}

	/** The passes of the largest radius at a hole: those that give the thread its size; roughing passes are smaller, a pass of unknown radius may be one. */
	public List<MillPass> finishing(Hole hole) {
		return finishing(byPlace.getOrDefault(hole.place(), List.of()));
	}

	/** The same for each of the {@link #holes()}, in their order. */
	public List<List<MillPass>> finishing() {
		return finishing;
	}

	private static List<MillPass> finishing(List<MillPass> here) {
		if (here.size() < 2) {
			return here;
		}
		double largest = 0;
		for (MillPass pass : here) {
			largest = Math.max(largest, pass.radius());
		}
		List<MillPass> finishing = new ArrayList<>(here.size());
		for (MillPass pass : here) {
			if (pass.radius() > largest - 0.001) {
				finishing.add(pass);
			}
		}
		// a radius that no number holds is neither larger nor smaller than another
		return finishing.isEmpty() ? here : finishing;
	}
}
