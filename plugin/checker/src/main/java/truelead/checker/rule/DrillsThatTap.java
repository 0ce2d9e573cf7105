package truelead.checker.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Place;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * Drills that run in a tapping cycle: those that are called drills, and those that nobody calls anything, at places where nothing else
 * drills and a tap that is called one cuts its thread behind them. And taps that run in a drilling cycle, as where their number is typed
 * for the drill's. Their holes are made, whatever the cycle does to them.
 */
public final class DrillsThatTap {

	/** A hole that is less deep than so much of what the tap goes down is a centre (a choice of ours). */
	private static final double CENTRE = 0.5;

	/** Where drills tap or taps drill, and the step of the first. */
	private final Map<Place, Integer> drilled = new HashMap<>();
	/** By the operation of a tool without a name, the tap behind it. */
	private final Map<Integer, Tapping> behind = new HashMap<>();

	private DrillsThatTap(Work work) {
		for (Tapping tapping : work.tappings()) {
			if (tapping.method() == Tapping.Method.WRONG_TOOL
					|| tapping.method() == Tapping.Method.DRILLING_CYCLE && tapping.tool().facts().isTap()) {
				drills(tapping);
			}
		}
		List<Tapping> bare = work.tappings().stream().filter(DrillsThatTap::unnamed).toList();
		Map<Place, Tapping> named = bare.isEmpty() ? Map.of() : named(work);
		for (Tapping tapping : named.isEmpty() ? List.<Tapping>of() : bare) {
			Tapping tap = named.get(tapping.strokes().get(0).place());
			if (tap != null && tapping.firstOrder() < tap.firstOrder()
					&& tapping.strokes().stream().allMatch(stroke -> named.get(stroke.place()) == tap)) {
				behind.put(tapping.index(), tap);
				drills(tapping);
			}
		}
	}

	/** Of a work, or of a part of it. */
	public static DrillsThatTap of(Work work) {
		return work.derived(DrillsThatTap.class, DrillsThatTap::new);
	}

	/** Whether a drill has gone to a place in a tapping cycle, or a tap in a drilling one, before a step. */
	public boolean before(Place place, int order) {
		return drilled.getOrDefault(place, Integer.MAX_VALUE) < order;
	}

	/** The tap that cuts all threads of an operation once more, where the tool that nobody calls anything is their drill. */
	public Optional<Tapping> behind(Tapping tapping) {
		return Optional.ofNullable(behind.get(tapping.index()));
	}

	private void drills(Tapping tapping) {
		tapping.strokes().forEach(stroke -> drilled.merge(stroke.place(), stroke.order(), Math::min));
	}

	private static boolean unnamed(Tapping tapping) {
		return tapping.method() == Tapping.Method.CYCLE && tapping.tool().facts().kind().isEmpty()
				&& tapping.wanted().statedThread().isEmpty() && open(tapping);
	}

	/** The places of taps that are called so and find no hole but a tool's that taps. */
	private static Map<Place, Tapping> named(Work work) {
		Map<Place, Tapping> named = new HashMap<>();
		for (Tapping tapping : work.tappings()) {
			if (tapping.method() == Tapping.Method.CYCLE && tapping.tool().facts().isTap() && tapping.wanted().statedThread().isPresent()
					&& open(tapping)) {
				tapping.strokes().forEach(stroke -> named.put(stroke.place(), tapping));
			}
		}
		return named;
	}

	/** Whether nothing but a centre is made before at any of the places. */
	private static boolean open(Tapping tapping) {
		return !tapping.strokes().isEmpty() && tapping.strokes().typical().stream().allMatch(DrillsThatTap::open);
	}

	private static boolean open(TapStroke stroke) {
		Optional<Cut> deepest = stroke.hole().deepestBefore(stroke.order());
		return stroke.place().known() && deepest.filter(cut -> stroke.direction() * (cut.tip() - stroke.start())
				> CENTRE * stroke.direction() * (stroke.bottom() - stroke.start())).isEmpty();
	}
}
