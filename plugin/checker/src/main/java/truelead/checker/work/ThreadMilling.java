package truelead.checker.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.machine.BlockRef;

/**
 * Thread milling by one tool under one callout; a helix counts as threading only where a callout or the tool says so.
 *
 * @param passes every pass in the order of execution: roughing and finishing, several starts, one after another; never empty
 */
public record ThreadMilling(int index, int group, ToolUse tool, List<MillPass> passes, Wanted wanted, int lastOrder,
		List<NotEvaluated> notEvaluated) implements ThreadingOperation {

	public ThreadMilling {
		passes = List.copyOf(passes);
		notEvaluated = List.copyOf(notEvaluated);
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
	public List<Hole> holes() {
		Map<Place, Hole> holes = new LinkedHashMap<>();
		passes.forEach(p -> holes.putIfAbsent(p.hole().place(), p.hole()));
		return List.copyOf(holes.values());
	}

	/** The passes at one hole, in order; the middle of a pass may lie a rounding beside that of the hole. */
	public List<MillPass> passesAt(Hole hole) {
		return passes.stream().filter(p -> p.hole().place().equals(hole.place())).toList();
	}

	/** The passes of the largest radius at a hole: those that give the thread its size; roughing passes are smaller. */
	public List<MillPass> finishing(Hole hole) {
		List<MillPass> here = passesAt(hole);
		double largest = here.stream().mapToDouble(MillPass::radius).max().orElse(0);
		return here.stream().filter(p -> p.radius() > largest - 0.001).toList();
	}
}
