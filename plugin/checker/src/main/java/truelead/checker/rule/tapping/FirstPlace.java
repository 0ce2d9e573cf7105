package truelead.checker.rule.tapping;

import java.util.List;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * Where a tap begins.
 *
 * @param left    whether that is where the tool before it ended, as it is where the block that goes to its own first place is left out
 * @param several whether that tool had been at other places before, so that this is no matter of course
 */
record FirstPlace(boolean left, boolean several) {

	/** Holes among which the last one of a tool is looked for (a choice of ours). */
	private static final int MANY = 2000;

	/** The first place of an operation. */
	static FirstPlace of(Tapping tapping, Work work) {
		int before = tapping.tool().index() - 1;
		if (tapping.strokes().isEmpty() || work.holes().size() > MANY) {
			return new FirstPlace(false, false);
		}
		work.dependsOnAll();
		List<Cut> cuts = work.holes().stream().flatMap(hole -> hole.cuts().stream()).filter(cut -> cut.tool().index() == before).toList();
		int last = cuts.stream().mapToInt(Cut::order).max().orElse(-1);
		Stream<TapStroke> threads = work.tappings().stream().filter(one -> one.tool().index() == before && !one.strokes().isEmpty()).map(one -> one.strokes().get(one.strokes().size() - 1));
		TapStroke first = tapping.strokes().get(0);
		boolean cut = first.hole().cuts().stream().anyMatch(one -> one.tool().index() == before && one.order() == last);
		boolean threaded = threads.anyMatch(stroke -> stroke.place().equals(first.place()));
		return new FirstPlace(cut || threaded, threaded || cuts.stream().map(Cut::place).distinct().limit(2).count() > 1);
	}
}
