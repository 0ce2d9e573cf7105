package truelead.checker.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A place and everything done there before, between and after threading, in the order of execution.
 *
 * @param cuts spotting and countersinking among them, so a place with cuts is not yet a hole: see {@link #made()}
 */
public record Hole(Place place, List<Cut> cuts) {

	public Hole {
		cuts = List.copyOf(cuts);
	}

	/** A place where nothing was done. */
	public static Hole untouched(Place place) {
		return new Hole(place, List.of());
	}

	/** The cuts that make the hole. */
	public List<Cut> making() {
		return makingBefore(Integer.MAX_VALUE);
	}

	/** The cuts that make the hole before a step. */
	public List<Cut> makingBefore(int order) {
		List<Cut> making = new ArrayList<>(cuts.size());
		for (Cut cut : cuts) {
			if (makes(cut, order)) {
				making.add(cut);
			}
		}
		return making;
	}

	private static boolean makes(Cut cut, int order) {
		return cut.kind().makesHole() && cut.order() < order;
	}

	/** Whether anything made a hole. */
	public boolean made() {
		return madeBefore(Integer.MAX_VALUE);
	}

	/** Whether anything made a hole before a step. */
	public boolean madeBefore(int order) {
		for (Cut cut : cuts) {
			if (makes(cut, order)) {
				return true;
			}
		}
		return false;
	}

	/**
	 * The cut that gave the hole its diameter half way down before a step, so that a counterbore or a recess at the top does not count; empty
	 * where nothing was made or a diameter that matters is not known.
	 */
	public Optional<Cut> sizedBefore(int order) {
		return deepestBefore(order).flatMap(deepest -> sizedBefore(order, (deepest.start() + deepest.tip()) / 2));
	}

	/**
	 * The cut that gave the hole its diameter at a level before a step: the largest of those that reach the level; empty where none does or the
	 * diameter of one of them is not known, unless the largest one bores what that one has drilled.
	 *
	 * @param level mm along the axis
	 */
	public Optional<Cut> sizedBefore(int order, double level) {
		Cut widest = null;
		Cut unknown = null;
		for (Cut cut : cuts) {
			if (makes(cut, order) && cut.direction() * (cut.tip() - level) >= 0) {
				if (cut.diameter().isEmpty()) {
					unknown = cut;
					continue;
				}
				widest = widest == null || cut.diameter().get().value() > widest.diameter().orElseThrow().value() ? cut : widest;
			}
		}
		boolean bored = widest != null && widest.kind() == Cut.Kind.BORE && unknown != null && widest.order() > unknown.order() && unknown.kind() != Cut.Kind.BORE;
		return unknown == null || bored ? Optional.ofNullable(widest) : Optional.empty();
	}

	/** The cut that went deepest before a step; empty where none did or a depth is not known. */
	public Optional<Cut> deepestBefore(int order) {
		Cut deepest = null;
		for (Cut cut : cuts) {
			if (!makes(cut, order)) {
				continue;
			}
			if (Double.isNaN(cut.tip())) {
				return Optional.empty();
			}
			deepest = deepest == null || cut.direction() * cut.tip() > deepest.direction() * deepest.tip() ? cut : deepest;
		}
		return Optional.ofNullable(deepest);
	}

	/** Of the cuts before a step that are as wide as the deepest one, that which keeps its full diameter the farthest down: a bore in a drilled hole; empty where none is known. */
	public Optional<Cut> fullBefore(int order) {
		Optional<Cut> deepest = deepestBefore(order);
		if (deepest.isEmpty() || deepest.get().diameter().isEmpty() || Double.isNaN(deepest.get().shoulder())) {
			return deepest;
		}
		Cut full = deepest.get();
		double wide = full.diameter().get().value();
		for (Cut cut : makingBefore(order)) {
			if (cut.diameter().filter(d -> d.value() >= wide).isPresent() && cut.direction() * (cut.shoulder() - full.shoulder()) > 0) {
				full = cut;
			}
		}
		return Optional.of(full);
	}

	/** The countersink or spot cuts before a step. */
	public List<Cut> edgeBefore(int order) {
		List<Cut> edge = List.of();
		for (Cut cut : cuts) {
			if (!cut.kind().makesHole() && cut.order() < order) {
				edge = edge.isEmpty() ? new ArrayList<>(2) : edge;
				edge.add(cut);
			}
		}
		return edge;
	}
}
