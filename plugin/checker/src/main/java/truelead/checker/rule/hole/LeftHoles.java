package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.work.Work;

/** The holes that are never threaded, by the way they were made: as those that a tap threads were, they are holes of its pattern. */
final class LeftHoles {

	private final List<Hole> holes;
	/** By tools, depths and blocks, and by tools and depths alone. */
	private final Map<String, List<Integer>> made = new HashMap<>();

	/** The holes of a work; once for each work ({@link Work#derived}). */
	LeftHoles(Work work) {
		holes = work.unthreaded();
		for (int i = 0; i < holes.size(); i++) {
			List<Cut> cuts = holes.get(i).cuts();
			int end = cuts.size();
			while (end > 0 && !cuts.get(end - 1).kind().makesHole()) {
				end--;
			}
			add(cuts, i);
			if (end > 0 && end < cuts.size()) {
				// the edge may be broken after the other holes were threaded
				add(cuts.subList(0, end), i);
			}
		}
	}

	private void add(List<Cut> cuts, int hole) {
		made.computeIfAbsent(making(cuts, Integer.MAX_VALUE, true), way -> new ArrayList<>()).add(hole);
		made.computeIfAbsent(making(cuts, Integer.MAX_VALUE, false), way -> new ArrayList<>()).add(hole);
	}

	/** Those made in one of some ways, in the order first reached. */
	List<Hole> made(Collection<String> ways) {
		IntStream numbers = ways.stream().flatMap(way -> made.getOrDefault(way, List.of()).stream()).mapToInt(Integer::intValue);
		return numbers.sorted().distinct().mapToObj(holes::get).toList();
	}

	/**
	 * How a hole was made before a step: tools and depths, or the blocks of their cycles and how far these go from R, as on pads at several
	 * levels.
	 */
	static String making(List<Cut> cuts, int order, boolean blocks) {
		StringBuilder text = new StringBuilder(blocks ? "" : "any block ");
		for (Cut cut : cuts) {
			if (cut.order() >= order) {
				continue;
			}
			boolean block = blocks && cut.step() instanceof Step.Stroke;
			text.append(cut.tool().index()).append(cut.kind()).append(Math.round((block ? cut.tip() - cut.start() : cut.tip()) * 50));
			if (block && cut.step() instanceof Step.Stroke s) {
				text.append('@').append(s.cycle().since().line());
			}
			text.append(';');
		}
		return text.toString();
	}
}
