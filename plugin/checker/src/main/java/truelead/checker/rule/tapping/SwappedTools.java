package truelead.checker.rule.tapping;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import truelead.checker.hole.Place;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** A tap that drills and a drill that taps, at the same places or as the only ones of the program: their numbers are swapped, which is one slip. */
final class SwappedTools {

	private final Map<Place, Tapping> drillingTaps = new HashMap<>();
	private final Map<Place, Tapping> tappingDrills = new HashMap<>();

	/** Whether there is one of each. */
	private final boolean pair;

	private SwappedTools(Work work) {
		for (Tapping tapping : work.tappings()) {
			if (tapping.method() == Tapping.Method.DRILLING_CYCLE && tapping.tool().facts().isTap()) {
				tapping.strokes().forEach(stroke -> drillingTaps.put(stroke.place(), tapping));
			} else if (tapping.method() == Tapping.Method.WRONG_TOOL) {
				tapping.strokes().forEach(stroke -> tappingDrills.put(stroke.place(), tapping));
			}
		}
		pair = single(drillingTaps) && single(tappingDrills);
	}

	/** What the other tool does where one is at work, if the two are swapped. */
	static Optional<Tapping> other(Tapping one, Work work) {
		SwappedTools swapped = work.derived(SwappedTools.class, SwappedTools::new);
		boolean drill = one.method() == Tapping.Method.WRONG_TOOL;
		Map<Place, Tapping> others = drill ? swapped.drillingTaps : swapped.tappingDrills;
		Optional<Tapping> there = one.strokes().isEmpty() ? Optional.empty() : Optional.ofNullable(others.get(one.strokes().get(0).place()));
		return there.or(() -> swapped.pair ? others.values().stream().findFirst() : Optional.empty()).filter(other -> other.tool().index() != one.tool().index());
	}

	private static boolean single(Map<Place, Tapping> taps) {
		return taps.values().stream().map(tapping -> tapping.tool().index()).distinct().limit(2).count() == 1;
	}
}
