package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Rotary;
import truelead.checker.program.Plane;
import truelead.checker.work.Survey;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Tells a place on the far side of a part that is turned over, where a hole comes out that was drilled all the way from the near side. */
final class ThroughTwin {

	private static final double SAME = 0.001;
	private static final double HALF_TURN = 180;
	/**
	 * A hole that is threaded from both ends is at least so deep, in drills: a shorter one is threaded from one end (common practice, no
	 * source).
	 */
	private static final double LONG = 4.5;

	private ThroughTwin() {
	}

	/** Where the rotary axes may stand when holes are made: of a stay, at its own holes or those of others that are at hand. */
	private static final Survey<Rotary, Set<Rotary>> TURNED = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Rotary> said) {
			work.judgedTools().forEach(tool -> work.rotaries().forEach(one -> said.accept(tool.index(), one)));
		}

		@Override
		public Set<Rotary> all(List<Rotary> said) {
			return new HashSet<>(said);
		}
	};

	/**
	 * Whether a long hole was made before whose numbers are those of an operation's visit mirrored, half a turn of one rotary axis away.
	 */
	static boolean is(Work work, ThreadingOperation operation, Visit visit) {
		Place place = visit.hole().place();
		boolean blind = operation.wanted().through().filter(through -> !through.value()).isPresent();
		if (blind || !work.survey(operation, TURNED, all -> all.stream().anyMatch(other -> halfTurn(other, place)))) {
			return false;
		}
		work.dependsOnAll();
		Made all = work.derived(Made.class, Made::of);
		Map<Numbers, List<Hole>> made = all.holes();
		if (made.getOrDefault(new Numbers(place.plane(), place.u(), place.v()), List.of()).stream()
				.anyMatch(hole -> hole.place().rotary().equals(place.rotary()))) {
			// drilled on this side, under another offset: the offset is the slip
			return false;
		}
		return mirrored(made, place).anyMatch(hole -> hole.madeBefore(visit.order())
						&& halfTurn(hole.place().rotary(), place)
						&& hole.deepestBefore(visit.order()).filter(cut -> isLong(cut) && !all.onBothSides().contains(cut.tool().index()))
						.isPresent());
	}

	private static Stream<Hole> mirrored(Map<Numbers, List<Hole>> made, Place place) {
		return Stream.of(new Numbers(place.plane(), -place.u(), place.v()), new Numbers(place.plane(), place.u(), -place.v()))
				.flatMap(numbers -> made.getOrDefault(numbers, List.of()).stream());
	}

	private static boolean isLong(Cut cut) {
		return cut.diameter().map(Fact::value).filter(drill -> Math.abs(cut.start() - cut.tip()) >= LONG * drill).isPresent();
	}

	/** Half a turn of one axis that is not the hole's own: about that a part is turned on, and not over. */
	private static boolean halfTurn(Rotary one, Place other) {
		double turned = 0;
		for (int axis = 0; axis < 3; axis++) {
			double by = Math.abs(one.along(axis) - other.rotary().along(axis));
			turned += axis == other.plane().axis() ? HALF_TURN * 2 * by : by;
		}
		return Math.abs(turned - HALF_TURN) < SAME;
	}

	/**
	 * The holes that are made.
	 *
	 * @param holes       by their numbers
	 * @param onBothSides the stays of tools that go deepest at places which are each other's far side: parts on a tombstone have each
	 *                    their own holes
	 */
	private record Made(Map<Numbers, List<Hole>> holes, Set<Integer> onBothSides) {

		static Made of(Work work) {
			Map<Numbers, List<Hole>> holes = new HashMap<>();
			work.holes().stream().filter(Hole::made)
					.forEach(hole -> holes.computeIfAbsent(new Numbers(hole.place().plane(), hole.place().u(), hole.place().v()),
							at -> new ArrayList<>()).add(hole));
			Set<Integer> both = new HashSet<>();
			for (List<Hole> alike : holes.values()) {
				for (Hole hole : alike) {
					Optional<Integer> stay = stay(hole);
					stay.filter(one -> !both.contains(one) && mirrored(holes, hole.place()).anyMatch(other -> stay(other).equals(stay)
							&& halfTurn(other.place().rotary(), hole.place()))).ifPresent(both::add);
				}
			}
			return new Made(holes, both);
		}
	}

	private static Optional<Integer> stay(Hole hole) {
		return hole.deepestBefore(Integer.MAX_VALUE).map(cut -> cut.tool().index());
	}

	/** The numbers of a place, to a thousandth of a mm, whatever they count from. */
	private record Numbers(Plane plane, long u, long v) {

		Numbers(Plane plane, double u, double v) {
			this(plane, Math.round(u / SAME), Math.round(v / SAME));
		}
	}
}
