package truelead.checker.hole;

import java.util.HashMap;
import java.util.Map;
import truelead.checker.job.Fact;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Step;

/**
 * Numbers kinds of cuts: those of one kind differ in place, block and time alone, and in where the block of the cycle has its words. What a
 * mill cuts is always a kind of its own.
 */
public final class CutKinds {

	private record Kind(Cut.Kind kind, int tool, int cycle, double start, double tip, double shoulder, double diameter, double resolution) {
	}

	private final Map<Kind, Integer> numbers = new HashMap<>();
	private final Alike<Cycle> cycles = new Alike<>();
	private int count;

	/** The kind of a cut; of a row the decimals tell apart further. */
	public int of(Cut cut, boolean row) {
		if (cut.kind() == Cut.Kind.MILL) {
			return count++;
		}
		int cycle = cut.step() instanceof Step.Stroke stroke ? cycles.of(stroke.cycle(), Cycle::said) : -1;
		return numbers.computeIfAbsent(new Kind(cut.kind(), cut.tool().index(), cycle, cut.start(), cut.tip(), cut.shoulder(),
				cut.diameter().map(Fact::value).orElse(Double.NaN), row || CutRow.decimals(cut) >= 0 ? -1 : cut.resolution()),
				fresh -> count++);
	}
}
