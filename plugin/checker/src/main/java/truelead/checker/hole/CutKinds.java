package truelead.checker.hole;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import truelead.checker.job.Fact;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Step;

/** Numbers kinds of cuts: those of one kind differ in place, block and time alone. What a mill cuts is always a kind of its own. */
final class CutKinds {

	private record Kind(Cut.Kind kind, int tool, int cycle, double start, double tip, double shoulder, double diameter, double resolution) {
	}

	private final Map<Kind, Integer> numbers = new HashMap<>();
	private final Map<Cycle, Integer> cycles = new IdentityHashMap<>();
	private int count;

	/** The kind of a cut; of a row the decimals tell apart further. */
	int of(Cut cut, boolean row) {
		if (cut.kind() == Cut.Kind.MILL) {
			return count++;
		}
		int cycle = cut.step() instanceof Step.Stroke stroke ? cycles.computeIfAbsent(stroke.cycle(), c -> cycles.size()) : -1;
		return numbers.computeIfAbsent(new Kind(cut.kind(), cut.tool().index(), cycle, cut.start(), cut.tip(), cut.shoulder(),
				cut.diameter().map(Fact::value).orElse(Double.NaN), row ? -1 : cut.resolution()), fresh -> count++);
	}
}
