package truelead.checker.rule.tapping;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import truelead.checker.hole.Place;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * A tap that drills and a drill that taps, at the same places or as the only ones of the program: their numbers are swapped, which is one
 * slip.
 */
final class SwappedTools {

	/** The operations of such tools in the whole program. */
	private static final Survey<Odd, List<Odd>> ODD = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Odd> said) {
			work.tappings().stream().filter(one -> (drills(one) || taps(one)) && !one.strokes().isEmpty())
					.forEach(one -> said.accept(one.tool().index(), new Odd(one.tool().index(), one.index(), taps(one))));
		}

		@Override
		public List<Odd> all(List<Odd> said) {
			return said;
		}
	};

	private final Map<Place, Tapping> drillingTaps = new HashMap<>();
	private final Map<Place, Tapping> tappingDrills = new HashMap<>();

	/**
	 * A tapping operation of the wrong tool.
	 *
	 * @param stay      of the tool
	 * @param operation its number
	 * @param drill     whether a drill taps; else a tap drills
	 */
	private record Odd(int stay, int operation, boolean drill) {
	}

	private SwappedTools(Work work) {
		for (Tapping tapping : work.tappings()) {
			if (drills(tapping)) {
				tapping.strokes().forEach(stroke -> drillingTaps.put(stroke.place(), tapping));
			} else if (taps(tapping)) {
				tapping.strokes().forEach(stroke -> tappingDrills.put(stroke.place(), tapping));
			}
		}
	}

	private static boolean drills(Tapping tapping) {
		return tapping.method() == Tapping.Method.DRILLING_CYCLE && tapping.tool().facts().isTap();
	}

	private static boolean taps(Tapping tapping) {
		return tapping.method() == Tapping.Method.WRONG_TOOL;
	}

	/** What the other tool does where one is at work, if the two are swapped. */
	static Optional<Tapping> other(Tapping one, Work work) {
		SwappedTools swapped = work.derived(SwappedTools.class, SwappedTools::new);
		boolean drill = taps(one);
		Map<Place, Tapping> others = drill ? swapped.drillingTaps : swapped.tappingDrills;
		Optional<Tapping> there = one.strokes().isEmpty() ? Optional.empty()
				: Optional.ofNullable(others.get(one.strokes().get(0).place()));
		return there.or(() -> work.survey(one, ODD, all -> pair(all, !drill)).map(index -> (Tapping) work.operationsOfProgram().get(index)))
				.filter(other -> other.tool().index() != one.tool().index());
	}

	/** The first operation of the drill or of the tap, where there is one of each in the program. */
	private static Optional<Integer> pair(List<Odd> all, boolean drill) {
		boolean one = List.of(true, false).stream()
				.allMatch(kind -> all.stream().filter(odd -> odd.drill() == kind).mapToInt(Odd::stay).distinct().limit(2).count() == 1);
		return one ? all.stream().filter(odd -> odd.drill() == drill).map(Odd::operation).findFirst() : Optional.empty();
	}
}
