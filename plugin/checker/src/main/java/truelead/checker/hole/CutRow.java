package truelead.checker.hole;

import java.util.Optional;
import truelead.checker.machine.Step;

/**
 * A cut, or a row of cuts that differ in place, block and decimals written alone, one a step.
 *
 * @param first the first of them
 * @param row   the row of strokes that makes them; empty for a cut by itself
 * @param kind  a number that it has in common with others of the same tool, cycle, levels and diameter
 */
public record CutRow(Cut first, Optional<Step.Row> row, int kind) {

	/** One of the cuts, from 0. */
	public Cut cut(int index) {
		if (row.isEmpty()) {
			return first;
		}
		Step.Row strokes = row.get();
		return new Cut(order(index), first.kind(), strokes.stroke(index), first.tool(),
				first.place().at(strokes.x(index), strokes.y(index)), first.start(), first.tip(), first.shoulder(), first.diameter(),
				strokes.resolution(index));
	}

	/** Where one of the cuts is made. */
	public Place place(int index) {
		return row.map(strokes -> first.place().at(strokes.x(index), strokes.y(index))).orElse(first.place());
	}

	/** When one of the cuts is made. */
	public int order(int index) {
		return first.order() + index;
	}

	/** What is left open of the decimals, as a number. */
	public int decimals(int index) {
		return row.isPresent() ? row.get().decimals(index) : Math.max(0, decimals(first));
	}

	/** What the resolution of a cut by itself tells of the decimals; -1 where it tells nothing. */
	static int decimals(Cut cut) {
		return cut.step() instanceof Step.Stroke stroke ? stroke.decimals() : -1;
	}
}
