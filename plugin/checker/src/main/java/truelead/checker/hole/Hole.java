package truelead.checker.hole;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;

/** A place and everything done there before, between and after threading, in the order of execution. */
public final class Hole {

	/**
	 * A thread below a seat is at least so long, as a part of its diameter; what goes on less is the point of a drill (a choice of ours).
	 */
	private static final double BELOW_SEAT = 0.5;

	private final Place place;
	private final List<Cut> cuts;
	/** What was there before the step that was asked for last: rule after rule asks for the same one. */
	private volatile Before known;

	/**
	 * What a tool finds that comes at a step.
	 *
	 * @param making  the cuts that make the hole
	 * @param deepest as {@link #deepestBefore} says; null where it says nothing
	 * @param sized   as {@link #sizedBefore(int)} says; null where it says nothing
	 */
	private record Before(int order, List<Cut> making, Cut deepest, Cut sized) {

		static Before of(List<Cut> cuts, int order) {
			List<Cut> making = making(cuts, order);
			Cut deepest = deepest(making);
			return new Before(order, making, deepest, deepest == null ? null : widest(making, (deepest.start() + deepest.tip()) / 2));
		}

		private static List<Cut> making(List<Cut> cuts, int order) {
			int count = 0;
			for (int i = 0; i < cuts.size(); i++) {
				count += makes(cuts.get(i), order) ? 1 : 0;
			}
			if (count == cuts.size() || count == 0) {
				return count == 0 ? List.of() : cuts;
			}
			List<Cut> making = new ArrayList<>(count);
			for (Cut cut : cuts) {
				if (makes(cut, order)) {
					making.add(cut);
				}
			}
			return Collections.unmodifiableList(making);
		}

		private static Cut deepest(List<Cut> making) {
			Cut deepest = null;
			for (int i = 0; i < making.size(); i++) {
				Cut cut = making.get(i);
				if (Double.isNaN(cut.tip())) {
					return null;
				}
				deepest = deepest == null || cut.direction() * cut.tip() > deepest.direction() * deepest.tip() ? cut : deepest;
			}
			return deepest;
		}
	}

	/** @param cuts spotting and countersinking among them, so a place with cuts is not yet a hole: see {@link #made()} */
	public Hole(Place place, List<Cut> cuts) {
		this.place = place;
		this.cuts = List.copyOf(cuts);
	}

	/** A place where nothing was done. */
	public static Hole untouched(Place place) {
		return new Hole(place, List.of());
	}

	/** Where it is. */
	public Place place() {
		return place;
	}

	/** All that was done there. */
	public List<Cut> cuts() {
		return cuts;
	}

	private Before before(int order) {
		Before before = known;
		if (before == null || before.order() != order) {
			before = Before.of(cuts, order);
			known = before;
		}
		return before;
	}

	/** The cuts that make the hole. */
	public List<Cut> making() {
		return Before.making(cuts, Integer.MAX_VALUE);
	}

	/** The cuts that make the hole before a step. */
	public List<Cut> makingBefore(int order) {
		return before(order).making();
	}

	private static boolean makes(Cut cut, int order) {
		return cut.kind().makesHole() && cut.order() < order;
	}

	/** Whether anything made a hole. */
	public boolean made() {
		return !making().isEmpty();
	}

	/** Whether anything made a hole before a step. */
	public boolean madeBefore(int order) {
		return !before(order).making().isEmpty();
	}

	/**
	 * The cut that gave the hole its diameter half way down before a step, so that a counterbore or a recess at the top does not count;
	 * empty where nothing was made or a diameter that matters is not known.
	 */
	public Optional<Cut> sizedBefore(int order) {
		return Optional.ofNullable(before(order).sized());
	}

	/**
	 * The cut that gave the hole its diameter at a level before a step: the largest of those that reach the level; empty where none does or
	 * the diameter of one of them is not known, unless the largest one bores or reams what that one has drilled.
	 *
	 * @param level mm along the axis
	 */
	public Optional<Cut> sizedBefore(int order, double level) {
		return Optional.ofNullable(widest(before(order).making(), level));
	}

	/**
	 * The cut that gave the hole the diameter that a thread is made in, before a step: as {@link #sizedBefore(int)} says, but below a seat,
	 * which is wider than the thread and leaves it nothing to be cut in, the widest of the narrower ones that go on below it.
	 *
	 * @param thread major diameter of the thread, mm; NaN where it is not known, and no seat can be told
	 */
	public Optional<Cut> threadedBefore(int order, double thread) {
		Optional<Cut> half = sizedBefore(order);
		double wide = width(half);
		if (!(wide > thread)) {
			return half;
		}
		Cut below = null;
		for (Cut cut : makingBefore(order)) {
			boolean goesOn = cut.direction() * (cut.tip() - half.get().tip()) > thread * BELOW_SEAT;
			if (goesOn && cut.diameter().filter(d -> d.value() < thread).isPresent()
					&& (below == null || width(Optional.of(cut)) > width(Optional.of(below)))) {
				below = cut;
			}
		}
		return below == null ? half : Optional.of(below);
	}

	private static double width(Optional<Cut> cut) {
		return cut.flatMap(Cut::diameter).map(Fact::value).orElse(Double.NaN);
	}

	private static Cut widest(List<Cut> making, double level) {
		Cut widest = null;
		Cut unknown = null;
		for (int i = 0; i < making.size(); i++) {
			Cut cut = making.get(i);
			if (cut.direction() * (cut.tip() - level) >= 0) {
				if (cut.diameter().isEmpty()) {
					unknown = cut;
					continue;
				}
				widest = widest == null || cut.diameter().get().value() > widest.diameter().orElseThrow().value() ? cut : widest;
			}
		}
		boolean bored = widest != null && opens(widest) && unknown != null && widest.order() > unknown.order() && !opens(unknown);
		return unknown == null || bored ? widest : null;
	}

	/** Whether a cut opens a hole that is there, so that nobody need know how wide that was. */
	private static boolean opens(Cut cut) {
		return cut.kind() == Cut.Kind.BORE || cut.kind() == Cut.Kind.REAM;
	}

	/** The cut that went deepest before a step; empty where none did or a depth is not known. */
	public Optional<Cut> deepestBefore(int order) {
		return Optional.ofNullable(before(order).deepest());
	}

	/**
	 * Of the cuts before a step that are as wide as the deepest one, that which keeps its full diameter the farthest down: a bore in a
	 * drilled hole, a relief at its bottom; empty where none is known.
	 */
	public Optional<Cut> fullBefore(int order) {
		Optional<Cut> deepest = deepestBefore(order);
		if (deepest.isEmpty() || deepest.get().diameter().isEmpty() || Double.isNaN(deepest.get().shoulder())) {
			return deepest;
		}
		Cut full = deepest.get();
		double wide = full.diameter().get().value();
		for (Cut cut : cuts) {
			boolean opens = makes(cut, order) || cut.kind() == Cut.Kind.GROOVE && cut.order() < order
					&& cut.direction() * (cut.tip() - deepest.get().tip()) <= 0;
			if (opens && cut.diameter().filter(d -> d.value() >= wide).isPresent()
					&& cut.direction() * (cut.shoulder() - full.shoulder()) > 0) {
				full = cut;
			}
		}
		return Optional.of(full);
	}

	/** The countersink or spot cuts before a step. */
	public List<Cut> edgeBefore(int order) {
		List<Cut> edge = List.of();
		for (Cut cut : cuts) {
			if (cut.kind().atEdge() && cut.order() < order) {
				edge = edge.isEmpty() ? new ArrayList<>(2) : edge;
				edge.add(cut);
			}
		}
		return edge;
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof Hole hole && place.equals(hole.place) && cuts.equals(hole.cuts);
	}

	@Override
	public int hashCode() {
		return 31 * place.hashCode() + cuts.hashCode();
	}

	@Override
	public String toString() {
		return "Hole[place=" + place + ", cuts=" + cuts + "]";
	}
}
