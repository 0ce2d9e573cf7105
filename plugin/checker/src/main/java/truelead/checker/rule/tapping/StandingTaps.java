package truelead.checker.rule.tapping;

import java.util.List;
import java.util.function.BiConsumer;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * Whether there are several taps, none of which has M3 or M4 before its cycle: the program is written for a machine whose cycle starts the
 * spindle.
 */
final class StandingTaps implements Survey<StandingTaps.Tap, Boolean> {

	static final StandingTaps SURVEY = new StandingTaps();

	/** What a tapping cycle finds. */
	record Tap(int stay, boolean stands) {
	}

	private StandingTaps() {
	}

	@Override
	public void of(Work work, BiConsumer<Integer, Tap> said) {
		for (Tapping tapping : work.tappings()) {
			if (tapping.cycle().isPresent() && tapping.method().taps()) {
				boolean stands = tapping.strokes().typical().stream().allMatch(stroke -> stroke.turning() == SpindleTurn.STOPPED);
				said.accept(tapping.tool().index(), new Tap(tapping.tool().index(), stands));
			}
		}
	}

	@Override
	public Boolean all(List<Tap> said) {
		return said.stream().allMatch(Tap::stands) && said.stream().mapToInt(Tap::stay).distinct().limit(2).count() > 1;
	}
}
